import type { OutcomeMeasure } from '../shape/generated/types.ts';
import type { Measure } from '../protocol/protocol.ts';
import { inJson } from './decimal.ts';
import { isNever, type Exact } from './exact.ts';
import type { Situation } from './situation.ts';
import { lacks } from './view.ts';
import { waitsOfMeasure } from './waits.ts';

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
  const isSure = amounts.sure(name)(view.result) !== 0;
  const common = {
    ...(unit ? { unit: unit.ucum } : {}),
    ...(isSure ? {} : { may_be_missing: true as const }),
  };
  if (isNever(low)) return { never: true };
  if (isNever(high)) return { ...lowest(low), ...common, never: true };
  if (low === high) {
    const { number, exact } = inJson(low);
    return { value: number, ...(exact === null ? {} : { exact }), ...common };
  }
  const { number, exact } = inJson(high);
  const highest = { high: number, ...(exact === null ? {} : { high_exact: exact }) };
  return { ...lowest(low), ...highest, ...common, ...waitsToJson(name, situation) };
}

function lowest(low: Exact): Pick<OutcomeMeasure, 'low' | 'low_exact'> {
  const { number, exact } = inJson(low);
  return { low: number, ...(exact === null ? {} : { low_exact: exact }) };
}

function waitsToJson(name: string, situation: Situation): Pick<OutcomeMeasure, 'waits_for'> {
  const { present } = situation.bounds.facts;
  const waits = [...waitsOfMeasure(name, situation).observations].filter((each) => {
    const now = present.get(each);
    return lacks(now) && now?.state !== 'earlier';
  });
  return waits.length === 0 ? {} : { waits_for: waits };
}
