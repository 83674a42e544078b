import type { ArgumentKind, PublicFunction, ToldArgument } from '../../src/functions/entry.ts';

/**
 * The declarations that the host reads: plain functions with their real arguments and their help right above, since the
 * host's formula line takes both from there. A bundler keeps neither.
 */
export const declarations = (catalogue: readonly PublicFunction[]): string => catalogue.map(declaration).join('\n\n');

function declaration({ name, summary, arguments: taken, returns }: PublicFunction): string {
  const names = taken.map((argument) => argument.name).join(', ');
  return [
    '/**',
    ` * ${plain(summary)}`,
    ' *',
    ...taken.map((argument) => ` * @param {${scriptType(argument)}} ${argument.name} ${plain(argumentHelp(argument))}`),
    ` * @return ${plain(returns)}`,
    ' * @customfunction',
    ' */',
    `function ${name}(${names}) {`,
    `  return Labrow.callFunction_('${name}', [${names}]);`,
    '}',
  ].join('\n');
}

/** Units of bare numbers. */
const units: Readonly<Partial<Record<ArgumentKind, string>>> = {
  volume: 'mL',
  mass: 'g',
  amount: 'mol',
  concentration: 'mol/L',
  density: 'g/mL',
  percent: '%',
};

/** `optional: purity of the solid (%)`; the host marks no argument as optional, so the words do. */
export function argumentHelp({ about, kind, optional }: ToldArgument): string {
  const unit = units[kind];
  return `${optional ? 'optional: ' : ''}${about}${unit ? ` (${unit})` : ''}`;
}

function scriptType({ kind }: ToldArgument): string {
  switch (kind) {
    case 'formula':
    case 'substance':
    case 'text':
      return 'string';
    case 'yes or no':
      return 'boolean';
    case 'row':
    case 'column':
    case 'table':
      return 'range';
    // Numbers are read from text too, with their zeros and units.
    default:
      return 'number|string';
  }
}

/** One line without what would end the comment or be taken for markup; the host strips that in silence. */
function plain(text: string): string {
  if (/\*\/|[<>@]|\n/.test(text)) throw new Error(`Help text cannot hold *, /, <, > or @ as in “${text}”.`);
  return text;
}
