import { cautionListSource, type HazardTables } from './cautionList.ts';
import { elementsSource } from './elements.ts';
import { glasswareSource } from './glassware.ts';
import { hazardSourcesSource } from './hazardSources.ts';
import { reagentListSource } from './reagentList.ts';
import { soluteListSource } from './soluteList.ts';
import { strengthsSource } from './strengths.ts';
import { unitsSource } from './units.ts';

/** The published tables of hazards, by path from the project folder. */
export const hazardTables: HazardTables = {
  substances: 'tests/published/substances.csv',
  limits: 'tests/published/hazard-limits.csv',
  substancesAdded: 'tests/published/substances-added.csv',
  limitsAdded: 'tests/published/hazard-limits-added.csv',
  reagents: 'tests/published/reagents.csv',
};

/** Sources that are made from published tables and from mathjs, by path from the project folder. */
export async function generatedSources(): Promise<Readonly<Record<string, string>>> {
  return {
    'src/measurement/unitTable.generated.ts': unitsSource(),
    'src/measurement/glassware.generated.ts': glasswareSource('tests/published/glassware-tolerances.csv'),
    'src/chemistry/elementTable.generated.ts': elementsSource('tests/published/atomic-weights.csv'),
    'src/chemistry/cautionList.generated.ts': cautionListSource(hazardTables),
    'src/chemistry/hazardSources.generated.ts': hazardSourcesSource(hazardTables),
    'src/lab/lesson/reagentList.generated.ts': reagentListSource('tests/published/reagents.csv'),
    'src/chemistry/strengths.generated.ts': strengthsSource({
      density: 'tests/published/density.csv',
      reagents: 'tests/published/reagents.csv',
    }),
    'src/lab/lesson/soluteList.generated.ts': soluteListSource('tests/published/reagents.csv'),
  };
}
