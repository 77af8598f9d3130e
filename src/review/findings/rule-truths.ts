import type { Logic, RuleLogic } from '../../logic/logic.ts';
import type { Rule } from '../../protocol/protocol.ts';
import type { Diagram } from '../diagrams/diagrams.ts';
import { LogicDiagrams } from '../diagrams/logic-to-diagrams.ts';
import type { Space } from '../diagrams/space.ts';

/** What rules and levels are, as functions of the set. */
export class RuleTruths {
  readonly #space: Space;
  readonly #logic: Logic;
  readonly #diagrams: LogicDiagrams;
  readonly #byName: ReadonlyMap<string, RuleLogic>;

  constructor(space: Space, logic: Logic) {
    [this.#space, this.#logic] = [space, logic];
    this.#diagrams = new LogicDiagrams(space, logic);
    this.#byName = new Map(logic.rules.map((each) => [each.rule, each]));
  }

  get logic(): Logic {
    return this.#logic;
  }

  /** Any answer of the logic. */
  of = (logical: Parameters<LogicDiagrams['of']>[0]): Diagram => this.#diagrams.of(logical);

  not = (diagram: Diagram): Diagram => this.#space.store.not(diagram);

  mayApply = (): Diagram => this.of(this.#logic.applies.possible);
  surelyApplies = (): Diagram => this.of(this.#logic.applies.certain);

  met = (rule: Rule): Diagram => this.of(this.logicOf(rule).certain);
  /** Met, or held back by nothing but an exception that nobody has answered. */
  counts = (rule: Rule): Diagram => this.of(this.logicOf(rule).counts);

  /** The rule calls for exactly this level. */
  calls(rule: Rule, level: number, how: 'counts' | 'could' = 'counts'): Diagram {
    const { store } = this.#space;
    const own = rule.level ?? -1;
    const explained = rule.explainedBy?.level ?? own;
    if (own !== level && explained !== level) return store.no;
    const calls = this.of(this.logicOf(rule)[how]);
    if (own === explained) return calls;
    const isExplained = this.of(this.logicOf(rule).explained.certain);
    return store.and(calls, explained === level ? isExplained : store.not(isExplained));
  }

  /** No rule calls for more than a level: what must all hold. With `could`: none could, either. */
  noneAbove(level: number, rules: readonly Rule[], how: 'counts' | 'could' = 'counts'): Diagram[] {
    const calling = rules.filter((rule) => (rule.level ?? -1) > level);
    return calling.map((rule) => {
      const own = this.calls(rule, rule.level as number, how);
      const explained = rule.explainedBy?.level ?? null;
      const lower =
        explained !== null && explained > level ? this.calls(rule, explained, how) : this.#space.store.no;
      return this.not(this.#space.store.or(own, lower));
    });
  }

  logicOf({ name }: Rule): RuleLogic {
    return this.#byName.get(name) as RuleLogic;
  }
}
