import { cellAt } from './cell-at.ts';
import { valueAt, type Axis, type Plane, type PlaneAnswer } from './plane.ts';

/** A number of an axis with its unit: `104 mmHg`. */
export function stepInWords(axis: Axis, step: number): string {
  const value = Number(valueAt(axis, step).toFixed(2));
  return axis.unit === null ? String(value) : `${value} ${axis.unit}`;
}

/** The level of an answer: `Call the doctor, settled`; `not settled; it could be as high as: Call the doctor`. */
export function levelInWords(
  { refused, applies, level }: PlaneAnswer,
  { levels }: Pick<Plane, 'levels'>,
): string {
  if (refused.length > 0) return 'not possible: the values are refused';
  if (!level) return 'not for this patient: no level';
  const title = (at: number): string => levels[at]?.title ?? '';
  const unsure = applies === 'unsure' ? '; it is not known whether the protocol is for this patient' : '';
  if (level.settled) return `${title(level.atLeast ?? 0)}, settled`;
  const could = `it could be as high as: ${title(level.couldBe)}${unsure}`;
  return level.atLeast === null
    ? `no result yet, not settled; ${could}`
    : `at least ${title(level.atLeast)}, not settled; ${could}`;
}

/** The titles of the rules in one state. */
export const rulesThatAre = (
  state: PlaneAnswer['states'][number],
  { states }: PlaneAnswer,
  { rules }: Pick<Plane, 'rules'>,
): string[] => rules.flatMap(({ title }, index) => (states[index] === state ? [title] : []));

/** One point, for a live text: `systolic pressure 104 mmHg, diastolic pressure 48 mmHg: Call the doctor, settled. Rules met: …` */
export function pointInWords(plane: Plane, x: number, y: number): string {
  const where = `${plane.x.title} ${stepInWords(plane.x, x)}, ${plane.y.title} ${stepInWords(plane.y, y)}`;
  const answer = plane.answers[cellAt(plane, x, y)?.answer ?? -1];
  if (!answer) return `${where}: outside the map`;
  const said = [`${where}: ${levelInWords(answer, plane)}.`];
  if (answer.refused.length > 0 || !answer.level) return said.join('');
  const met = rulesThatAre('met', answer, plane);
  const open = rulesThatAre('undecided', answer, plane);
  said.push(met.length > 0 ? `Rules met: ${met.join('; ')}.` : 'No rule is met.');
  if (open.length > 0) said.push(`Undecided: ${open.join('; ')}.`);
  return said.join(' ');
}

/** One cell: `systolic pressure 100 to 110 mmHg, diastolic pressure 45 to 49 mmHg: Call the doctor, settled`. */
export function cellInWords(plane: Plane, index: number): string {
  const cell = plane.cells[index];
  const answer = plane.answers[cell?.answer ?? -1];
  if (!cell || !answer) return 'outside the map';
  const range = (axis: Axis, [low, high]: readonly [number, number]): string =>
    `${axis.title} ${low === high ? '' : `${Number(valueAt(axis, low).toFixed(2))} to `}${stepInWords(axis, high)}`;
  return `${range(plane.x, cell.x)}, ${range(plane.y, cell.y)}: ${levelInWords(answer, plane)}`;
}
