import { hasErrors } from '../problems/problem.ts';
import { showProblem } from '../problems/show-problem.ts';
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

/**
 * Everything that must hold, the quickest first. Statements that an edition is required to fulfil for every possible set come after
 * the cases, once the language has them: until then no protocol can state one, so there is none to ask.
 */
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
