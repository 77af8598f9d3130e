import Fraction from 'fraction.js';
import { withValue } from '../../document/edit.ts';
import { literalIn } from '../../logic/literal.ts';
import type { Path } from '../../problems/place.ts';
import type { NumberOperand, Operand } from '../../protocol/protocol.ts';
import { quantityOf } from '../../protocol/quantities.ts';
import { conditionsIn, conditionsOf } from '../../protocol/walk.ts';
import type { Unit } from '../../vocabulary/units.ts';
import type { Change, ChangeKind, Within } from './change.ts';
import { made, type Original } from './making.ts';
import { roundNumbers, stepOf, written } from './steps.ts';

/** A number that is compared with, and where it is written. */
interface Threshold {
  readonly path: Path;
  readonly at: NumberOperand;
  readonly step: Fraction;
  /** The unit that a plain number is in. */
  readonly own: Unit | null;
  /** Of a score's band: what the score is over. */
  readonly of: Operand | null;
}

/**
 * Each threshold moved one step down and up, and to the next round number in each direction: numbers in conditions, cut
 * points of a score's bands, limits, the amounts of faults, and how many of a list must hold. The points of curves and the numbers in formulas stay.
 */
export function* thresholdChanges(original: Original): Generator<Change> {
  for (const threshold of thresholds(original)) yield* moved(threshold, original);
  yield* countChanges(original);
}

function* thresholds({ protocol }: Original): Generator<Threshold> {
  const { observations } = protocol;
  const ownUnit = (of: Operand): Unit | null =>
    of.kind === 'observation' ? (observations.get(of.name)?.unit ?? null) : null;
  for (const condition of conditionsOf(protocol)) {
    for (const each of conditionsIn(condition)) {
      if (each.kind !== 'compare' || each.to.kind !== 'number') continue;
      const { path, subject, to: at } = each;
      yield { path, at, step: stepOf(subject, at, protocol), own: ownUnit(subject), of: null };
    }
  }
  for (const { how } of protocol.measures.values()) {
    for (const part of how.kind === 'score' ? how.parts : []) {
      if (part.kind !== 'bands') continue;
      for (const [index, { to: at, included }] of part.bands.entries()) {
        if (!at) continue;
        const path = [...part.path, index, included ? 'at_most' : 'below'];
        yield { path, at, step: stepOf(part.of, at, protocol), own: ownUnit(part.of), of: part.of };
      }
    }
  }
  for (const { readsHigh, readsLow, path } of protocol.faults) {
    for (const [key, amounts] of [
      ['reads_high', readsHigh],
      ['reads_low', readsLow],
    ] as const) {
      for (const [name, steps] of amounts) {
        const { stepsPerUnit = new Fraction(1) } = observations.get(name) ?? {};
        const at: NumberOperand = {
          kind: 'number',
          value: new Fraction(steps).div(stepsPerUnit),
          unit: null,
        };
        yield { path: [...path, key, name], at, step: stepsPerUnit.inverse(), own: null, of: null };
      }
    }
  }
  for (const limit of protocol.limits.values()) {
    const value = new Fraction(limit.value).div(limit.stepsPerUnit);
    const at: NumberOperand = { kind: 'number', value, unit: null };
    yield { path: [...limit.path, 'value'], at, step: limit.stepsPerUnit.inverse(), own: null, of: null };
  }
}

function* moved(threshold: Threshold, original: Original): Generator<Change> {
  const { value, unit } = threshold.at;
  const { path, step, own } = threshold;
  const [down, up] = roundNumbers(value, step);
  const seen = new Set([value.toFraction()]);
  const moves: readonly (readonly [ChangeKind, Fraction])[] = [
    ['step', value.sub(step)],
    ['step', value.add(step)],
    ['round', down],
    ['round', up],
  ];
  for (const [kind, to] of moves) {
    if (seen.has(to.toFraction())) continue;
    seen.add(to.toFraction());
    const [from, there] = [written(value, unit, own), written(to, unit, own)];
    yield made(original, {
      kind,
      path,
      what: `${from} to ${there}`,
      document: withValue(original.document, path, there),
      within: bandsBetween(threshold, to, original),
    });
  }
}

/** The values of the observation of a score for which it matters that a cut point moves. */
function bandsBetween({ of, at }: Threshold, to: Fraction, { protocol }: Original): Within | null {
  const observation = of?.kind === 'observation' ? protocol.observations.get(of.name) : undefined;
  if (!observation) return null;
  const ends = [at.value, to].map((value) =>
    literalIn({ ...at, value }, quantityOf(observation.unit)).constant.mul(observation.stepsPerUnit),
  );
  const [low, high] = ends.map((end) => end.valueOf()).sort((left, right) => left - right) as [
    number,
    number,
  ];
  return { observation: observation.name, low: Math.floor(low), high: Math.ceil(high) };
}

/** How many of a list must hold: one fewer, one more. */
function* countChanges(original: Original): Generator<Change> {
  for (const condition of conditionsOf(original.protocol)) {
    for (const each of conditionsIn(condition)) {
      if (each.kind !== 'at_least_of') continue;
      const path = [...each.path, 'count'];
      for (const to of [each.count - 1, each.count + 1]) {
        const document = withValue(original.document, path, to);
        yield made(original, { kind: 'step', path, what: `${each.count} to ${to}`, document });
      }
    }
  }
}
