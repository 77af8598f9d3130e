import { cellAt } from './cell-at.ts';
import { levelInWords, rulesThatAre, stepInWords } from './plane-in-words.ts';
import type { Cell, Plane, PlaneAnswer } from './plane.ts';

/**
 * Two planes over the same axes laid over each other: what is said now, and by which answer it was said before. Plain data, so that a
 * worker can post it.
 */
export interface ChangedPlane extends Plane {
  /** The plane before the change. */
  readonly was: Plane;
  /** Of each answer, the answer that stood there before: an index among those of `was`. */
  readonly from: readonly number[];
}

/** How the level of a point moves: `rules` when it stays, and other rules are met. */
export type Move = 'same' | 'higher' | 'lower' | 'otherwise' | 'rules';

/** Lays the plane after a change over the one before it. Both have the same axes; everything is held alike. */
export function changedPlane(before: Plane, after: Plane): ChangedPlane {
  if (before.x.name !== after.x.name || before.y.name !== after.y.name)
    throw new RangeError('the two planes have other axes');
  const answers: PlaneAnswer[] = [];
  const from: number[] = [];
  const known = new Map<string, number>();
  const answerAt = (was: number, is: number): number => {
    const key = `${was} ${is}`;
    const found = known.get(key) ?? answers.push({ ...(after.answers[is] as PlaneAnswer) }) - 1;
    if (!known.has(key)) from.push(was);
    known.set(key, found);
    return found;
  };
  const cells = after.cells.flatMap((cell) =>
    before.cells.flatMap((other): Cell[] => {
      const [x, y] = [shared(cell.x, other.x), shared(cell.y, other.y)];
      return x && y ? [{ x, y, answer: answerAt(other.answer, cell.answer) }] : [];
    }),
  );
  return { ...after, answers, cells, was: before, from };
}

type Range = readonly [number, number];

/** The steps that two ranges share, ends included; null for none. */
function shared(one: Range, other: Range): Range | null {
  const [low, high] = [Math.max(one[0], other[0]), Math.min(one[1], other[1])];
  return low <= high ? [low, high] : null;
}

/** What was said before where one of the answers stands now. */
export const answerBefore = (plane: ChangedPlane, answer: number): PlaneAnswer =>
  plane.was.answers[plane.from[answer] ?? -1] as PlaneAnswer;

/** How the level moves from one answer to another. Levels of two ladders that differ are in no order. */
export function moveOf(plane: ChangedPlane, answer: number): Move {
  const [was, is] = [answerBefore(plane, answer), plane.answers[answer] as PlaneAnswer];
  if (levelInWords(was, plane.was) === levelInWords(is, plane))
    return rulesMet(was, plane.was) === rulesMet(is, plane) ? 'same' : 'rules';
  const sameLadder = namesOf(plane.was) === namesOf(plane);
  if (!was.level || !is.level || was.refused.length + is.refused.length > 0 || !sameLadder)
    return 'otherwise';
  const least = (is.level.atLeast ?? -1) - (was.level.atLeast ?? -1);
  const most = is.level.couldBe - was.level.couldBe;
  if (least >= 0 && most >= 0 && least + most > 0) return 'higher';
  return least <= 0 && most <= 0 && least + most < 0 ? 'lower' : 'otherwise';
}

const namesOf = ({ levels }: Plane): string => levels.map(({ name }) => name).join(' ');

const rulesMet = (answer: PlaneAnswer, { rules }: Plane): string =>
  rules.flatMap(({ name }, at) => (answer.states[at] === 'met' ? [name] : [])).join(' ');

/** One point, for a live text: `systolic pressure 104 mmHg, …: Look again, settled, before; Call the doctor, settled, now.` */
export function changeInWords(plane: ChangedPlane, x: number, y: number): string {
  const where = `${plane.x.title} ${stepInWords(plane.x, x)}, ${plane.y.title} ${stepInWords(plane.y, y)}`;
  const answer = cellAt(plane, x, y)?.answer;
  if (answer === undefined) return `${where}: outside the map`;
  const [was, is] = [answerBefore(plane, answer), plane.answers[answer] as PlaneAnswer];
  const [before, now] = [levelInWords(was, plane.was), levelInWords(is, plane)];
  const level = before === now ? `${now}, as before.` : `before: ${before}; now: ${now}.`;
  return [`${where}: ${level}`, ...rulesMoved([was, plane.was], [is, plane])].join(' ');
}

function rulesMoved(was: readonly [PlaneAnswer, Plane], is: readonly [PlaneAnswer, Plane]): string[] {
  const [before, now] = [rulesThatAre('met', ...was), rulesThatAre('met', ...is)];
  const only = (these: readonly string[], those: readonly string[]): string =>
    these.filter((title) => !those.includes(title)).join('; ');
  const [gone, come] = [only(before, now), only(now, before)];
  return [
    ...(gone === '' ? [] : [`No longer met: ${gone}.`]),
    ...(come === '' ? [] : [`Met only now: ${come}.`]),
  ];
}
