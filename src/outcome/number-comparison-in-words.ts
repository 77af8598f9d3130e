import type { NumberComparison } from '../protocol/protocol.ts';
import type { Amount } from './amounts.ts';
import type { Tell } from './tell.ts';
import { compare, isNever, type Exact } from './exact.ts';
import type { Wording } from './wording.ts';
import { askedNumber, sentences, type Asked, type Asker, type Side } from './sentences.ts';
import { beside, difference, formatOf, type Format } from './shown-number.ts';
import { stateInWords, type View } from './view.ts';

const sideOf: Readonly<Record<NumberComparison['how'], Side>> = {
  above: 'above',
  below: 'below',
  at_least: 'or more',
  at_most: 'or less',
};
const opposite: Readonly<Record<Side, Side>> = {
  above: 'or less',
  below: 'or more',
  'or more': 'below',
  'or less': 'above',
};

/** What every sentence about one comparison says. */
interface Said {
  readonly subject: string;
  readonly how: string;
  readonly format: Format;
  readonly phrase: Phrase;
  readonly view: View;
  readonly asker: Asker | null;
  /** The side that is asked for. */
  readonly side: Side;
}

/** What a number is compared with, in words. */
type Phrase = (text: string, view: View) => string;

const askedFor = ({ asker, side }: Said, text: string): Asked | null =>
  asker && { asker, what: askedNumber(side, text) };

export function numberTeller(
  { subject, how, to }: NumberComparison,
  wording: Wording,
  howOf: (measure: string) => (view: View) => string,
): Tell {
  const { amounts, numbers, protocol } = wording;
  const own = amounts.of(subject);
  const other = amounts.inUnitOf(to, own);
  const format = formatOf(own.unit);
  const title = numbers.title(subject, false);
  const observation = subject.kind === 'observation' ? protocol.observations.get(subject.name) : undefined;
  const came = observation ? (view: View): string => stateInWords(observation, view) : howOf(subject.name);
  const phrase = thresholdPhrase(to, wording);
  const side = sideOf[how];
  return (view, { holds, wanted, asker }) => {
    const [value, threshold] = [own.amount(view), other(view)];
    const asking = wanted ? side : opposite[side];
    const said: Said = { subject: title, how: came(view), format, phrase, view, asker, side: asking };
    if (holds === null) {
      return sentences.notKnown({ subject: title, asked: askedFor(said, thresholdText(threshold, format)) });
    }
    if (isNever(value.low)) {
      return sentences.never({ ...said, asked: askedFor(said, thresholdText(threshold, format)) });
    }
    if (value.low === value.high && threshold.low === threshold.high) {
      return exactSentence(value.low, threshold.low, said);
    }
    return rangeSentence(value, threshold, holds ? side : opposite[side], said);
  };
}

const thresholdText = ({ low, high }: Amount, format: Format): string => {
  const [from, to] = [beside([], low, format).to, beside([], high, format).to];
  return low === high ? from : `${from} to ${to}`;
};

function exactSentence(value: Exact, threshold: Exact, said: Said): string {
  const { subject, how, format } = said;
  const shown = beside([value], threshold, format);
  const text = format.withUnit(shown.values[0] ?? '');
  const to = said.phrase(shown.to, said.view);
  const asked = askedFor(said, shown.to);
  const order = compare(value, threshold);
  if (order === 0) return sentences.equal({ subject, how, value: text, to, asked });
  const side = order > 0 ? ('above' as const) : ('below' as const);
  const gap = difference(value, threshold, format);
  return sentences.compared({ subject, how, value: text, difference: gap, side, to, asked });
}

/** One of the two is a range: it lies on one side as a whole, or what both share cancels. */
function rangeSentence(value: Amount, threshold: Amount, holding: Side, said: Said): string {
  const { subject, how, format } = said;
  const apart = sideApart(value, threshold);
  const isAbove = apart === 'above' || apart === 'or more';
  const isOne = value.low === value.high;
  const nearest = beside(
    isOne ? [value.low] : [value.low, value.high],
    isAbove ? threshold.high : threshold.low,
    format,
  );
  const far = beside([], isAbove ? threshold.low : threshold.high, format).to;
  const isFixed = threshold.low === threshold.high;
  const to = isFixed ? nearest.to : isAbove ? `${far} to ${nearest.to}` : `${nearest.to} to ${far}`;
  const range = {
    subject,
    how,
    value: valueText(nearest.values, format),
    to: said.phrase(to, said.view),
    asked: askedFor(said, isFixed ? to : 'that'),
  };
  if (apart === null) return sentences.coupled({ ...range, side: holding });
  return isOne
    ? sentences.besideRange({ ...range, side: apart })
    : sentences.range({ ...range, side: apart });
}

function valueText([low = '', high]: readonly string[], format: Format): string {
  if (high === undefined) return format.withUnit(low);
  return high === 'never'
    ? `${format.withUnit(low)} or more, or never,`
    : format.withUnit(`${low} to ${high}`);
}

/** On which side of another range a range lies as a whole; null when they overlap. */
function sideApart(own: Amount, other: Amount): Side | null {
  const [low, high] = [compare(own.low, other.high), compare(own.high, other.low)];
  if (low > 0) return 'above';
  if (high < 0) return 'below';
  if (low === 0) return 'or more';
  return high === 0 ? 'or less' : null;
}

/** What a number is compared with, in words: a plain number, or the number with the name that it has. */
function thresholdPhrase(to: NumberComparison['to'], { numbers }: Wording): Phrase {
  if (to.kind === 'number') return (text) => text;
  const title = numbers.title(to, false);
  if (to.kind !== 'limit') return (text) => `the ${title}, ${text}`;
  return (text, { facts }) => {
    const changed = (facts.limits.get(to.name)?.by ?? null) === null ? '' : ', changed for this patient';
    return `the limit of ${text} (${title}${changed})`;
  };
}
