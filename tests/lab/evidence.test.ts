import { describe, expect, it } from 'vitest';
import { judgeTeam } from '../../src/lab/judging/judgeTeam.ts';
import { teamChecks } from '../../src/lab/judging/teamChecks.ts';
import { withEvidenceSteps } from '../../src/lab/lesson/activities/evidenceSteps.ts';
import { activityById, allActivities } from '../../src/lab/lesson/activities.ts';
import type { Activity } from '../../src/lab/lesson/activity.ts';
import { evidenceHints, notALink, weighingTexts } from '../../src/lab/texts/weighing.ts';

const plain = activityById('solution from a solid') as Activity;
const rows = withEvidenceSteps(plain).steps.map(({ id }) => id);
// 0.300 mol/L × 0.2000 L × 119.00 g/mol = 7.14 g of potassium bromide.
const givens = { formula: 'KBr', molarity: '0.300', flask: '200', ion: 'Br-' };
const before = {
  'cautions read': 'yes, KBr',
  'molar mass': '119.00',
  'moles of solute': '0.0600',
  'mass of solute': '7.14',
};

function checked(
  entries: Readonly<Record<string, string | number>>,
  { settings = [], steps = rows }: { settings?: readonly [string, string][]; steps?: readonly string[] } = {},
) {
  const typed: Readonly<Record<string, string | number>> = { ...before, ...entries };
  const judged = judgeTeam({
    givenNames: Object.keys(givens),
    givenValues: Object.values(givens),
    settings: [['activity', plain.id], ...settings, ['balance', '0.01 g']],
    steps,
    entries: steps.map((id) => typed[id] ?? ''),
  });
  return Object.fromEntries(steps.map((id, place) => [id, judged[place]]));
}
const weighed = (empty: string | number, loaded: string | number, mass: string | number, more = {}) => {
  const all = checked({ 'mass weighed empty': empty, 'mass weighed loaded': loaded, 'mass weighed': mass }, more);
  const said = (id: string) => [all[id]?.status, all[id]?.lookAt];
  return { empty: said('mass weighed empty'), loaded: said('mass weighed loaded'), mass: said('mass weighed'), all };
};
const yes = 'Yes, this is within what your tools and careful work allow.';

