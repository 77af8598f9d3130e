import type { Plane, PlaneAnswer } from '../../review/cells/plane.ts';

/** How a part of a printed map is filled: a letter, words for the legend, and a hatching for black and white paper. */
export interface Hatching {
  readonly key: string;
  /** `A`, from the lowest up. */
  readonly letter: string;
  readonly words: string;
  /** One of the patterns below; null for blank paper. */
  readonly pattern: Pattern | null;
}

/** Denser with the level; slanting where it is settled, upright where it is not. */
export const patterns = [
  'open-0',
  'open-1',
  'open-2',
  'open-3',
  'open-4',
  'settled-0',
  'settled-1',
  'settled-2',
  'settled-3',
  'settled-4',
  'nobody',
] as const;
export type Pattern = (typeof patterns)[number];

const shades = 5;

/** The hatching of each answer of a plane, by the place of the answer in it. */
export function hatchingsOf(plane: Plane): readonly Hatching[] {
  const order = (answer: PlaneAnswer): number => rank(answer) * 2 + (answer.level?.settled ? 1 : 0);
  const inOrder = plane.answers.toSorted((left, right) => order(left) - order(right));
  const keys = [...new Set(inOrder.map((answer) => looksOf(answer, plane).key))];
  return plane.answers.map((answer) => {
    const looks = looksOf(answer, plane);
    return { ...looks, letter: String.fromCodePoint(65 + (keys.indexOf(looks.key) % 26)) };
  });
}

const rank = ({ refused, level }: PlaneAnswer): number =>
  refused.length > 0 ? 1000 : level ? (level.atLeast ?? -1) : -2;

function looksOf({ refused, level }: PlaneAnswer, { levels }: Plane): Omit<Hatching, 'letter'> {
  if (refused.length > 0) return { key: 'blank', words: 'Not possible', pattern: null };
  if (!level) return { key: 'nobody', words: 'Not for this patient', pattern: 'nobody' };
  const { atLeast, settled } = level;
  if (atLeast === null) return { key: 'open', words: 'No result yet, not settled', pattern: 'open-0' };
  const last = shades - 1;
  const shade = levels.length > shades ? Math.round((atLeast / (levels.length - 1)) * last) : atLeast;
  const title = levels[atLeast]?.title ?? '';
  const pattern = `${settled ? 'settled' : 'open'}-${shade}` as Pattern;
  return settled
    ? { key: `settled ${atLeast}`, words: `${title}, settled`, pattern }
    : { key: `open ${atLeast}`, words: `At least: ${title}, not settled`, pattern };
}
