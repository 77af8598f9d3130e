import type { Condition, Operand, Protocol } from '../protocol/protocol.ts';
import { comparisonsIn, operandsOfCondition, operandsOfMeasure, rulesNamed } from '../protocol/walk.ts';

/** How a rule reads observations, directly or through measures and rules. */
export interface RuleReads {
  /**
   * Those that only help and that it looks back at. Giving such a one in the present set adds a value to the window; what that
   * does cannot be seen from what is known without it.
   */
  readonly lookedBackAt: ReadonlySet<string>;
  /** Those that it reads together with other numbers, so that where it changes depends on them. */
  readonly combined: ReadonlySet<string>;
}

/** By the name of the rule. */
export function ruleReads(protocol: Protocol): ReadonlyMap<string, RuleReads> {
  const measures = new Map<string, RuleReads>();
  const rules = new Map<string, RuleReads>();
  const through = (operands: readonly Operand[]): RuleReads[] =>
    operands.flatMap((each) => (each.kind === 'measure' ? (measures.get(each.name) ?? []) : []));
  // Each measure and each rule stands after those that it reads.
  for (const { name, how } of protocol.measures.values()) {
    const isCombined = how.kind === 'formula' || how.kind === 'choose' || how.kind === 'first_known';
    const operands = operandsOfMeasure(how);
    const helps = 'over' in how && protocol.observations.get(how.observation ?? '')?.role === 'helps';
    const own: RuleReads = {
      lookedBackAt: new Set(helps ? [how.observation ?? ''] : []),
      combined: isCombined ? observationsAmong(operands) : new Set(),
    };
    measures.set(name, joined([own, ...through(operands)]));
  }
  const ofCondition = (condition: Condition | null): RuleReads[] => [
    ...through(operandsOfCondition(condition)),
    { lookedBackAt: new Set(), combined: comparedWithNumbers(condition) },
    ...rulesNamed(condition).flatMap((rule) => rules.get(rule) ?? []),
  ];
  for (const { name, when, unless } of protocol.rulesInOrder) {
    rules.set(name, joined([...ofCondition(when), ...ofCondition(unless?.when ?? null)]));
  }
  return rules;
}

const observationsAmong = (operands: readonly Operand[]): Set<string> =>
  new Set(operands.flatMap((each) => (each.kind === 'observation' ? [each.name] : [])));

/** Observations that are compared with something else than a plain number or a limit. */
function comparedWithNumbers(condition: Condition | null): Set<string> {
  if (!condition) return new Set();
  return observationsAmong(
    [...comparisonsIn(condition)].flatMap((each) =>
      each.kind === 'compare' && (each.to.kind === 'observation' || each.to.kind === 'measure')
        ? [each.subject, each.to]
        : [],
    ),
  );
}

function joined(parts: readonly RuleReads[]): RuleReads {
  return {
    lookedBackAt: new Set(parts.flatMap(({ lookedBackAt }) => [...lookedBackAt])),
    combined: new Set(parts.flatMap(({ combined }) => [...combined])),
  };
}