describe('the rows for evidence', () => {
  it('stand before the mass that is worked from them and behind the last row of the bench', () => {
    expect(rows).toEqual([
      'cautions read',
      'molar mass',
      'moles of solute',
      'mass of solute',
      'procedure',
      'mass weighed empty',
      'mass weighed loaded',
      'mass weighed',
      'seen',
      'picture',
      'stock made',
      'ion molarity',
      'particles',
      'in your words',
    ]);
    const added = allActivities().map((activity) => [
      activity.id,
      withEvidenceSteps(activity)
        .steps.map(({ id }) => id)
        .filter((id) => !activity.steps.some((step) => step.id === id)),
    ]);
    expect(Object.fromEntries(added)).toMatchObject({
      dilution: ['seen', 'picture'],
      'weighed residue': ['residue weighed empty', 'residue weighed loaded', 'seen', 'picture'],
      'measured density': ['portion weighed empty', 'portion weighed loaded', 'seen', 'picture'],
    });
  });

  it('take what the balance showed, and the mass from both', () => {
    const { empty, loaded, mass, all } = weighed('3.27', '10.43', '7.16');
    expect([empty, loaded]).toEqual([
      ['on target', 'Noted.'],
      ['on target', 'Noted.'],
    ]);
    expect(mass[0]).toBe('on target');
    // 7.16 g in 0.2000 L: 0.3008 mol/L, from the mass that was really weighed.
    expect(
      checked({
        'mass weighed empty': '3.27',
        'mass weighed loaded': '10.43',
        'mass weighed': '7.16',
        'stock made': '0.301',
      })['stock made']?.status,
    ).toBe('on target');
    expect(all['mass weighed']?.value).toBe(7.16);
  });

  // Each number worked by hand from 3.27 g empty and 10.43 g loaded.
  it.each([
    ['10.43', 'not yet', /loaded vessel/],
    ['13.70', 'not yet', /both readings together/],
    ['3.27', 'not yet', /Which of the two readings above/],
    ['-7.16', 'not yet', /Which of the two readings above/],
    ['71.6', 'not yet', /Which of the two readings above/],
    ['7.14', 'not yet', /mass of your plan/],
    ['7.2', 'close', /every digit/],
    ['7.16 kg', 'not yet', /./],
    ['heavy', 'unreadable', /./],
    ['', 'blank', /^$/],
  ])('say what the mass %s matches', (typed, status, says) => {
    const { mass } = weighed('3.27', '10.43', typed);
    expect(mass[0]).toBe(status);
    expect(mass[1]).toMatch(says);
    expect(mass[1]).not.toMatch(/7[.,]1[46]/);
  });

  it('ask of the loaded vessel alone whether it was copied from the plan, and whether it holds anything', () => {
    expect(weighed('7.14', '14.28', '7.14').empty).toEqual(['on target', 'Noted.']);
    expect(weighed('3.27', '3.27', '').loaded).toEqual(['not yet', weighingTexts.lighter]);
    expect(weighed('3.27', '7.14', '').loaded).toEqual(['close', weighingTexts.copied]);
  });
  it('take an address for a picture, and say so of what is none', () => {
    const picture = (typed: string) => checked({ picture: typed }).picture?.lookAt;
    expect(picture('https://bench.invalid/1 our flask')).toBe('');
    expect(picture('  http://bench.invalid/1')).toBe('');
    for (const typed of ['see https://bench.invalid/1', 'on the phone', 'https://bench'])
      expect([typed, picture(typed)]).toEqual([typed, notALink]);
  });
  it('judge the mass by the plan only once it is the difference', () => {
    // 5.00 g is the difference, and far from the plan: the bench goes on from it.
    expect(weighed('3.27', '8.27', '5.00').mass).toEqual(['not yet', expect.stringMatching(/too low/)]);
    expect(weighed('', '10.43', '7.16').mass).toEqual(['not yet', 'Fill in “Empty” first. This row uses it.']);
    expect(weighed('3.27', '', '7.16').mass).toEqual(['not yet', 'Fill in “Loaded” first. This row uses it.']);
    // Nothing is right that rests on a reading which cannot be.
    for (const typed of ['-7.16', '7.16', '3.27'])
      expect(weighed('10.43', '3.27', typed).mass).toEqual([
        'not yet',
        'Wait before you do this. Check “Loaded” first.',
      ]);
  });

  it('ask about a reading that is the plan to its last digit, until the team says that it saw it', () => {
    const asks = 'Is this what the balance showed? Then write “shown” behind it.';
    expect(weighed('0', '7.14', '7.14')).toMatchObject({
      empty: ['on target', 'Noted.'],
      loaded: ['close', asks],
      mass: ['close', 'Check “Loaded” first. This row uses it.'],
    });
    expect(weighed('0.00', '7.14', '7.14').loaded[0]).toBe('close');
    // With another vessel on it too: no substance would be left for the plan.
    expect(weighed('3.27', '7.14', '3.87').loaded).toEqual(['close', asks]);
    for (const typed of ['7.14 g, shown', '7.14 shown', '7.14 (shown)', '7.14 g – Shown.']) {
      const { loaded, mass } = weighed('0.00', typed, '7.14');
      expect([typed, loaded, mass[0]]).toEqual([typed, ['on target', 'Noted.'], 'on target']);
    }
    expect(weighed('0.00', '7.15', '7.15')).toMatchObject({
      loaded: ['on target', 'Noted.'],
      mass: ['on target', yes],
    });
    // To 0.001 g the plan is 7.140 g, and 7.141 g is no copy of it.
    const fine = { settings: [['balance', '0.001 g']] as [string, string][] };
    expect(weighed('0', '7.140', '7.140', fine).loaded[0]).toBe('close');
    expect(weighed('0', '7.141', '7.141', fine).loaded).toEqual(['on target', 'Noted.']);
    // As the team rounded it, though the plan is another number.
    expect(
      checked({ 'mass of solute': '7.2', 'mass weighed empty': '0', 'mass weighed loaded': '7.20' })[
        'mass weighed loaded'
      ]?.lookAt,
    ).toBe(asks);
  });

  it.each([
    ['3.3', 'close', 'Close. Write down every digit that the balance shows.'],
    ['-3.27', 'not yet', 'Less than nothing, or than empty? Read both again.'],
    ['3.27 mL', 'not yet', 'Type the number that the balance shows, in g.'],
    ['a boat', 'unreadable', 'Type the number that the balance shows, in g.'],
    ['3.27 g', 'on target', 'Noted.'],
    ['3,27', 'on target', 'Noted.'],
    [true, 'unreadable', 'Type the number that the balance shows, in g.'],
    ['', 'blank', ''],
  ])('read %s as the empty vessel', (typed, status, says) => {
    expect(weighed(typed as string, '', '').empty).toEqual([status, says]);
  });

  it('wait for the cautions in few words, and read a decimal comma', () => {
    const held = checked({ 'cautions read': '', 'mass weighed empty': '3.27' });
    expect(held['mass weighed empty']).toMatchObject({
      status: 'not yet',
      lookAt: 'Wait before you do this. Check “Aim and cautions” first.',
    });
    const comma = { settings: [['decimal mark', 'comma']] as [string, string][] };
    expect(weighed('3,27', '10,43', '7,16', comma).mass[0]).toBe('on target');
  });

  it('are judged as ever where one of them was taken out of the block', () => {
    const steps = rows.filter((id) => id !== 'mass weighed empty');
    expect(checked({ 'mass weighed': '7.16', 'mass weighed loaded': '10.43' }, { steps })['mass weighed']?.status).toBe(
      'on target',
    );
  });

  it('keep an observation and a link, and say where an address is none', () => {
    const told = (id: string, entry: string) => {
      const [check] = teamChecks({
        givenNames: Object.keys(givens),
        givenValues: Object.values(givens),
        settings: [['activity', plain.id]],
        steps: [id],
        entries: [entry],
        helpWanted: ['2'],
      });
      return [check?.check, check?.lookAt, check?.hint];
    };
    expect(told('seen', 'The boat was wet.')).toEqual(['', '', evidenceHints[1]]);
    const says = 'A link begins with https:// or http://. Your words stay.';
    for (const entry of ['https://school.example/p/1', 'HTTP://a.example/x our picture', ''])
      expect([entry, told('picture', entry)[1]]).toEqual([entry, '']);
    for (const entry of [
      'javascript:alert(1)',
      'ftp://a.example/x',
      'www.a.example',
      'http://',
      'on the phone',
      '=HYPERLINK("x")',
    ])
      expect([entry, told('picture', entry)]).toEqual([entry, ['', says, evidenceHints[1]]]);
  });
});
