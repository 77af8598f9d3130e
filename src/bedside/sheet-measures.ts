import { fromDecimal } from '../outcome/decimal.ts';
import { over, type Exact } from '../outcome/exact.ts';
import { measureThresholds } from '../outcome/measure-thresholds.ts';
import { alone, beside, formatOf } from '../outcome/shown-number.ts';
import type { Measure, Protocol } from '../protocol/protocol.ts';
import { listed } from '../protocol/words.ts';
import type { Outcome, OutcomeMeasure } from '../shape/generated/types.ts';
import type { Sheet } from './sheet.ts';
import { decimalText, titlesOf } from './words.ts';

/** The numbers that were worked out, those with a value and those that are still a range. */
export function sheetMeasures(outcome: Outcome, protocol: Protocol): Sheet['measures'] {
  return [...protocol.measures.values()].flatMap((measure) => {
    const found = outcome.measures[measure.name];
    if (!found || found.missing === true) return [];
    if (found.value === undefined && found.waits_for !== undefined && measure.how.kind !== 'score') {
      return [
        { title: measure.title, value: `not yet, without ${listed(titlesOf(found.waits_for, protocol))}` },
      ];
    }
    return [{ title: measure.title, value: valueInWords(measure, found, outcome, protocol) }];
  });
}

function valueInWords(
  measure: Measure,
  found: OutcomeMeasure,
  { limits }: Outcome,
  protocol: Protocol,
): string {
  const format = formatOf(measure.unit);
  const changed = new Map(limits.map((each) => [each.limit, fromDecimal(decimalText(each.value))]));
  const edges = measureThresholds(measure.name, protocol, changed);
  const said = (number: number, exact: string | undefined): string => {
    const value = exactly(number, exact);
    // More decimals where it would seem to stand on the other side of a number that a rule compares it with.
    const texts = edges.map((edge) => beside([value], edge, format).values[0] ?? '');
    return texts.reduce(
      (longest, text) => (text.length > longest.length ? text : longest),
      alone(value, format),
    );
  };
  const perhaps = found.may_be_missing === true ? ', or no value' : '';
  if (found.value !== undefined) return format.withUnit(said(found.value, found.exact)) + perhaps;
  if (found.low === undefined) return 'never';
  const low = said(found.low, found.low_exact);
  if (found.high === undefined) return `${format.withUnit(low)} or more, or never`;
  const waits =
    found.waits_for === undefined ? '' : `, waits for ${listed(titlesOf(found.waits_for, protocol))}`;
  return `${format.withUnit(`${low} to ${said(found.high, found.high_exact)}`)}${perhaps}${waits}`;
}

function exactly(number: number, exact: string | undefined): Exact {
  if (exact === undefined) return fromDecimal(decimalText(number));
  const [n = '0', d = '1'] = exact.split('/');
  return over(BigInt(n), BigInt(d));
}
