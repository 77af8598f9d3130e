import type { Nothing, Observed } from './series.ts';

/**
 * Adds a statement to those of the same instant about the same observation: one that says the same becomes one with it,
 * another stands beside it. In whatever order statements are added, the result is the same.
 */
export function mergeObserved(said: readonly Observed[], added: Observed): readonly Observed[] {
  const same = said.findIndex((each) => saysTheSame(each, added));
  const merged = same === -1 ? [...said, added] : said.with(same, asOne(said[same] as Observed, added));
  return merged.length === 1
    ? merged
    : merged.toSorted((left, right) => (wordsOf(left) < wordsOf(right) ? -1 : 1));
}

const wordsOf = ({ kind, given }: Observed): string => `${kind} ${given.text}`;

function saysTheSame(left: Observed, right: Observed): boolean {
  if (left.kind === 'number' && right.kind === 'number') {
    return left.low === right.low && left.high === right.high && left.value === right.value;
  }
  if (left.kind === 'choice' && right.kind === 'choice') return left.choice === right.choice;
  if (left.kind === 'several' && right.kind === 'several') {
    return (
      left.choices.length === right.choices.length &&
      left.choices.every((each) => right.choices.includes(each))
    );
  }
  if ('bound' in left && 'bound' in right) return left.kind === right.kind && left.bound === right.bound;
  return isNothing(left) && left.kind === right.kind;
}

export const isNothing = (observed: Observed): observed is Nothing =>
  observed.kind === 'unobtainable' || observed.kind === 'declined';

/** Two statements that say the same: the words that were not moved are kept, and every reason. */
function asOne(left: Observed, right: Observed): Observed {
  if (isNothing(left) && isNothing(right)) return bothReasons(left, right);
  if (left.given.moved !== right.given.moved) return left.given.moved ? right : left;
  return right.given.text < left.given.text ? right : left;
}

const between = '; ';

function bothReasons(left: Nothing, right: Nothing): Nothing {
  const all = [left.reason, right.reason].flatMap((each) => (each === null ? [] : each.split(between)));
  const reason = all.length === 0 ? null : [...new Set(all)].toSorted().join(between);
  const text = reason === null ? left.kind : `${left.kind}: ${reason}`;
  return { kind: left.kind, reason, given: { text, moved: false } };
}
