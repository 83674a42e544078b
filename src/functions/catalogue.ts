import { cautionsEntry, cautionsHelp } from './entries/cautionsEntry.ts';
import { checkEntryEntry, checkEntryHelp } from './entries/checkEntryEntry.ts';
import { checkStepEntry, checkStepHelp } from './entries/checkStepEntry.ts';
import { checkTeamEntry, checkTeamHelp } from './entries/checkTeamEntry.ts';
import { compositionEntry, compositionHelp } from './entries/compositionEntry.ts';
import { convertConcentrationEntry, convertConcentrationHelp } from './entries/convertConcentrationEntry.ts';
import { diluentVolumeEntry, diluentVolumeHelp } from './entries/diluentVolumeEntry.ts';
import { dilutedVolumeEntry, dilutedVolumeHelp } from './entries/dilutedVolumeEntry.ts';
import { dilutionMolarityEntry, dilutionMolarityHelp } from './entries/dilutionMolarityEntry.ts';
import { dilutionVolumeEntry, dilutionVolumeHelp } from './entries/dilutionVolumeEntry.ts';
import { elementPercentEntry, elementPercentHelp } from './entries/elementPercentEntry.ts';
import { glasswareToleranceEntry, glasswareToleranceHelp } from './entries/glasswareToleranceEntry.ts';
import { gramsEntry, gramsHelp } from './entries/gramsEntry.ts';
import { hintStepEntry, hintStepHelp } from './entries/hintStepEntry.ts';
import { ionMolarityEntry, ionMolarityHelp } from './entries/ionMolarityEntry.ts';
import { ionsEntry, ionsHelp } from './entries/ionsEntry.ts';
import { molalityEntry, molalityHelp } from './entries/molalityEntry.ts';
import { molarityEntry, molarityHelp } from './entries/molarityEntry.ts';
import { molarityUncertaintyEntry, molarityUncertaintyHelp } from './entries/molarityUncertaintyEntry.ts';
import { molarMassEntry, molarMassHelp } from './entries/molarMassEntry.ts';
import { moleFractionEntry, moleFractionHelp } from './entries/moleFractionEntry.ts';
import { molesEntry, molesHelp } from './entries/molesEntry.ts';
import { particleCountEntry, particleCountHelp } from './entries/particleCountEntry.ts';
import { percentDifferenceEntry, percentDifferenceHelp } from './entries/percentDifferenceEntry.ts';
import { percentErrorEntry, percentErrorHelp } from './entries/percentErrorEntry.ts';
import { reagentMolarityEntry, reagentMolarityHelp } from './entries/reagentMolarityEntry.ts';
import { roundSigEntry, roundSigHelp } from './entries/roundSigEntry.ts';
import { serialDilutionEntry, serialDilutionHelp } from './entries/serialDilutionEntry.ts';
import { sigFigsEntry, sigFigsHelp } from './entries/sigFigsEntry.ts';
import { soluteMassEntry, soluteMassHelp } from './entries/soluteMassEntry.ts';
import { solutionVolumeEntry, solutionVolumeHelp } from './entries/solutionVolumeEntry.ts';
import type { PublicFunction } from './entry.ts';
import { withHelp } from './withHelp.ts';

export type { FunctionName } from './entries.ts';

/**
 * Every public function with its help, in the order of the reference: for the build and the tests. Cells go through
 * `callFunction`, which carries no help.
 */
export const catalogue: readonly PublicFunction[] = [
  withHelp(molarMassEntry, molarMassHelp),
  withHelp(compositionEntry, compositionHelp),
  withHelp(elementPercentEntry, elementPercentHelp),
  withHelp(molesEntry, molesHelp),
  withHelp(gramsEntry, gramsHelp),
  withHelp(particleCountEntry, particleCountHelp),
  withHelp(ionsEntry, ionsHelp),
  withHelp(soluteMassEntry, soluteMassHelp),
  withHelp(molarityEntry, molarityHelp),
  withHelp(solutionVolumeEntry, solutionVolumeHelp),
  withHelp(reagentMolarityEntry, reagentMolarityHelp),
  withHelp(ionMolarityEntry, ionMolarityHelp),
  withHelp(dilutionVolumeEntry, dilutionVolumeHelp),
  withHelp(diluentVolumeEntry, diluentVolumeHelp),
  withHelp(dilutionMolarityEntry, dilutionMolarityHelp),
  withHelp(dilutedVolumeEntry, dilutedVolumeHelp),
  withHelp(serialDilutionEntry, serialDilutionHelp),
  withHelp(convertConcentrationEntry, convertConcentrationHelp),
  withHelp(molalityEntry, molalityHelp),
  withHelp(moleFractionEntry, moleFractionHelp),
  withHelp(percentErrorEntry, percentErrorHelp),
  withHelp(percentDifferenceEntry, percentDifferenceHelp),
  withHelp(sigFigsEntry, sigFigsHelp),
  withHelp(roundSigEntry, roundSigHelp),
  withHelp(glasswareToleranceEntry, glasswareToleranceHelp),
  withHelp(molarityUncertaintyEntry, molarityUncertaintyHelp),
  withHelp(checkEntryEntry, checkEntryHelp),
  withHelp(checkStepEntry, checkStepHelp),
  withHelp(checkTeamEntry, checkTeamHelp),
  withHelp(hintStepEntry, hintStepHelp),
  withHelp(cautionsEntry, cautionsHelp),
];
