import { expect, test } from 'vitest';
import { cellAt, planeOf, readLessons, type MapGround, type Teacher } from '../../src/index.ts';
import { askable, bundledText, bundledWard } from '../bundled.ts';

const taughtFrom = (name: string): Teacher =>
  readLessons(askable(name), { file: 'cases.yaml', text: bundledText(`${name}/cases.yaml`) });

function groundOf(teacher: Teacher, name: string | null): MapGround {
  const found = teacher.map(name);
  if (!found || 'why' in found) throw new Error(found?.why ?? 'there is no such case');
  return found;
}

/** What the map says of the point at which a case is marked. */
function saidAt(ground: MapGround): { atLeast: number | null; couldBe: number } | null {
  const plane = planeOf(ground.compiled, ground);
  const cell = cellAt(plane, ground.at?.x ?? -1, ground.at?.y ?? -1);
  const level = plane.answers[cell?.answer ?? -1]?.level;
  return level ? { atLeast: level.atLeast, couldBe: level.couldBe } : null;
}

test.each(['lessons/a_curve', 'lessons/a_ward_adapts', 'lessons/two_signs_together', 'early_warning_score'])(
  'each single set of %s stands on its map where the map says what its answer says',
  (name) => {
    const teacher = taughtFrom(name);
    const drawn = teacher.lessons.cards.flatMap((card) => {
      const ground = teacher.map(card.name);
      return ground && !('why' in ground) && !ground.isOfLastSet ? [{ card, ground }] : [];
    });
    expect(drawn.length).toBeGreaterThan(2);
    for (const { card, ground } of drawn.slice(0, 12)) expect(saidAt(ground)).toEqual(card.rules);
  },
  60_000,
);

test('systolic and diastolic are on the axes, and the case stands at its own numbers', () => {
  const ground = groundOf(taughtFrom('pressure_reading'), 'Each number nearly fine, and newly confused');
  expect(ground.axes).toEqual(['systolic', 'diastolic']);
  expect(ground.at).toEqual({ x: 108, y: 54 });
  expect(ground.isOfLastSet).toBe(false);
});

test('of a series only the last set is on the map, and that is told', () => {
  const teacher = taughtFrom('pressure_reading');
  const ground = groundOf(teacher, 'Slow rate, systolic up by 20, gap wider by 15');
  expect(ground.isOfLastSet).toBe(true);
  expect(ground.held.sets).toHaveLength(1);
  expect(ground.at?.x).toBe(150);
});

test('a ward policy, too few numbers and a case without two of them have no map, and each says why', () => {
  const text = bundledText('alder_wing/cases.yaml');
  const ward = readLessons(bundledWard(), { file: 'cases.yaml', text });
  const [first] = ward.lessons.cards;
  expect(ward.map(first?.name ?? '')).toEqual({ why: expect.stringContaining('drawn of one protocol') });
  expect(ward.map(null)).toEqual({ why: expect.stringContaining('one protocol') });
  const single = taughtFrom('lessons/one_threshold');
  expect(single.map(null)).toEqual({ why: expect.stringContaining('fewer than two numbers') });
  const curve = taughtFrom('lessons/a_curve');
  const whys = curve.lessons.cards.map(({ name }) => curve.map(name)).filter((each) => each && 'why' in each);
  expect(whys).toEqual([{ why: expect.stringContaining('does not give two single numbers') }]);
  expect(curve.map('no such case')).toBeNull();
});

test('the map of a protocol that is not for an adult is held at what one of its own cases gives', () => {
  const child = groundOf(taughtFrom('child_low_pressure'), null);
  expect(child.heldAsIn).toBe('A newborn of two days');
  expect(child.at).toBeNull();
  expect(planeOf(child.compiled, child).answers.some(({ level }) => level !== null)).toBe(true);
  expect(groundOf(taughtFrom('pressure_reading'), null).heldAsIn).toBeNull();
});
