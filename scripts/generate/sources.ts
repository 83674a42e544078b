import { cautionListSource } from './cautionList.ts';
import { elementsSource } from './elements.ts';
import { glasswareSource } from './glassware.ts';
import { reagentListSource } from './reagentList.ts';
import { soluteListSource } from './soluteList.ts';
import { strengthsSource } from './strengths.ts';
import { unitsSource } from './units.ts';

/** Sources that are made from published tables and from mathjs, by path from the project folder. */
export async function generatedSources(): Promise<Readonly<Record<string, string>>> {
  return {
    'src/measurement/unitTable.generated.ts': unitsSource(),
    'src/measurement/glassware.generated.ts': glasswareSource('tests/published/glassware-tolerances.csv'),
    'src/chemistry/elementTable.generated.ts': elementsSource('tests/published/atomic-weights.csv'),
    'src/chemistry/cautionList.generated.ts': cautionListSource({
      reagents: 'tests/published/reagents.csv',
      limits: 'tests/published/hazard-limits.csv',
    }),
    'src/lab/reagentList.generated.ts': reagentListSource('tests/published/reagents.csv'),
    'src/chemistry/strengths.generated.ts': strengthsSource({
      density: 'tests/published/density.csv',
      reagents: 'tests/published/reagents.csv',
    }),
    'src/lab/soluteList.generated.ts': soluteListSource('tests/published/reagents.csv'),
  };
}
