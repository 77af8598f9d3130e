import { proveRequirements, type Compiled, type Ward } from '../index.ts';
import { hasErrors } from '../problems/problem.ts';
import { showProblem } from '../problems/show-problem.ts';
import { whyNotSettled } from '../review/requirements/proof-in-words.ts';
import { checkFiles } from './check-files.ts';
import type { Loaded } from './load.ts';
import type { LoadedWard } from './load-ward.ts';
import { unguardedOf } from './show-unguarded.ts';
import type { Terminal } from './terminal.ts';
import { unanswered } from './unguarded-report.ts';

/** What is to be sealed. It has no problems of its own. */
export type ToBeSealed = {
  readonly path: string;
  readonly name: string;
  readonly reviewBy: string | null;
} & (
  | { readonly kind: 'protocol'; readonly loaded: Loaded }
  | { readonly kind: 'ward'; readonly loaded: LoadedWard }
);

/** Something that must hold before an edition is sealed. */
interface Condition {
  /** What is asked, as a person would say it. */
  readonly asks: (toBe: ToBeSealed) => string;
  /** What is lacking, a text each; none when it holds. */
  readonly lacks: (toBe: ToBeSealed, terminal: Terminal) => Promise<readonly string[]>;
}

/** Everything that must hold, the quickest first. */
export const conditions: readonly Condition[] = [
  {
    asks: () => 'shape, meaning, and every case comes out as expected',
    lacks: async ({ path }, terminal) => {
      const [report] = await checkFiles([path], terminal);
      if (!report) return ['It cannot be checked.'];
      if (hasErrors(report.problems)) return report.problems.map(showProblem);
      return report.cases.length === 0 ? ['There is no case that says what is expected of it.'] : [];
    },
  },
  {
    asks: ({ reviewBy }) =>
      reviewBy === null ? 'no review is due (it states none)' : `its review, by ${reviewBy}, is not overdue`,
    lacks: ({ reviewBy }, { today }) =>
      Promise.resolve(reviewBy !== null && reviewBy < today ? [`Its review was due by ${reviewBy}.`] : []),
  },
  {
    asks: (toBe) => `every safety requirement is proven (${requirementsOf(toBe)} stated)`,
    lacks: (toBe) => Promise.resolve(notProven(toBe)),
  },
  {
    asks: ({ kind }) =>
      kind === 'ward'
        ? 'the small changes of its protocols, each in its own edition'
        : 'no small change goes unnoticed without a reason',
    lacks: async ({ kind, loaded }, terminal) => {
      if (kind === 'ward') return [];
      const report = await unguardedOf(loaded, terminal);
      if (!report) return ['Its small changes could not be made.'];
      return [
        ...report.problems.filter(({ severity }) => severity === 'error').map(showProblem),
        ...unanswered(report).map(({ change }) => `No case notices: ${change.name}`),
      ];
    },
  },
];

const askedOf = (toBe: ToBeSealed): Compiled | Ward | null =>
  toBe.kind === 'ward' ? toBe.loaded.ward : toBe.loaded.compiled;

function requirementsOf(toBe: ToBeSealed): number {
  const asked = askedOf(toBe);
  if (!asked) return 0;
  return ('members' in asked ? asked : asked.protocol).requirements.length;
}

/** What must always hold and is refuted, or not settled. */
function notProven(toBe: ToBeSealed): readonly string[] {
  const asked = askedOf(toBe);
  if (!asked) return ['It could not be asked.'];
  return proveRequirements(asked).flatMap((proof) => {
    const { name } = proof.requirement;
    if (proof.verdict === 'proven') return [];
    return proof.verdict === 'refuted'
      ? [`"${name}" is refuted. ${proof.example.says}`]
      : [`"${name}" is not settled. ${whyNotSettled(proof.because, proof.looked)}`];
  });
}
