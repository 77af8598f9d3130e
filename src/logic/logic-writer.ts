import type { Condition, Measure, Operand, Protocol, Rule } from '../protocol/protocol.ts';
import { quantityOf } from '../protocol/quantities.ts';
import { Arithmetic } from './arithmetic.ts';
import { conditionRails } from './conditions.ts';
import type { Context, Rails } from './context.ts';
import { ofNode, over1, type Node } from './linear.ts';
import { literalIn } from './literal.ts';
import { stepName, type Divisor, type FixedComparison, type MeasureLogic, type RuleLogic } from './logic.ts';
import { measureForm } from './measures/measure-form.ts';
import { measureValue } from './measures/value.ts';
import { settledPresence, type NumberForm, type Presence } from './number-form.ts';
import { limitForm, numberNodes, observationPresence } from './observations.ts';
import type { Logical } from './operators.ts';
import { ruleLogic, type Blindness } from './rules.ts';
import { stepWriter, type StepWriter } from './step-writer.ts';

/** Writes the logic of one protocol part by part, each after those that it reads, and remembers what was written. */
export class LogicWriter implements Context {
  readonly protocol: Protocol;
  readonly writer: StepWriter = stepWriter();
  readonly arithmetic = new Arithmetic(this.writer);
  readonly divisors: Divisor[] = [];
  readonly fixed: FixedComparison[] = [];
  /** By the path of the condition. */
  readonly conditions = new Map<string, { readonly certain: Logical; readonly possible: Logical }>();
  readonly #nodes: ReadonlyMap<string, Node>;
  readonly #presences = new Map<string, Presence>();
  readonly #measures = new Map<string, NumberForm>();
  readonly #rules = new Map<string, RuleLogic & Rails>();

  constructor(protocol: Protocol) {
    this.protocol = protocol;
    this.#nodes = numberNodes(protocol);
  }

  writeMeasure(measure: Measure): MeasureLogic {
    const made = measureForm(measure, this);
    this.#measures.set(measure.name, made);
    return measureValue(measure, made, this);
  }

  writeRule(rule: Rule, blind: Blindness): RuleLogic {
    const made = ruleLogic(rule, this, blind);
    this.#rules.set(rule.name, made);
    return made;
  }

  rails(condition: Condition): Rails {
    const made = conditionRails(condition, this, (rule) => found(this.#rules.get(rule), rule));
    this.conditions.set(stepName(condition.path), { certain: made.certain, possible: made.possible });
    return made;
  }

  presenceOf(observation: string): Presence {
    const known = this.#presences.get(observation) ?? observationPresence(observation, this, this.#nodes);
    this.#presences.set(observation, known);
    return known;
  }

  form(operand: Operand): NumberForm {
    switch (operand.kind) {
      case 'number': {
        const quantity = operand.unit ? quantityOf(operand.unit) : ('plain' as const);
        return { ratio: over1(literalIn(operand, quantity)), quantity, presence: settledPresence };
      }
      case 'observation': {
        const observation = found(this.protocol.observations.get(operand.name), operand.name);
        const ratio = over1(
          ofNode(found(this.#nodes.get(operand.name), operand.name), observation.stepsPerUnit),
        );
        return { ratio, quantity: quantityOf(observation.unit), presence: this.presenceOf(operand.name) };
      }
      case 'limit':
        return limitForm(operand.name, this.protocol, this.#nodes);
      case 'measure':
        return found(this.#measures.get(operand.name), operand.name);
    }
  }
}

/** What a name stands for. Names were resolved when the protocol was read, so that nothing is found is a fault of our own. */
function found<Part>(part: Part | undefined, name: string): Part {
  if (part === undefined) throw new Error(`"${name}" is read before it is written`);
  return part;
}
