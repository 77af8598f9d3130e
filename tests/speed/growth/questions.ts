import { not, or, type Logical } from '../../../src/logic/operators.ts';
import { protocolToLogic } from '../../../src/logic/protocol-to-logic.ts';
import type { Protocol } from '../../../src/protocol/protocol.ts';
import { compareSides } from '../../../src/review/compare/compare.ts';
import { Asking } from '../../../src/review/findings/asking.ts';
import { findingsOf } from '../../../src/review/findings/find-findings.ts';
import { neverMet } from '../../../src/review/findings/never-met.ts';
import { whereOf } from '../../../src/review/requirements/subject.ts';
import { proveRequirements } from '../../../src/review/requirements/prove.ts';
import { levelIsAtLeast, ruleIs, statesDiffer } from '../../../src/targets/smt-lib/answers.ts';
import { questionToSmt } from '../../../src/targets/smt-lib/question-to-smt.ts';
import { completeSets } from '../../../src/targets/smt-lib/sets.ts';
import type { Made } from './made-protocols.ts';

/** A question that the kit answers, and the same for solvers as scripts; none where it cannot be asked of them. */
export interface GrowthQuestion {
  readonly answer: () => string;
  readonly scripts: () => readonly string[];
  /** The answer of the kit that goes with these answers of a solver. */
  readonly told: (answers: readonly string[]) => string;
}

const notSettled = 'not settled';

/** The one requirement of a protocol. */
export const requirement = ({ compiled }: Made): GrowthQuestion => ({
  answer: () => {
    const [proof] = proveRequirements(compiled);
    if (!proof) throw new Error('nothing was asked');
    return proof.verdict === 'not_settled' ? notSettled : proof.verdict;
  },
  scripts: () => {
    const { protocol, logic } = withWhere(compiled.protocol);
    const [asked] = protocol.requirements;
    if (!asked || asked.asks.kind !== 'level_at_least') throw new Error('no level is asked');
    const where = logic.partitions.find(({ name }) => name === whereOf(asked))?.of[0];
    if (!where) throw new Error('where it must hold is not in the logic');
    const holds: Logical = {
      and: [where.certain, not(levelIsAtLeast(logic, asked.asks.level))],
    };
    return [questionToSmt({ protocol, logic, sets: completeSets, holds, says: asked.name })];
  },
  told: ([answer]) => (answer === 'unsat' ? 'proven' : answer === 'sat' ? 'refuted' : notSettled),
});

/** A protocol whose logic knows where its requirement must hold. */
function withWhere(protocol: Protocol): {
  protocol: Protocol;
  logic: ReturnType<typeof protocolToLogic>['logic'];
} {
  const partitions = new Map(
    protocol.requirements.flatMap((each) =>
      each.where
        ? [[whereOf(each), { name: whereOf(each), of: [each.where], path: each.path }] as const]
        : [],
    ),
  );
  const asked = { ...protocol, partitions };
  return { protocol: asked, logic: protocolToLogic(asked).logic };
}

/** Which rules are met by no set: of a solver one question for each rule. */
export const rulesNeverMet = ({ compiled, document }: Made): GrowthQuestion => ({
  answer: () => {
    const found = [...neverMet(new Asking(compiled, document, []))];
    return found.some(({ is }) => is === 'not_settled') ? notSettled : `${found.length} never met`;
  },
  scripts: () => {
    const { protocol, logic } = compiled;
    return protocol.rules.map(({ name }) =>
      questionToSmt({
        protocol,
        logic,
        sets: { ...completeSets, given: 'partial' },
        holds: ruleIs(logic, name, 'met'),
        says: name,
      }),
    );
  },
  told: (answers) =>
    answers.includes('unknown')
      ? notSettled
      : `${answers.filter((each) => each === 'unsat').length} never met`,
});

/** Every kind of finding; no solver is asked all of that. */
export const everyFinding = ({ compiled, document }: Made): GrowthQuestion => ({
  answer: () => {
    const { findings, open } = findingsOf({ compiled, document, cases: null });
    return open.length > 0 ? `${open.length} ${notSettled}` : `${findings.length} found`;
  },
  scripts: () => [],
  told: () => '',
});

/**
 * Whether some set gets other rules in another edition. A solver is asked of one protocol that has the rules of both, by pairs of names.
 */
export const otherwise = (
  before: Made,
  after: Made,
  both: Made,
  pairs: readonly (readonly [string, string])[],
): GrowthQuestion => ({
  answer: () => {
    const { verdict, levels_whole: isWhole } = compareSides(before.compiled, after.compiled, null);
    return verdict === 'not_settled' || !isWhole ? notSettled : verdict.replaceAll('_', ' ');
  },
  scripts: () => {
    const { protocol, logic } = both.compiled;
    const differ = pairs.map(([one, other]) => statesDiffer(logic, one, other));
    return [
      questionToSmt({ protocol, logic, sets: completeSets, holds: or(...differ), says: 'other rules' }),
    ];
  },
  told: ([answer]) => (answer === 'sat' ? 'changes' : answer === 'unsat' ? 'nothing changes' : notSettled),
});
