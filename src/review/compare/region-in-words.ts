import Fraction from 'fraction.js';
import { alone, formatOf } from '../../outcome/shown-number.ts';
import { over } from '../../outcome/exact.ts';
import { listed } from '../../protocol/words.ts';
import type { Asking } from './asking.ts';
import { stands } from './atoms.ts';
import { atomInWords } from './atom-in-words.ts';
import type { Node } from './node.ts';
import type { Dimension, Section } from './space.ts';

/**
 * What the sets of a region have in common, in plain words, a part each: `diastolic pressure 45 to 49 mmHg`, `systolic pressure 100 to
 * 110 mmHg`. What may have any value of its section is left out.
 */
export function regionInWords(node: Node, section: Section, asking: Asking): string[] {
  const { space, atoms } = asking;
  return [
    ...space.dimensions.flatMap((dimension, place) => termOf(dimension, place, node, section)),
    ...flagsInWords(node, section, asking),
    ...atoms.all.flatMap((atom) =>
      node.stands[atom.index] === stands.open
        ? []
        : [atomInWords(atom, node.stands[atom.index] as 1 | 2 | 3, asking)],
    ),
  ];
}

/** A value of a dimension that is a number, with its unit. */
export function valueInWords({ observation, lookBack }: Dimension, steps: number): string {
  if (observation) {
    const format = formatOf(observation.unit);
    return format.withUnit(
      alone(over(steps * Number(observation.stepsPerUnit.d), observation.stepsPerUnit.n), format),
    );
  }
  const kind = lookBack?.how.kind;
  if (kind === 'count') return String(steps);
  if (kind === 'minutes_since' || kind === 'held')
    return steps >= 1e12 ? 'never' : `${new Fraction(steps, 60_000).round(1).toString()} min`;
  return String(steps);
}

const titleOf = ({ observation, lookBack }: Dimension): string =>
  observation?.title ?? (lookBack?.measure ?? '').replaceAll('_', ' ');

function termOf(dimension: Dimension, place: number, { lows, highs }: Node, section: Section): string[] {
  const [low, high] = [lows[place] as number, highs[place] as number];
  const [least, most] = [section.lows[place] as number, section.highs[place] as number];
  if (dimension.kind === 'flag') return [];
  if (
    low === least &&
    high === most &&
    (dimension.key !== 'age' || (low === dimension.low && high === dimension.high))
  )
    return [];
  const title = titleOf(dimension);
  if (dimension.kind === 'choice') {
    const chosen = (dimension.observation?.choices ?? []).slice(low, high + 1).map((each) => each.title);
    return [`${title} ${listed(chosen, 'or')}`];
  }
  const words = (steps: number): string => valueInWords(dimension, steps);
  if (dimension.key === 'age') return [ageInWords(title, low, high, dimension, words)];
  if (low === high) return [`${title} ${words(low)}`];
  if (low === least) return [`${title} at most ${words(high)}`];
  if (high === most) return [`${title} at least ${words(low)}`];
  const unit = dimension.observation?.unit;
  const first = unit ? words(low).replace(new RegExp(`.${escaped(unit.word)}$`, 'u'), '') : words(low);
  return [`${title} ${first} to ${words(high)}`];
}

/** Ages are told by the first that is too old: `age from 12 y to below 16 y`. */
function ageInWords(
  title: string,
  low: number,
  high: number,
  dimension: Dimension,
  words: (steps: number) => string,
): string {
  if (high === dimension.high) return `${title} at least ${words(low)}`;
  if (low === dimension.low) return `${title} below ${words(high + 1)}`;
  return `${title} from ${words(low)} to below ${words(high + 1)}`;
}

const escaped = (text: string): string => text.replace(/[.*+?^${}()|[\]\\/]/g, '\\$&');

function flagsInWords({ lows, highs }: Node, section: Section, { space }: Asking): string[] {
  return space.dimensions.flatMap(({ kind, observation, choice, lookBack }, place): string[] => {
    const [low, high] = [lows[place] as number, highs[place] as number];
    if (kind !== 'flag' || low !== high || section.lows[place] === section.highs[place]) return [];
    if (lookBack)
      return [`${lookBack.measure.replaceAll('_', ' ')} ${low === 1 ? 'has a value' : 'has no value yet'}`];
    const title = observation?.choices.find((each) => each.choice === choice)?.title ?? choice ?? '';
    return [`${observation?.title ?? ''} ${low === 1 ? 'with' : 'without'} "${title}"`];
  });
}
