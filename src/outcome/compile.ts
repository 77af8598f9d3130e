import { cutPoints } from '../logic/cut-points.ts';
import type { Logic } from '../logic/logic.ts';
import { protocolToLogic } from '../logic/protocol-to-logic.ts';
import type { Comparison, Protocol } from '../protocol/protocol.ts';
import { logicToEvaluator } from '../targets/evaluator/logic-to-evaluator.ts';
import { amountsOf, type Amounts } from './amounts.ts';
import type { ChoicePlaces } from './choice-in-words.ts';
import { comparisonTeller } from './comparison-in-words.ts';
import type { Tell } from './tell.ts';
import { conditionReaders, type ConditionReaders } from './condition-readers.ts';
import { Explainer } from './explain.ts';
import { howWriter } from './how-in-words.ts';
import { levelAlone, levelReaders, type LevelReaders } from './level-readers.ts';
import type { Wording } from './wording.ts';
import { numberWriter } from './number-in-words.ts';
import { places, type Places } from './places.ts';
import { ruleReaders, type RuleReaders } from './rule-readers.ts';
import { ruleReads, type RuleReads } from './rule-reads.ts';

/**
 * A protocol that can be asked: everything that does not change from set to set, worked out once.
 *
 * Logic whose numbers could grow too large must not be asked; the check of a protocol refuses it before.
 */
export interface Compiled extends LevelReaders {
  readonly protocol: Protocol;
  readonly logic: Logic;
  /** For whoever asks of very many sets, and for the level only. */
  readonly levelAlone: LevelReaders;
  readonly places: Places;
  /** By name, in the order of the file. */
  readonly rules: ReadonlyMap<string, RuleReaders>;
  readonly conditions: ConditionReaders;
  readonly amounts: Amounts;
  readonly explainer: Explainer;
  readonly tell: (comparison: Comparison) => Tell;
  readonly wording: Wording;
  /** Where answers about an observation can change, in steps, at the limits of the file. */
  readonly cuts: ReadonlyMap<string, readonly number[]>;
  readonly reads: ReadonlyMap<string, RuleReads>;
}

export function compile(protocol: Protocol, logic: Logic = protocolToLogic(protocol).logic): Compiled {
  const evaluator = logicToEvaluator(logic);
  const where = places(protocol, logic);
  const conditions = conditionReaders(logic, evaluator);
  const rules = ruleReaders(protocol, logic, evaluator);
  const amounts = amountsOf(protocol, logic, evaluator);
  const wording: Wording = {
    protocol,
    amounts,
    numbers: numberWriter(protocol, amounts),
    conditions,
    choices: (name) => choicePlaces(where, name),
    place: (input) => where.of(input),
  };
  const tell = tellers(wording);
  return {
    protocol,
    logic,
    ...levelReaders(logic, evaluator),
    levelAlone: levelAlone(logic),
    places: where,
    rules,
    conditions,
    amounts,
    explainer: new Explainer({ conditions, rules, tell }),
    tell,
    wording,
    cuts: cutPoints(protocol),
    reads: ruleReads(protocol),
  };
}

function choicePlaces({ observations }: Places, name: string): ChoicePlaces {
  const place = observations.get(name);
  return { may: place?.may ?? [], sure: place?.sure ?? [] };
}

/** The sentence of each comparison, made when it is first told. */
function tellers(wording: Wording): (comparison: Comparison) => Tell {
  const how = howWriter(wording);
  const known = new Map<Comparison, Tell>();
  return (comparison) => {
    const before = known.get(comparison);
    if (before) return before;
    const made = comparisonTeller(comparison, wording, how);
    known.set(comparison, made);
    return made;
  };
}
