import type { ChangedStand, Ground, Witness } from './comparison.ts';
import type { Asking } from './asking.ts';
import { answerOf } from './case-changes.ts';
import { levelInWords } from './levels-in-words.ts';
import type { Node } from './node.ts';
import type { Partitioner, Question, Region } from './partitioner.ts';
import { observationsOf, pointToJson, pointToSet, seriesOf } from './point-to-series.ts';
import { regionInWords, valueInWords } from './region-in-words.ts';
import type { Side } from './side.ts';
import { listed } from '../../protocol/words.ts';
import { widened } from './widen.ts';

/** The most regions of one change that are told. */
const mostTold = 8;

/** What the sets of one change have in common, and its regions in words. */
interface Told {
  readonly words: Pick<ChangedStand, 'in_common' | 'regions' | 'more' | 'earlier_sets'>;
  /** One of the sets, nearer to ordinary values than the search needed. */
  readonly witness: Float64Array;
}

/** What the sets of one change have in common, and the regions that they make up. */
export function regionsTold<Change>(
  regions: readonly Region<Change>[],
  question: Question<Change>,
  asking: Asking,
  partitioner: Partitioner,
): Told {
  const { wide, left } = widened(regions, question, asking, mostTold);
  const terms = wide.map(({ node, section }) => regionInWords(node, section, asking));
  const [first = []] = terms;
  // With regions that are not told, nothing is known to be common to all.
  const common = left.length === 0 ? first.filter((term) => terms.every((each) => each.includes(term))) : [];
  const own = terms.map((each) => each.filter((term) => !common.includes(term)));
  const [widest] = wide;
  const found = widest ? partitioner.find(widest.node) : 'none';
  const words = {
    in_common: common,
    regions: own.length === 1 ? [] : own,
    more: left.length,
    earlier_sets: [...wide, ...left].some(({ node }) => readsEarlier(node, asking)),
  };
  return {
    words: words,
    witness: typeof found === 'string' ? (regions[0] as Region<Change>).witness : found,
  };
}

function readsEarlier({ lows, highs, stands }: Node, { space, atoms }: Asking): boolean {
  return (
    space.dimensions.some(
      ({ lookBack, low, high }, place) => lookBack && (lows[place] !== low || highs[place] !== high),
    ) ||
    atoms.all.some(
      ({ index, reads }) => stands[index] !== 0 && reads.some((place) => space.dimensions[place]?.lookBack),
    )
  );
}

/** How many sets some regions have, which share none. */
export function groundOf<Change>(
  regions: readonly Region<Change>[],
  partitioner: Partitioner,
  all: bigint | null,
  over: ReadonlySet<number>,
): Ground {
  let sets: bigint | null = 0n;
  for (const { node } of regions) {
    const count = partitioner.count(node, over);
    sets = sets === null || count === null ? null : sets + count;
  }
  if (sets === null) return { sets: null, share: null };
  return { sets: String(sets), share: all === null || all === 0n ? null : shareOf(sets, all) };
}

const shareOf = (part: bigint, all: bigint): number => Number((part * 10n ** 15n) / all) / 1e15;

/** A set, and what the whole way from a set to its outcome says of it on both sides. */
export function witnessOf(
  point: Float64Array,
  asking: Asking,
  sides: readonly [Side, Side],
  agrees: (answers: readonly [ReturnType<typeof answerOf>, ReturnType<typeof answerOf>]) => boolean,
): Witness {
  const { space } = asking;
  const series = seriesOf([pointToSet(point, space)]);
  const answers = [answerOf(sides[0], series), answerOf(sides[1], series)] as const;
  return {
    set: pointToJson(point, space),
    in_words: pointInWords(point, asking),
    before: levelInWords(answers[0].level, sides[0].ladder),
    after: levelInWords(answers[1].level, sides[1].ladder),
    confirmed: agrees(answers),
  };
}

function pointInWords(point: Float64Array, { space }: Asking): string {
  const words = [...observationsOf(space).values()].flatMap(({ name, kind, title, choices }): string[] => {
    if (kind === 'several') {
      const chosen = choices.filter(({ choice }) => point[space.places.get(`${name}:${choice}`) ?? -1] === 1);
      return chosen.length === 0 ? [] : [`${title} ${listed(chosen.map((each) => each.title))}`];
    }
    const place = space.places.get(name) ?? -1;
    const dimension = space.dimensions[place];
    const value = point[place] ?? 0;
    if (!dimension) return [];
    return [`${title} ${kind === 'number' ? valueInWords(dimension, value) : (choices[value]?.title ?? '')}`];
  });
  return words.join(', ');
}
