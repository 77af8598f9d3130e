import type { ChangedPlane, Plane, PlaneAnswer } from '../../../../src/index.ts';
import { changeFill, heightOfChange } from './change-fill.ts';
import { blank, dark, pale, shadeOf, shades, type Fill } from './fill.ts';

/**
 * What the map is filled by: the level that is called for at least, the highest that it could be, the state of one rule, or, of a plane
 * that is laid over an older one, what changed.
 */
export type FillBy = 'at_least' | 'could_be' | 'changes' | { readonly rule: string };

const notForThem: Fill = {
  key: 'no',
  words: 'Not for this patient',
  colour: '#fffdf8',
  pattern: 'dots',
  ink: pale,
};

/** White to black in five steps, each next to the shade that it stands for. */
const greys = ['#f0f0f0', '#c9c9c9', '#969696', '#565656', '#111111'] as const;

/** The same filling in greys, for black and white paper. */
export function onPaper(fill: Fill): Fill {
  const at = shades.findIndex((shade) => shade === fill.colour);
  if (at >= 0) return { ...fill, colour: greys[at] ?? fill.colour };
  return fill.colour === null ? fill : { ...fill, colour: '#ffffff' };
}

export function fillOf(answer: PlaneAnswer, plane: Plane | ChangedPlane, by: FillBy): Fill {
  if (by === 'changes') return 'was' in plane ? changeFill(answer, plane) : blank;
  if (answer.refused.length > 0) return blank;
  if (!answer.level) return notForThem;
  if (typeof by === 'object') return stateFill(answer, plane, by.rule);
  const { atLeast, couldBe, settled } = answer.level;
  const title = (level: number): string => plane.levels[level]?.title ?? '';
  const pattern = settled ? null : 'lines';
  if (by === 'could_be') {
    const words = settled ? `${title(couldBe)}, settled` : `Could be: ${title(couldBe)}`;
    return { key: `c${couldBe}${pattern}`, words, ...shadeOf(couldBe, plane.levels.length), pattern };
  }
  if (atLeast === null)
    return { key: 'open', words: 'No result yet, not settled', colour: '#ffffff', pattern, ink: pale };
  const words = settled ? `${title(atLeast)}, settled` : `At least: ${title(atLeast)}, not settled`;
  return { key: `a${atLeast}${pattern}`, words, ...shadeOf(atLeast, plane.levels.length), pattern };
}

const states = {
  met: { words: 'Met', colour: shades[3], ink: dark, pattern: null },
  undecided: { words: 'Undecided', colour: shades[1], ink: pale, pattern: 'lines' },
  not_met: { words: 'Not met', colour: shades[0], ink: pale, pattern: null },
} as const;

function stateFill({ states: all }: PlaneAnswer, { rules }: Plane, rule: string): Fill {
  const state = all[rules.findIndex(({ name }) => name === rule)] ?? 'undecided';
  return { key: state, ...states[state] };
}

/** Each way in which the map is filled, once, in the order of the answers' levels, blank ground last. */
export function legendOf(plane: Plane | ChangedPlane, by: FillBy): Fill[] {
  const height = (answer: PlaneAnswer): number => {
    const { level } = answer;
    if (by === 'changes') return heightOfChange(answer, plane);
    return level ? (by === 'could_be' ? level.couldBe : (level.atLeast ?? -1)) : -2;
  };
  const inOrder = plane.answers.toSorted((left, right) => height(left) - height(right));
  const all = new Map(inOrder.map((answer) => fillOf(answer, plane, by)).map((fill) => [fill.key, fill]));
  const last = all.get(blank.key);
  return [...[...all.values()].filter((fill) => fill !== last), ...(last ? [last] : [])];
}
