import type { Comparison, Condition } from '../protocol/protocol.ts';
import type { Tell } from './tell.ts';
import type { ConditionReaders } from './condition-readers.ts';
import type { RuleReaders } from './rule-readers.ts';
import { sentences, type Asker } from './sentences.ts';
import type { View } from './view.ts';

/** What is needed to say which parts decided. */
export interface Deciding {
  readonly conditions: ConditionReaders;
  readonly rules: ReadonlyMap<string, RuleReaders>;
  readonly tell: (comparison: Comparison) => Tell;
}

interface Walk {
  readonly view: View;
  /** Whether exceptions that nobody has answered are left aside. */
  readonly mode: 'certain' | 'counts';
  readonly asker: Asker | null;
  readonly found: string[];
}

/** Says what decided a condition. */
export class Explainer {
  readonly #deciding: Deciding;

  constructor(deciding: Deciding) {
    this.#deciding = deciding;
  }

  /** Why a condition certainly holds, or fails, in a view. */
  because(condition: Condition, holds: boolean, view: View, asker: Asker | null): readonly string[] {
    const found: string[] = [];
    this.#walk(condition, holds, true, { view, mode: 'certain', asker, found });
    return found;
  }

  /** Why a condition counts although an exception in a rule that it names is unanswered. */
  becauseItCounts(condition: Condition, view: View, asker: Asker): readonly string[] {
    const found: string[] = [];
    this.#walk(condition, true, true, { view, mode: 'counts', asker, found });
    return found;
  }

  /** `wanted`: whether the rule asks for it to hold. */
  #walk(condition: Condition, holds: boolean, wanted: boolean, at: Walk): void {
    switch (condition.kind) {
      case 'all':
        return this.#parts(condition.of, holds, wanted, at, holds);
      case 'any':
        return this.#parts(condition.of, holds, wanted, at, !holds);
      case 'none':
        return this.#parts(condition.of, !holds, !wanted, at, holds);
      case 'at_least_of':
        this.#counted(condition, holds, wanted, at);
        return this.#parts(condition.of, holds, wanted, at, false);
      case 'rule':
        at.found.push(this.#aboutRule(condition.rule, holds, at));
        return undefined;
      default:
        at.found.push(this.#deciding.tell(condition)(at.view, { holds, wanted, asker: at.asker }));
        return undefined;
    }
  }

  /** All parts when every one of them is needed, else those that are so. */
  #parts(of: readonly Condition[], holds: boolean, wanted: boolean, at: Walk, every: boolean): void {
    for (const each of of) if (every || this.#is(each, holds, at)) this.#walk(each, holds, wanted, at);
  }

  #counted({ of, count }: AtLeastOf, holds: boolean, wanted: boolean, at: Walk): void {
    const so = of.filter((each) => this.#is(each, holds, at)).length;
    const what = wanted ? `${count} or more` : `fewer than ${count}`;
    const asked = at.asker && { asker: at.asker, what };
    at.found.push(sentences.counted({ count: holds ? so : of.length - so, of: of.length, holds, asked }));
  }

  #aboutRule(name: string, holds: boolean, { mode, view }: Walk): string {
    const { rule, certain } = this.#readersOf(name);
    if (mode === 'counts' && holds && certain(view.result) === 0) return sentences.ruleCounts(rule);
    return sentences.rule({ title: rule.title, state: holds ? 'met' : 'not met' });
  }

  /** Whether a part certainly holds (or counts), or certainly fails. */
  #is(condition: Condition, holds: boolean, { view, mode }: Walk): boolean {
    const { result } = view;
    if (mode === 'counts' && holds) return this.#counts(condition, result);
    const truth = this.#deciding.conditions.of(condition);
    return holds ? truth.certain(result) !== 0 : truth.possible(result) === 0;
  }

  #counts(condition: Condition, result: Float64Array): boolean {
    switch (condition.kind) {
      case 'rule':
        return this.#readersOf(condition.rule).counts(result) !== 0;
      case 'all':
        return condition.of.every((each) => this.#counts(each, result));
      case 'any':
        return condition.of.some((each) => this.#counts(each, result));
      case 'at_least_of':
        return condition.of.filter((each) => this.#counts(each, result)).length >= condition.count;
      default:
        return this.#deciding.conditions.of(condition).certain(result) !== 0;
    }
  }

  #readersOf(rule: string): RuleReaders {
    const readers = this.#deciding.rules.get(rule);
    if (!readers) throw new Error(`no rule is called ${rule}`);
    return readers;
  }
}

type AtLeastOf = Extract<Condition, { kind: 'at_least_of' }>;
