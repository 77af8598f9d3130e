/**
 * Slanted lines for what is not settled, dots for what is not for this patient. On a map of changes: points upwards where the level is
 * higher, downwards where it is lower, bars where it is otherwise, dots where only rules change.
 */
export const patternNames = ['lines', 'dots', 'rising', 'falling', 'bars'] as const;

export type Pattern = (typeof patternNames)[number];

/** How a part of the map is filled, and what that says. */
export interface Fill {
  readonly key: string;
  /** In words, for the legend and the region itself. */
  readonly words: string;
  /** Null: blank paper. */
  readonly colour: string | null;
  /** A pattern over the colour, so that nothing hangs on colour alone. */
  readonly pattern: Pattern | null;
  readonly ink: string;
}

/** The plum sequence of look.css, deeper with the level. Written out, because a saved picture stands without the page. */
export const shades = ['#ece8f1', '#cfc3de', '#a893c6', '#664892', '#2b1344'] as const;
export const pale = '#1f1630';
export const dark = '#ffffff';
const soft = '#545b6b';

export const blank: Fill = { key: 'blank', words: 'Not possible', colour: null, pattern: null, ink: soft };

/** A level's shade; a long ladder is spread over the same sequence, so that its ends keep theirs. */
export function shadeOf(level: number, count: number): { readonly colour: string; readonly ink: string } {
  const last = shades.length - 1;
  const at = count > shades.length ? Math.round((level / (count - 1)) * last) : level;
  return { colour: shades[at] ?? shades[4], ink: at >= 3 ? dark : pale };
}
