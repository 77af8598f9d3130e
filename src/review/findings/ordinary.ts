import type { Rule } from '../../protocol/protocol.ts';
import { observationsOfCondition } from '../../protocol/walk.ts';
import { everything, ordinaryPiece, type Allowed } from '../diagrams/preferred.ts';
import type { Variable } from '../diagrams/variables.ts';
import { ordinaryPart, type Asking, type Question } from './asking.ts';
import type { Found } from './finding.ts';
import type { RuleTruths } from './rule-truths.ts';
import type { Diagram } from '../diagrams/diagrams.ts';
import { witness } from './witness.ts';
import { sentences } from './wording.ts';

/**
 * Ordinary sets that do not settle at the lowest level: for each rule that calls, or could call, for more in one, that set.
 *
 * Ordinary is what the protocol names so; of what it does not name, the ordinary value of the dictionary, and nothing of what only helps.
 */
export function* ordinary(asking: Asking): Generator<Found> {
  const { protocol } = asking.compiled;
  if (!protocol.ordinary) return;
  const named = new Set(observationsOfCondition(protocol.ordinary));
  const allowed = (variable: Variable): Allowed => ordinaryPieces(variable, named);
  const inRange = (of: RuleTruths): Diagram[] => [
    of.mayApply(),
    of.of(of.logic.partitions.find(({ name }) => name === ordinaryPart)?.of[0]?.certain ?? false),
  ];
  const anyone = asking.exists({ holds: inRange, confirms: ({ applies }) => applies !== 'no', allowed });
  if (anyone.kind === 'none') {
    const name = 'no ordinary set is for this protocol';
    const sentence = sentences.ordinary_for_nobody();
    yield {
      kind: 'ordinary_not_settled',
      name,
      path: ['ordinary'],
      is: 'found',
      sentence,
      witnesses: [],
      needsAnswer: true,
    };
    return;
  }
  for (const rule of protocol.rules)
    if ((rule.level ?? 0) > 0) yield* ordinaryWith(rule, { inRange, allowed }, asking);
}

interface Ordinary {
  readonly inRange: (of: RuleTruths) => Diagram[];
  readonly allowed: NonNullable<Question['allowed']>;
}

function* ordinaryWith(rule: Rule, { inRange, allowed }: Ordinary, asking: Asking): Generator<Found> {
  const name = `rule ${rule.name} speaks in an ordinary set`;
  const head = { kind: 'ordinary_not_settled', name, path: ['ordinary'] } as const;
  const found = asking.exists({
    holds: (of) => [...inRange(of), callsForMore(rule, of)],
    confirms: ({ level }) => level !== null && !(level.settled && level.atLeast === 0),
    allowed,
  });
  if (found.kind === 'open') yield { ...head, is: 'not_settled', because: found.because };
  if (found.kind !== 'set') return;
  const sentence = sentences.ordinary_not_settled(rule);
  yield { ...head, is: 'found', sentence, witnesses: [witness(found.box, name, asking)], needsAnswer: true };
}

function callsForMore(rule: Rule, of: RuleTruths): Diagram {
  const { counts, could } = of.logicOf(rule);
  return of.of({ or: [counts, could] });
}

function ordinaryPieces(variable: Variable, named: ReadonlySet<string>): Allowed {
  const { observation, member, values, lacks } = variable;
  if (named.has(observation.name)) return everything(variable);
  const { role, ifNotStated, ordinary: usual, kind } = observation;
  if (member === null && (role === 'helps' || ifNotStated !== null))
    return { values: null, lacks: (piece) => lacks[piece - values]?.unobtainable === false };
  const at = ordinaryPiece(variable);
  const any = usual === null || (kind === 'several' && member === null);
  return { values: any ? [0, values - 1] : [at, at], lacks: () => false };
}
