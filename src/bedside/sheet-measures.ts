import { fromDecimal } from '../outcome/decimal.ts';
import { over, type Exact } from '../outcome/exact.ts';
import { measureThresholds } from '../outcome/measure-thresholds.ts';
import { alone, beside, formatOf } from '../outcome/shown-number.ts';
import type { Measure, Operand, Protocol } from '../protocol/protocol.ts';
import { operandsOfMeasure } from '../protocol/walk.ts';
import { listed } from '../protocol/words.ts';
import type { Outcome, OutcomeMeasure } from '../shape/generated/types.ts';
import type { SheetMeasure } from './sheet.ts';
import { decimalText, titlesOf } from './words.ts';

interface Worked {
  readonly measure: Measure;
  readonly found: OutcomeMeasure;
}

/** The numbers that were worked out: those with a value or a range, those that wait for something, those without any value. */
export function sheetMeasures(outcome: Outcome, protocol: Protocol, of: string | null): SheetMeasure[] {
  const all = [...protocol.measures.values()].flatMap((measure): Worked[] => {
    const found = outcome.measures[measure.name];
    return found ? [{ measure, found }] : [];
  });
  const without = all.filter(({ found }) => found.missing === true);
  const waiting = all.filter((each) => notYet(each, protocol));
  const known = all.filter((each) => !without.includes(each) && !waiting.includes(each));
  const titles = (each: readonly Worked[]): string => listed(each.map(({ measure }) => measure.title));
  return [
    ...known.map(({ measure, found }) => ({
      title: measure.title,
      value: valueInWords(measure, found, outcome, protocol),
      isKnown: true,
      of,
    })),
    ...[...byWaits(waiting, protocol)].map(([names, those]) => ({
      title: titles(those),
      value: `not yet, without ${names}`,
      isKnown: false,
      of,
    })),
    ...(without.length > 0 ? [{ title: titles(without), value: 'without a value', isKnown: false, of }] : []),
  ];
}

/** While a value is missing, a score tells how far it can go; what is worked out of the value itself tells nothing yet. */
const notYet = ({ measure, found }: Worked, protocol: Protocol): boolean =>
  found.waits_for !== undefined && readsValues({ kind: 'measure', name: measure.name }, protocol);

function readsValues(operand: Operand, protocol: Protocol): boolean {
  if (operand.kind !== 'measure') return operand.kind === 'observation';
  const how = protocol.measures.get(operand.name)?.how;
  if (!how || how.kind === 'score') return false;
  return 'over' in how || operandsOfMeasure(how).some((each) => readsValues(each, protocol));
}

/** Measures by what they wait for. */
function byWaits(waiting: readonly Worked[], protocol: Protocol): ReadonlyMap<string, readonly Worked[]> {
  const groups = new Map<string, readonly Worked[]>();
  for (const each of waiting) {
    const names = listed(titlesOf(each.found.waits_for ?? [], protocol));
    groups.set(names, [...(groups.get(names) ?? []), each]);
  }
  return groups;
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
