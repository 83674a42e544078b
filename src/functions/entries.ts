import { cautionsEntry } from './entries/cautionsEntry.ts';
import { checkEntryEntry } from './entries/checkEntryEntry.ts';
import { checkStepEntry } from './entries/checkStepEntry.ts';
import { checkTeamEntry } from './entries/checkTeamEntry.ts';
import { compositionEntry } from './entries/compositionEntry.ts';
import { convertConcentrationEntry } from './entries/convertConcentrationEntry.ts';
import { diluentVolumeEntry } from './entries/diluentVolumeEntry.ts';
import { dilutedVolumeEntry } from './entries/dilutedVolumeEntry.ts';
import { dilutionMolarityEntry } from './entries/dilutionMolarityEntry.ts';
import { dilutionVolumeEntry } from './entries/dilutionVolumeEntry.ts';
import { elementPercentEntry } from './entries/elementPercentEntry.ts';
import { glasswareToleranceEntry } from './entries/glasswareToleranceEntry.ts';
import { gramsEntry } from './entries/gramsEntry.ts';
import { hintStepEntry } from './entries/hintStepEntry.ts';
import { ionMolarityEntry } from './entries/ionMolarityEntry.ts';
import { ionsEntry } from './entries/ionsEntry.ts';
import { molalityEntry } from './entries/molalityEntry.ts';
import { molarityEntry } from './entries/molarityEntry.ts';
import { molarityUncertaintyEntry } from './entries/molarityUncertaintyEntry.ts';
import { molarMassEntry } from './entries/molarMassEntry.ts';
import { moleFractionEntry } from './entries/moleFractionEntry.ts';
import { molesEntry } from './entries/molesEntry.ts';
import { particleCountEntry } from './entries/particleCountEntry.ts';
import { percentDifferenceEntry } from './entries/percentDifferenceEntry.ts';
import { percentErrorEntry } from './entries/percentErrorEntry.ts';
import { reagentMolarityEntry } from './entries/reagentMolarityEntry.ts';
import { roundSigEntry } from './entries/roundSigEntry.ts';
import { serialDilutionEntry } from './entries/serialDilutionEntry.ts';
import { sigFigsEntry } from './entries/sigFigsEntry.ts';
import { soluteMassEntry } from './entries/soluteMassEntry.ts';
import { solutionVolumeEntry } from './entries/solutionVolumeEntry.ts';
import type { FunctionEntry } from './entry.ts';

/** Every public function as it runs, in the order of the reference. */
export const entries = [
  molarMassEntry,
  compositionEntry,
  elementPercentEntry,
  molesEntry,
  gramsEntry,
  particleCountEntry,
  ionsEntry,
  soluteMassEntry,
  molarityEntry,
  solutionVolumeEntry,
  reagentMolarityEntry,
  ionMolarityEntry,
  dilutionVolumeEntry,
  diluentVolumeEntry,
  dilutionMolarityEntry,
  dilutedVolumeEntry,
  serialDilutionEntry,
  convertConcentrationEntry,
  molalityEntry,
  moleFractionEntry,
  percentErrorEntry,
  percentDifferenceEntry,
  sigFigsEntry,
  roundSigEntry,
  glasswareToleranceEntry,
  molarityUncertaintyEntry,
  checkEntryEntry,
  checkStepEntry,
  checkTeamEntry,
  hintStepEntry,
  cautionsEntry,
] as const satisfies readonly FunctionEntry[];

export type FunctionName = (typeof entries)[number]['name'];
