import Fraction from 'fraction.js';
import type { Document, Node } from '../document/document.ts';
import { partAt } from '../document/document.ts';
import { withoutPart, withValue } from '../document/edit.ts';
import type { Path } from '../problems/place.ts';
import type { Condition, NumberOperand, Operand, Protocol } from '../protocol/protocol.ts';
import { conditionsIn, conditionsOf } from '../protocol/walk.ts';
import { tenPower } from '../vocabulary/ten-power.ts';
import { sameDimension, units } from '../vocabulary/units.ts';

/** One small change of a protocol: what was done, where, and the protocol with it. */
export interface Change {
  readonly kind: 'threshold' | 'clause' | 'exception';
  readonly path: Path;
  /** For a person: `systolic below 90 moved to 91`. */
  readonly says: string;
  readonly document: Document;
}

/**
 * Every small change of a protocol that a case should notice: each threshold one step up and down, each clause left out,
 * each exception left out. A threshold of age moves by a month when it is written in years or months.
 */
export function* changesOf(document: Document, protocol: Protocol): Generator<Change> {
  yield* thresholdChanges(document, protocol);
  yield* clauseChanges(document, protocol);
  yield* exceptionChanges(document, protocol);
}

function* thresholdChanges(document: Document, protocol: Protocol): Generator<Change> {
  for (const condition of conditionsOf(protocol)) {
    for (const each of conditionsIn(condition)) {
      if (each.kind !== 'compare' || each.to.kind !== 'number') continue;
      yield* moved(document, each.path, each.to, stepOf(each.subject, each.to, protocol), each.subject.name);
    }
  }
  for (const { name, how } of protocol.measures.values()) {
    if (how.kind !== 'score') continue;
    for (const part of how.parts) {
      if (part.kind !== 'bands') continue;
      for (const [index, { to, included }] of part.bands.entries()) {
        if (!to) continue;
        const path = [...part.path, index, included ? 'at_most' : 'below'];
        yield* moved(document, path, to, stepOf(part.of, to, protocol), name);
      }
    }
  }
  for (const limit of protocol.limits.values()) {
    const value = new Fraction(limit.value).div(limit.stepsPerUnit);
    const now: NumberOperand = { kind: 'number', value, unit: null };
    yield* moved(document, [...limit.path, 'value'], now, limit.stepsPerUnit.inverse(), limit.name);
  }
}

function* moved(
  document: Document,
  path: Path,
  { value, unit }: NumberOperand,
  step: Fraction,
  name: string,
): Generator<Change> {
  for (const to of [value.sub(step), value.add(step)]) {
    const [before, after] = [value, to].map((each) => written(each, unit));
    const says = `${name}: ${String(before)} moved to ${String(after)}`;
    yield { kind: 'threshold', path, says, document: withValue(document, path, after as string | number) };
  }
}

/** One step of what is compared: the observation's own, or the last decimal place that the number is written in. */
function stepOf(subject: Operand, { value, unit }: NumberOperand, { observations }: Protocol): Fraction {
  const observation = subject.kind === 'observation' ? observations.get(subject.name) : undefined;
  if (!observation) return new Fraction(1n, tenPower(value.d));
  if (!unit || unit === observation.unit) {
    if (observation.unit?.word === 'y') return new Fraction(1, 12);
    return observation.stepsPerUnit.inverse();
  }
  if (unit.word === 'mo') return new Fraction(1);
  return observation.stepsPerUnit
    .inverse()
    .mul(observation.unit?.factor ?? 1)
    .div(unit.factor);
}

/** A number as it is written: plain, or with a unit in which it is a short decimal. */
function written(value: Fraction, unit: NumberOperand['unit']): string | number {
  if (!unit) return Number(value.toString());
  const shown = units
    .filter((each) => sameDimension(each.dimension, unit.dimension) && each.offset.equals(unit.offset))
    .map((each) => ({ each, value: value.mul(unit.factor).div(each.factor) }))
    .sort((left, right) => Number(right.each === unit) - Number(left.each === unit))
    .find((candidate) => isShort(candidate.value));
  return shown ? `${shown.value.toString()} ${shown.each.word}` : `${value.toString()} ${unit.word}`;
}

const isShort = (value: Fraction): boolean => tenPower(value.d) % value.d === 0n;

function* clauseChanges(document: Document, protocol: Protocol): Generator<Change> {
  const seen = new Set<string>();
  for (const condition of conditionsOf(protocol)) {
    for (const each of conditionsIn(condition)) {
      for (const path of clausesOf(each, document)) {
        const key = path.join('/');
        if (seen.has(key)) continue;
        seen.add(key);
        yield { kind: 'clause', path, says: `${key} left out`, document: withoutPart(document, path) };
      }
    }
  }
}

/** The parts of a condition that can be left out while others stay: items of a list, keys of a map. */
function clausesOf(condition: Condition, document: Document): Path[] {
  if (!('of' in condition)) return [];
  const { node } = partAt(document, condition.path);
  const path = condition.kind === 'at_least_of' ? [...condition.path, 'of'] : condition.path;
  const list: Node = condition.kind === 'at_least_of' ? partAt(document, path).node : node;
  if (list.kind === 'list' && list.items.length > 1) return list.items.map((_, index) => [...path, index]);
  if (list.kind === 'map' && list.entries.length > 1) return list.entries.map(({ key }) => [...path, key]);
  return [];
}

function* exceptionChanges(document: Document, { rules, measures }: Protocol): Generator<Change> {
  const exceptions = [
    ...rules.flatMap(({ path, unless, explainedBy, notReliableWhen }) => [
      ...(unless ? [[...path, 'unless']] : []),
      ...(explainedBy ? [[...path, 'explained_by']] : []),
      ...(notReliableWhen ? [[...path, 'not_reliable_when']] : []),
    ]),
    ...[...measures.values()].flatMap(({ path, notReliableWhen }) =>
      notReliableWhen ? [[...path, 'not_reliable_when']] : [],
    ),
  ];
  for (const path of exceptions) {
    yield {
      kind: 'exception',
      path,
      says: `${path.join('/')} left out`,
      document: withoutPart(document, path),
    };
  }
}
