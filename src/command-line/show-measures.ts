import type { Outcome, OutcomeMeasure } from '../shape/generated/types.ts';
import { fromDecimal } from '../outcome/decimal.ts';
import { over, type Exact } from '../outcome/exact.ts';
import { measureThresholds } from '../outcome/measure-thresholds.ts';
import { alone, beside, formatOf, type Format } from '../outcome/shown-number.ts';
import type { Measure, Operand, Protocol } from '../protocol/protocol.ts';
import { operandsOfMeasure } from '../protocol/walk.ts';
import { listed } from '../protocol/words.ts';
import type { Page } from './page.ts';
import { titleOf } from './show-words.ts';

interface Worked {
  readonly measure: Measure;
  readonly value: OutcomeMeasure;
}

/** The measures: those with a value, those that are still a range, those without any value. */
export function showMeasures(outcome: Outcome, protocol: Protocol, page: Page, heading = 'Measures'): void {
  const all = [...protocol.measures.values()].flatMap((measure) => {
    const value = outcome.measures[measure.name];
    return value ? [{ measure, value }] : [];
  });
  if (all.length === 0) return;
  page.heading(heading);
  const [without, waiting] = [
    all.filter(({ value }) => value.missing === true),
    all.filter((each) => notYet(each, protocol)),
  ];
  for (const { measure, value } of all.filter((each) => !without.includes(each) && !waiting.includes(each))) {
    page.item(`${measure.title}: ${valueInWords(measure, value, outcome, protocol)}`);
  }
  for (const [names, titles] of byWaits(waiting, protocol))
    page.item(`not yet, without ${names}: ${listed(titles)}`);
  if (without.length > 0)
    page.item(`without a value: ${listed(without.map(({ measure }) => measure.title))}`);
}

/** While a value is missing, a score tells how far it can go; what is worked out of the value itself tells nothing yet. */
const notYet = ({ measure, value }: Worked, protocol: Protocol): boolean =>
  value.waits_for !== undefined && readsValues({ kind: 'measure', name: measure.name }, protocol);

function readsValues(operand: Operand, protocol: Protocol): boolean {
  if (operand.kind !== 'measure') return operand.kind === 'observation';
  const how = protocol.measures.get(operand.name)?.how;
  if (!how || how.kind === 'score') return false;
  return 'over' in how || operandsOfMeasure(how).some((each) => readsValues(each, protocol));
}

/** The titles of measures by what they wait for. */
function byWaits(waiting: readonly Worked[], protocol: Protocol): ReadonlyMap<string, string[]> {
  const found = new Map<string, string[]>();
  for (const { measure, value } of waiting) {
    const names = namesInWords(value.waits_for, protocol);
    found.set(names, [...(found.get(names) ?? []), measure.title]);
  }
  return found;
}

const namesInWords = (names: readonly string[] | undefined, protocol: Protocol): string =>
  listed((names ?? []).map((name) => titleOf(name, protocol)));

function valueInWords(
  measure: Measure,
  value: OutcomeMeasure,
  { limits }: Outcome,
  protocol: Protocol,
): string {
  const format = formatOf(measure.unit);
  const changed = new Map(limits.map((each) => [each.limit, fromDecimal(String(each.value))]));
  const edges = measureThresholds(measure.name, protocol, changed);
  const said = (number: number, exact: string | undefined): string =>
    notHidden(exactly(number, exact), edges, format);
  const perhaps = value.may_be_missing === true ? ', or no value' : '';
  if (value.value !== undefined) return format.withUnit(said(value.value, value.exact)) + perhaps;
  if (value.low === undefined) return 'never';
  const low = said(value.low, value.low_exact);
  if (value.high === undefined) return `${format.withUnit(low)} or more, or never`;
  const high = said(value.high, value.high_exact);
  const waits = value.waits_for === undefined ? '' : `, waits for ${namesInWords(value.waits_for, protocol)}`;
  return `${format.withUnit(`${low} to ${high}`)}${perhaps}${waits}`;
}

function exactly(number: number, exact: string | undefined): Exact {
  if (exact === undefined) return fromDecimal(String(number));
  const [n = '0', d = '1'] = exact.split('/');
  return over(BigInt(n), BigInt(d));
}

/** Two decimals, or more where it would seem to stand on the other side of a number that a rule compares it with. */
function notHidden(value: Exact, edges: readonly Exact[], format: Format): string {
  const texts = edges.map((edge) => beside([value], edge, format).values[0] ?? '');
  return texts.reduce(
    (longest, text) => (text.length > longest.length ? text : longest),
    alone(value, format),
  );
}
