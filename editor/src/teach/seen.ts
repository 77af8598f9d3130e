import type { Drill, DrillLine } from '../../../src/index.ts';

/** How far a case has unfolded: so many of its steps, and what was asked for out of turn. */
export interface Seen {
  readonly steps: number;
  readonly asked: readonly string[];
}

export const nothingSeen: Seen = { steps: 0, asked: [] };

/** What is shown, and what can come next. */
export interface Unfolded {
  /** How many earlier sets are shown. */
  readonly earlier: number;
  /** Lines of the present set, in the order in which they are taken. */
  readonly lines: readonly DrillLine[];
  /** What can still be asked for. */
  readonly left: readonly DrillLine[];
  /** How many observations of the present set the case gives, and how many of them are shown. */
  readonly given: number;
  readonly shown: number;
  /** What the next step shows; null when all that the case gives has been shown. */
  readonly next: { readonly title: string; readonly words: string } | null;
}

/** `seenOf(drill, nothingSeen).next` is the first step: an earlier set, else the first part of the present one. */
export function seenOf({ earlier, parts, askable, at }: Drill, { steps, asked }: Seen): Unfolded {
  const open = parts.slice(0, Math.max(0, steps - earlier.length)).flatMap(({ lines }) => lines);
  const names = new Set([...open.map(({ observation }) => observation), ...asked]);
  const all = new Set(parts.flatMap(({ lines }) => lines.map(({ observation }) => observation)));
  const nextSet = earlier[steps];
  const unseen = parts.slice(Math.max(0, steps - earlier.length)).map(({ heading, lines }) => ({
    heading,
    lines: lines.filter(({ observation }) => !names.has(observation)),
  }));
  const nextPart = unseen.find(({ lines }) => lines.length > 0);
  return {
    earlier: Math.min(steps, earlier.length),
    lines: askable.filter(({ observation }) => names.has(observation)),
    left: askable.filter(({ observation }) => !names.has(observation)),
    given: all.size,
    shown: [...all].filter((name) => names.has(name)).length,
    next: nextSet
      ? { title: `Show the set of ${nextSet.at}`, words: `Set of ${nextSet.at}: ${spoken(nextSet.lines)}` }
      : nextPart
        ? {
            title: titleOf(nextPart.heading, steps === earlier.length && earlier.length > 0 ? at : null),
            words: spoken(nextPart.lines),
          }
        : null,
  };
}

const titleOf = (heading: string, at: string | null): string =>
  at === null
    ? `Show what comes next: ${heading.toLowerCase()}`
    : `Show the set of ${at}: ${heading.toLowerCase()}`;

/** The next step; steps whose lines were all asked for before are passed over. */
export function afterStep(drill: Drill, seen: Seen): Seen {
  const before = seenOf(drill, seen);
  let steps = seen.steps + 1;
  const isSame = (): boolean => {
    const after = seenOf(drill, { ...seen, steps });
    return after.earlier === before.earlier && after.lines.length === before.lines.length;
  };
  while (isSame() && steps < drill.earlier.length + drill.parts.length) steps += 1;
  return { ...seen, steps };
}

const spoken = (lines: readonly DrillLine[]): string =>
  lines.map(({ title, words }) => `${title} ${words}`).join(', ');
