import type { Plane, PlaneAnswer } from '../../../../src/index.ts';

/** What the map is filled by: the level that is called for at least, the highest that it could be, or the state of one rule. */
export type FillBy = 'at_least' | 'could_be' | { readonly rule: string };

/** How a part of the map is filled, and what that says. */
export interface Fill {
  readonly key: string;
  /** In words, for the legend and the region itself. */
  readonly words: string;
  /** Null: blank paper. */
  readonly colour: string | null;
  /** A pattern over the colour: lines for what is not settled, dots for what is not for this patient. */
  readonly pattern: 'lines' | 'dots' | null;
  readonly ink: string;
}

/** The plum sequence of look.css, deeper with the level. Written out, because a saved picture stands without the page. */
const shades = ['#ece8f1', '#cfc3de', '#a893c6', '#664892', '#2b1344'] as const;
const pale = '#1f1630';
const dark = '#ffffff';
const soft = '#545b6b';

const blank: Fill = { key: 'blank', words: 'Not possible', colour: null, pattern: null, ink: soft };
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

/** A level's shade; a long ladder is spread over the same sequence, so that its ends keep theirs. */
function shadeOf(level: number, count: number): { readonly colour: string; readonly ink: string } {
  const last = shades.length - 1;
  const at = count > shades.length ? Math.round((level / (count - 1)) * last) : level;
  return { colour: shades[at] ?? shades[4], ink: at >= 3 ? dark : pale };
}

export function fillOf(answer: PlaneAnswer, plane: Plane, by: FillBy): Fill {
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
export function legendOf(plane: Plane, by: FillBy): Fill[] {
  const height = ({ level }: PlaneAnswer): number =>
    level ? (by === 'could_be' ? level.couldBe : (level.atLeast ?? -1)) : -2;
  const inOrder = plane.answers.toSorted((left, right) => height(left) - height(right));
  const all = new Map(inOrder.map((answer) => fillOf(answer, plane, by)).map((fill) => [fill.key, fill]));
  const last = all.get(blank.key);
  return [...[...all.values()].filter((fill) => fill !== last), ...(last ? [last] : [])];
}
