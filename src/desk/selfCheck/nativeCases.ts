import { native } from '../../workbook/formula.ts';
import { literal } from '../../workbook/reference.ts';

/** A formula of the shape that our sheets hold, with the answer that it must give over the cells below. */
interface NativeCase {
  readonly about: string;
  readonly formula: string;
  readonly gives: string | number | boolean;
}

/** From A40 on: keys, names, checks. The second name is typed with a digit at its end, the third is blank. */
export const nativeCells = [
  ['t1', 'Otter', 'on target'],
  ['t2', '200', 'close'],
  ['t3', '', 'on target'],
  ['t4', 'Newt', ''],
] as const;
export const nativeAt = { cells: 'A40:C43', date: 'D40', first: 'F40', day: '=DATE(2026,3,2)' } as const;

const keys = '$A$40:$A$43';
const names = '$B$40:$B$43';
const checks = '$C$40:$C$43';
const given = '$B$41';
const day = '$D$40';
const text = literal;
const two = (part: 'MONTH' | 'DAY') => native('RIGHT', `${text('0')}&${native(part, day)}`, '2');
const second = native('INDEX', names, '2');
const third = native('INDEX', names, '3', '1');
const unit = native(
  'IF',
  native('ISNUMBER', native('FIND', native('RIGHT', given, '1'), text('0123456789.,'))),
  text(' mL'),
  text(''),
);

/** Every shape of native formula that a build writes, over cells of the scratch sheet. */
export const nativeCases = (sheet: string): readonly NativeCase[] => [
  {
    about: 'Finding a team’s line by its key',
    formula: native(
      'IF',
      `${native('COUNTIF', keys, text('t2'))}=1`,
      native('MATCH', text('t2'), keys, '0'),
      native('IF', `${native('COUNTIF', keys, text('t2'))}=0`, text('none'), text('twice')),
    ),
    gives: 2,
  },
  { about: 'A name by its line', formula: second, gives: '200' },
  {
    about: 'A blank that stays blank',
    formula: native('IF', native('ISNUMBER', '3'), native('IF', `${third}=""`, text(''), third), text('none')),
    gives: '',
  },
  {
    about: 'A line of words with a given and its unit',
    formula: `${text('Flask')}&${native('IF', native('ISNUMBER', '2'), `${native('CHAR', '10')}&${given}&${unit}`, text(''))}`,
    gives: 'Flask\n200 mL',
  },
  {
    about: 'Rows on target',
    formula: `${native('COUNTIF', checks, text('on target'))}&${text(' done')}`,
    gives: '2 done',
  },
  {
    about: 'Two conditions at once',
    formula: `${native('COUNTIFS', keys, text('t1'), checks, text('on target'))}>0`,
    gives: true,
  },
  { about: 'A column without an end', formula: native('COUNTIF', '$C$40:$C', text('on target')), gives: 2 },
  {
    about: 'A whole column, and what is not in it',
    formula: native('IFERROR', native('MATCH', text('t9'), '$A:$A', '0'), text('not there')),
    gives: 'not there',
  },
  {
    about: 'Another sheet by its name',
    formula: native('INDEX', `'${sheet}'!${names}`, native('MATCH', text('t4'), `'${sheet}'!$A:$A`, '0').concat('-39')),
    gives: 'Newt',
  },
  {
    about: 'A tube of marks',
    formula: `${native('REPT', text('●'), '2')}&${native('REPT', text('○'), '3-2')}`,
    gives: '●●○',
  },
  {
    about: 'A day digit by digit',
    formula: [native('YEAR', day), two('MONTH'), two('DAY')].join(`&${text('-')}&`),
    gives: '2026-03-02',
  },
  { about: 'The clock', formula: `${native('NOW')}>${day}`, gives: true },
  {
    about: 'Texts joined, blanks too',
    formula: native('TEXTJOIN', text('|'), '0', 'A40:C42'),
    gives: 't1|Otter|on target|t2|200|close|t3||on target',
  },
  {
    about: 'Capital and small letters',
    formula: native('IF', native('EXACT', text('a'), text('A')), '1', '2'),
    gives: 2,
  },
  {
    about: 'A link to a row',
    formula: native('HYPERLINK', `${text('#gid=')}&0&${text('&range=A')}&${native('ROW', 'A40')}`, 'A40'),
    gives: 't1',
  },
];
