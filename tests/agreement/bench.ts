import { isDeepStrictEqual } from 'node:util';
import { stringify } from 'yaml';
import type { Compiled } from '../../src/index.ts';
import { judge, type Protocol } from '../oracle/oracle.ts';
import { compared, type Verdict } from './compare.ts';
import type { Draw } from './draw.ts';
import { answerOf, boundsOf, protocolOf, type KitAnswer } from './kit.ts';
import { plainApart } from './plain.ts';
import { drawProtocol, ladderText, levels, type MadeProtocol, type Plain } from './protocols.ts';
import { targetsOf, type Targets } from './said.ts';
import { drawSet } from './sets.ts';
import { targetsSay } from './targets.ts';
import { asSeries, neverMet, reordered, splitSets, withRuleNeverMet } from './variants.ts';

/** A made-up protocol with everything that answers for it, each made once for all of its sets. */
export interface Bench {
  readonly made: MadeProtocol;
  /** Whether its sets may be series. */
  readonly series: boolean;
  readonly compiled: Compiled;
  /** What the targets are, when they were asked for. */
  readonly targets: Targets | null;
  /** The same protocol in another order, and with a rule that is never met; made when they are asked for. */
  readonly otherOrder: () => Compiled;
  readonly oneRuleMore: () => Compiled;
}

const compile = (protocol: Plain): Compiled => protocolOf(stringify(protocol), ladderText);

/** The same chances give the same bench, whether targets are asked for or not. */
export async function drawBench(draw: Draw, withTargets: boolean): Promise<Bench> {
  const { series, ...made } = drawProtocol(draw);
  const compiled = protocolOf(made.text, ladderText);
  const order = reordered(draw, made.protocol) as Plain;
  const more = withRuleNeverMet(made.protocol, made.subjects[0]?.name ?? '', levels[3]);
  const [otherOrder, oneRuleMore] = [order, more].map((protocol) => lazily(() => compile(protocol)));
  const targets = withTargets ? await targetsOf(compiled) : null;
  return { made, series, compiled, targets, otherOrder, oneRuleMore } as Bench;
}

function lazily<T>(make: () => T): () => T {
  let made: { readonly is: T } | null = null;
  return () => (made ??= { is: make() }).is;
}

/** Most sets leave few values open, so that many can be asked; one in eight up to as many as the judge can look at. */
export const drawSetFor = (draw: Draw, { made, series }: Bench): Plain =>
  drawSet(draw, made, series, draw.chance(12) ? 4000 : 250);

/** What was found out of one set. */
export interface Asked {
  /** What differs, in a line each; nothing when all agree. */
  readonly wrong: readonly string[];
  readonly verdict: Verdict;
  /** What the module packed for it, for the comparison of many rows at a time; null when it was not asked. */
  readonly packed: ReturnType<typeof targetsSay> | null;
  readonly excused: boolean;
}

/** Asks the judge, the evaluator, the module and json-logic-js about one set, and wants the same of all. */
export function askAll({ made, compiled, targets }: Bench, set: Plain): Asked {
  const bounds = boundsOf(compiled, JSON.stringify(set));
  const kit = answerOf(compiled, bounds);
  const verdict = judge(made.protocol as Protocol, levels, set);
  const { wrong, excused } = compared(made.protocol, levels, kit, verdict);
  const packed = targets && targetsSay(targets, bounds, kit);
  return { wrong: [...wrong, ...(packed?.told ?? [])], verdict, packed, excused: excused.length > 0 };
}

/** What must not change an answer: the order of keys, rules and sets; a rule that is never met; a set told in two parts. */
export function askVariants(bench: Bench, set: Plain, draw: Draw): readonly string[] {
  const { made, compiled, targets } = bench;
  const ask = (protocol: Compiled, what: unknown): KitAnswer =>
    answerOf(protocol, boundsOf(protocol, JSON.stringify(what)));
  const bounds = boundsOf(compiled, JSON.stringify(set));
  const plain = answerOf(compiled, bounds);
  const { rules, ...more } = ask(bench.oneRuleMore(), set);
  const { [neverMet]: added, ...others } = rules;
  const series = asSeries(set);
  const same = (what: string, one: KitAnswer, other: KitAnswer): readonly string[] =>
    isDeepStrictEqual(one, other) ? [] : [`${what}: ${JSON.stringify(other)}, not ${JSON.stringify(one)}`];
  return [
    ...(targets ? plainApart(targets, made, set, bounds, plain) : []),
    ...same('in another order', plain, ask(bench.otherOrder(), reordered(draw, set))),
    ...same('with a rule that is never met', plain, { ...more, rules: others }),
    ...(added?.state === 'not_met' ? [] : ['a rule that is never met is not not_met']),
    ...same('told in two parts', ask(compiled, series), ask(compiled, splitSets(draw, series))),
  ];
}
