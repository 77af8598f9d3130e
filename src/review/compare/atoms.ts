import type { Logic } from '../../logic/logic.ts';
import { stepName } from '../../logic/logic.ts';
import type { Logical } from '../../logic/operators.ts';
import { stepsFor } from '../../logic/used-steps.ts';
import type { Compiled } from '../../outcome/compile.ts';
import type { Comparison, Condition } from '../../protocol/protocol.ts';
import { comparisonsIn } from '../../protocol/walk.ts';
import { logicToEvaluator } from '../../targets/evaluator/logic-to-evaluator.ts';
import type { SameLogic } from '../guards/same-logic.ts';
import { inputsBehind } from '../observations-behind.ts';
import { fillerOf } from './fill.ts';
import { lookBackKey } from '../look-back-key.ts';
import { valueKey, type Space } from './space.ts';

/** How a comparison stands: not settled; it holds; it does not; its number has no value, so that nobody knows. */
export const stands = { open: 0, holds: 1, fails: 2, lacks: 3 } as const;
export type Stand = (typeof stands)[keyof typeof stands];

/** A comparison of a rule on either side. Those that are built alike are one. */
export interface Atom {
  readonly index: number;
  /** What it reads, as places of dimensions. */
  readonly reads: readonly number[];
  /**
   * Whether it is settled as a whole: it reads two or three numbers at once, so that its edge runs askew. Any other is settled by cutting what
   * it reads.
   */
  readonly askew: boolean;
  /** Whether its number may have no value although everything is known. */
  readonly mayLack: boolean;
  /** One of the comparisons that it stands for, and where. */
  readonly comparison: Comparison;
  readonly compiled: Compiled;
  readonly stand: (lows: Float64Array, highs: Float64Array) => Stand;
}

export interface Atoms {
  readonly all: readonly Atom[];
  /** By member and by the path of the comparison. */
  readonly at: (member: Compiled, path: string) => Atom | undefined;
  readonly of: (comparison: Comparison, member: Compiled) => Atom | undefined;
}

/** Every comparison that a rule, or the question whether a protocol is for the patient, asks. */
export function atomsOf(members: readonly Compiled[], space: Space, same: SameLogic): Atoms {
  const all: Atom[] = [];
  const byKey = new Map<string, Atom>();
  const found = new Map<Compiled, Map<string, Atom>>();
  for (const compiled of members) {
    const numberOf = same.of(compiled);
    const own = new Map<string, Atom>();
    for (const comparison of asked(compiled)) {
      const path = stepName(comparison.path);
      const truth = compiled.logic.conditions.get(path);
      if (!truth || own.has(path)) continue;
      const key = `${numberOf(truth.certain)} ${numberOf(truth.possible)}`;
      const atom = byKey.get(key) ?? atomOf(all.length, comparison, compiled, truth, space);
      if (!byKey.has(key)) all.push(atom);
      byKey.set(key, atom);
      own.set(path, atom);
    }
    found.set(compiled, own);
  }
  const at = (member: Compiled, path: string): Atom | undefined => found.get(member)?.get(path);
  const known = new Map<Compiled, Map<Comparison, Atom | undefined>>(
    members.map((member) => [member, new Map()]),
  );
  const of = (comparison: Comparison, member: Compiled): Atom | undefined => {
    const own = known.get(member);
    if (own?.has(comparison)) return own.get(comparison);
    const atom = at(member, stepName(comparison.path));
    own?.set(comparison, atom);
    return atom;
  };
  return { all, at, of };
}

/** What rules are met by, explained by, and not reliable by. */
export function conditionsAsked({ protocol }: Compiled): Condition[] {
  return [
    protocol.applies,
    ...protocol.rules.flatMap((rule) => [
      rule.when,
      rule.unless?.when,
      rule.explainedBy?.when,
      rule.notReliableWhen,
    ]),
    ...[...protocol.measures.values()].map(({ notReliableWhen }) => notReliableWhen),
  ].flatMap((each) => each ?? []);
}

const asked = (compiled: Compiled): Comparison[] =>
  conditionsAsked(compiled).flatMap((each) => [...comparisonsIn(each)]);

type Truth = { readonly certain: Logical; readonly possible: Logical };

function atomOf(index: number, comparison: Comparison, compiled: Compiled, truth: Truth, space: Space): Atom {
  const { logic, protocol } = compiled;
  const reads = readsOf(truth, compiled, space);
  const numbers = reads.every((place) => {
    const kind = space.dimensions[place]?.kind;
    return kind === 'number' || kind === 'look_back' || space.dimensions[place]?.lookBack;
  });
  const maybe = comparison.kind === 'compare' ? valueOf(comparison, logic) : true;
  const askew =
    comparison.kind === 'compare' &&
    numbers &&
    reads.length <= 3 &&
    (reads.length > 1 || !isDirect(comparison));
  const answers = [truth.certain, truth.possible, maybe];
  const needed = inputsBehind(logic, answers);
  const evaluator = logicToEvaluator({ ...logic, inputs: needed, steps: stepsFor(logic.steps, answers) });
  const fill = fillerOf(needed, protocol, space);
  const inputs = new Float64Array(needed.length);
  const [certain, possible, hasValue] = answers.map((each) => evaluator.reader(each)) as [Read, Read, Read];
  const stand = (lows: Float64Array, highs: Float64Array): Stand => {
    fill(lows, highs, inputs);
    const result = evaluator.run(inputs);
    if (certain(result) !== 0) return stands.holds;
    if (possible(result) === 0) return stands.fails;
    return hasValue(result) === 0 ? stands.lacks : stands.open;
  };
  return { index, reads, askew, mayLack: maybe !== true, comparison, compiled, stand };
}

type Read = (result: Float64Array) => number;

/** Whether a comparison is of an observation with a fixed number. */
const isDirect = (comparison: Comparison): boolean =>
  comparison.kind === 'compare' &&
  comparison.subject.kind === 'observation' &&
  comparison.to.kind !== 'measure';

/** Whether the numbers of a comparison may have a value. */
function valueOf(comparison: Comparison & { kind: 'compare' }, { measures }: Logic): Logical {
  const maybes = [comparison.subject, comparison.to].flatMap((operand) => {
    const measure =
      operand.kind === 'measure' ? measures.find((each) => each.measure === operand.name) : undefined;
    return measure && measure.maybe !== true ? [measure.maybe] : [];
  });
  return maybes.length === 0 ? true : { and: maybes };
}

/** The places of everything that some truth reads. */
function readsOf({ certain, possible }: Truth, { logic, protocol }: Compiled, { places }: Space): number[] {
  const found = new Set<number>();
  for (const { of, owner, choice } of inputsBehind(logic, [certain, possible])) {
    if (of === 'limit') continue;
    const how = of === 'look_back' ? protocol.measures.get(owner)?.how : undefined;
    const keys =
      how && 'over' in how ? [lookBackKey(owner, how), valueKey(lookBackKey(owner, how))] : [owner];
    if (choice !== null) keys.push(`${owner}:${choice}`);
    for (const key of keys) {
      const place = places.get(key);
      if (place !== undefined) found.add(place);
    }
  }
  return [...found].sort((left, right) => left - right);
}
