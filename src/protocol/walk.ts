import type {
  Action,
  Comparison,
  Condition,
  Expression,
  Measure,
  MeasureHow,
  Operand,
  Protocol,
} from './protocol.ts';

/** Every condition inside a condition, itself first. */
export function* conditionsIn(condition: Condition): Generator<Condition> {
  const open: Condition[] = [condition];
  for (let next = open.pop(); next; next = open.pop()) {
    yield next;
    if ('of' in next) open.push(...[...next.of].reverse());
  }
}

/** Every comparison inside a condition, in file order. */
export function* comparisonsIn(condition: Condition): Generator<Comparison> {
  for (const each of conditionsIn(condition)) if (!('of' in each) && each.kind !== 'rule') yield each;
}

/** The rules that a condition names. */
export function rulesNamed(condition: Condition | null): string[] {
  if (!condition) return [];
  return [...conditionsIn(condition)].flatMap((each) => (each.kind === 'rule' ? [each.rule] : []));
}

/** Every number that an expression names or holds. */
export function* operandsIn(expression: Expression): Generator<Operand> {
  const open: Expression[] = [expression];
  for (let next = open.pop(); next; next = open.pop()) {
    if ('left' in next) open.push(next.right, next.left);
    else if (next.kind === 'negative') open.push(next.of);
    else yield next;
  }
}

/** Every action of a protocol: of its rules, then of its faults. */
export const actionsOf = ({ rules, faults }: Pick<Protocol, 'rules' | 'faults'>): Action[] =>
  [...rules, ...faults].flatMap((each) => each.do);

/** The numbers that a condition compares. */
export function operandsOfCondition(condition: Condition | null): Operand[] {
  if (!condition) return [];
  return [...comparisonsIn(condition)].flatMap((each) =>
    each.kind === 'compare' ? [each.subject, each.to] : [],
  );
}

/** The conditions that stand inside a measure, without not_reliable_when. */
export function conditionsOfMeasure(how: MeasureHow): Condition[] {
  if (how.kind === 'choose') return how.entries.flatMap(({ when }) => (when ? [when] : []));
  if ('over' in how) return [how.condition, how.where].filter((each) => each !== null);
  return [];
}

/** The numbers that a measure reads to have its value, directly; a look back's observation is not among them. */
export function operandsOfMeasure(how: MeasureHow): Operand[] {
  const inConditions = conditionsOfMeasure(how).flatMap(operandsOfCondition);
  switch (how.kind) {
    case 'formula':
      return [...operandsIn(how.formula)];
    case 'curve':
      return [how.of];
    case 'score':
      return how.parts.flatMap((part) => (part.kind === 'bands' ? [part.of] : []));
    case 'choose':
      return [...how.entries.map(({ use }) => use), ...inConditions];
    case 'first_known':
      return [...how.of];
    default:
      return inConditions;
  }
}

/** The observations that a measure names itself, not through other measures. */
export function observationsOfMeasure({ how, notReliableWhen }: Measure): string[] {
  const conditions = [...conditionsOfMeasure(how), ...(notReliableWhen ? [notReliableWhen] : [])];
  return [
    ...operandsOfMeasure(how).flatMap((each) => (each.kind === 'observation' ? [each.name] : [])),
    ...conditions.flatMap(observationsOfCondition),
    ...(how.kind === 'score'
      ? how.parts.flatMap((part) => (part.kind === 'choices' ? [part.observation] : []))
      : []),
    ...('over' in how && how.observation !== null ? [how.observation] : []),
  ];
}

/** The observations that a condition names itself. */
export function observationsOfCondition(condition: Condition | null): string[] {
  if (!condition) return [];
  return [...comparisonsIn(condition)].flatMap((each) => {
    if (each.kind !== 'compare') return [each.observation];
    return [each.subject, each.to].flatMap((side) => (side.kind === 'observation' ? [side.name] : []));
  });
}

/** Every condition of a protocol that decides something, with what it belongs to. */
export function conditionsOf(
  protocol: Pick<Protocol, 'applies' | 'faults' | 'measures' | 'rules' | 'partitions'>,
): Condition[] {
  const found: (Condition | null | undefined)[] = [protocol.applies];
  for (const { how, notReliableWhen } of protocol.measures.values())
    found.push(...conditionsOfMeasure(how), notReliableWhen);
  for (const rule of protocol.rules) {
    found.push(rule.when, rule.unless?.when, rule.explainedBy?.when, rule.notReliableWhen);
  }
  for (const { when } of protocol.faults) found.push(when);
  for (const { of } of protocol.partitions.values()) found.push(...of);
  return found.filter((each) => each !== null && each !== undefined);
}

/** The same, and those that decide nothing and are asked of the protocol as a whole. */
export const everyConditionOf = (
  protocol: Parameters<typeof conditionsOf>[0] & Pick<Protocol, 'ordinary' | 'mustSay'>,
): Condition[] => [
  ...conditionsOf(protocol),
  ...(protocol.ordinary ? [protocol.ordinary] : []),
  ...protocol.mustSay.values(),
];

/** The observations that something in a protocol reads. */
export function observationsRead(
  protocol: Pick<Protocol, 'applies' | 'faults' | 'measures' | 'rules' | 'partitions'>,
): ReadonlySet<string> {
  return new Set([
    ...conditionsOf(protocol).flatMap(observationsOfCondition),
    ...[...protocol.measures.values()].flatMap(observationsOfMeasure),
    ...protocol.faults.flatMap(({ readsHigh, readsLow }) => [...readsHigh.keys(), ...readsLow.keys()]),
  ]);
}
