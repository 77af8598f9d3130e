import { expect, test } from 'vitest';
import { openWard, readSet, wardReader } from '../../src/index.ts';
import { bundledLadder, bundledMembers, bundledText, bundledWard } from '../bundled.ts';

const ward = bundledWard();
const reader = wardReader(ward);
const nearlyGone = {
  age: { value: 84, unit: 'a' },
  pregnancy: 'not_pregnant',
  systolic: 74,
  diastolic: 40,
  heart_rate: 118,
  respiratory_rate: 26,
  consciousness: 'alert',
};

type WardSheet = NonNullable<ReturnType<typeof reader.read>[number]>['sheet'];

const levelOf = (set: object): WardSheet['level'] => sheetOf(set).level;

function sheetOf(set: object): WardSheet {
  const { series } = readSet('set.json', JSON.stringify(set), ward);
  const [reading] = series ? reader.read(series) : [];
  if (!reading) throw new Error('the set cannot be read');
  return reading.sheet;
}

test('only who is on duty at the ward is told', () => {
  const { tell } = levelOf({ at: '2026-01-12T23:10:00Z', ...nearlyGone, systolic: 88, respiratory_rate: 16 });
  expect(tell.join()).not.toContain('Ward doctor on duty');
});

test('what one protocol of a ward needs stands among what is needed, though it only helps another', () => {
  const named = (role: 'needs' | 'helps'): string[] =>
    reader.form[role].flatMap(({ fields }) => fields.map(({ name }) => name));
  const ofMembers = ward.members.flatMap(({ protocol }) => [...protocol.observations.values()]);
  const needed = ofMembers.filter(({ role, standing }) => role === 'needs' && !standing);
  const alsoHelping = needed.filter(({ name }) =>
    ofMembers.some((each) => each.name === name && each.role === 'helps'),
  );
  expect(alsoHelping.map(({ name }) => name)).toContain('oxygen_saturation');
  expect(named('needs')).toEqual(expect.arrayContaining(needed.map(({ name }) => name)));
  expect(named('helps').filter((name) => needed.some((each) => each.name === name))).toEqual([]);
});

test('a plan changes whom to tell, is told first, and leaves the level', () => {
  const set = { at: '2026-01-12T14:00:00Z', ...nearlyGone };
  const planned = levelOf({ ...set, escalation_plan: 'comfort_care' });
  expect(planned.reached).toBe(levelOf(set).reached);
  expect(planned.tell).toEqual(['Palliative team (08:00 to 20:00)', 'Nurse in charge']);
  expect(planned.doHeading).toBe('As far as the plan allows');
  expect(sheetOf({ ...set, escalation_plan: 'comfort_care' }).plan?.title).toBe('Plan: comfort care');
  expect(sheetOf(set).plan).toBeNull();
  expect(levelOf(set).tell).toEqual(['Emergency team', 'Nurse in charge']);
});

const protocols = bundledMembers();
const opened = (text: string): ReturnType<typeof openWard> =>
  openWard('ward.yaml', text, { ladder: bundledLadder(), protocols });
const wardText = bundledText('alder_wing/ward.yaml');

test('a ward is opened in two halves: the form at once, the ward when all of it is checked', () => {
  const { form, problems, finish } = opened(wardText);
  expect(form).toEqual(reader.form);
  expect(problems).toEqual([]);
  expect(finish().ward?.digest).toBe(ward.digest);
});

test('what only all possible sets can show is found before there is any outcome', () => {
  const [first, second] = ward.members.flatMap(({ protocol }) =>
    protocol.rules.flatMap((rule) => rule.do.map(({ id }) => id)),
  );
  const { form, finish } = opened(
    wardText.replace(/never_together:[\s\S]*?(?=\n\S|$)/, `never_together: [[${first}, ${second}]]`),
  );
  expect(form).not.toBeNull();
  const { ward: none, problems } = finish();
  expect(none).toBeNull();
  expect(problems.length).toBeGreaterThan(0);
});
