import type { OutcomeMeasure } from '../shape/generated/types.ts';
import type { Measure } from '../protocol/protocol.ts';
import { inJson } from './decimal.ts';
import { isNever, type Exact } from './exact.ts';
import type { Situation } from './situation.ts';
import { lacks } from './view.ts';
import { waitsOfMeasure } from './waits.ts';
import type { Writable } from './writable.ts';

/** Every measure of a protocol, with earlier values standing in. */
export function measuresToJson(situation: Situation): Record<string, OutcomeMeasure> {
  const all: Record<string, OutcomeMeasure> = {};
  for (const measure of situation.compiled.protocol.measures.values()) {
    all[measure.name] = toJson(measure, situation);
  }
  return all;
}

function toJson({ name, unit }: Measure, situation: Situation): OutcomeMeasure {
  const { amounts } = situation.compiled;
  const view = situation.answers.narrow;
  if (amounts.maybe(name)(view.result) === 0) return { missing: true };
  const { low, high } = amounts.of({ kind: 'measure', name }).amount(view);
  if (isNever(low)) return { never: true };
  const made = endsToJson(low, high);
  if (unit) made.unit = unit.ucum;
  if (amounts.sure(name)(view.result) === 0) made.may_be_missing = true;
  if (isNever(high)) {
    made.never = true;
  } else if (low !== high) {
    const waits = waitsFor(name, situation);
    if (waits.length > 0) made.waits_for = waits;
  }
  return made;
}

/** One value, or from the lowest to the highest; without the highest where that is never. */
function endsToJson(low: Exact, high: Exact): Writable<OutcomeMeasure> {
  const least = inJson(low);
  if (low === high)
    return least.exact === null ? { value: least.number } : { value: least.number, exact: least.exact };
  const made: Writable<OutcomeMeasure> = { low: least.number };
  if (least.exact !== null) made.low_exact = least.exact;
  if (isNever(high)) return made;
  const most = inJson(high);
  made.high = most.number;
  if (most.exact !== null) made.high_exact = most.exact;
  return made;
}

function waitsFor(name: string, situation: Situation): readonly string[] {
  const { present } = situation.bounds.facts;
  return [...waitsOfMeasure(name, situation).observations].filter((each) => {
    const now = present.get(each);
    return lacks(now) && now?.state !== 'earlier';
  });
}
