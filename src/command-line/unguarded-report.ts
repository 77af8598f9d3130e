import type { Problem } from '../problems/problem.ts';
import { coverageOf, type Coverage } from '../review/coverage.ts';
import { guardsOf, type Guard, type Guarded } from '../review/guards/guards-of.ts';
import { needlessReasons, reasonsIn, unknownReasons } from '../review/guards/reasons.ts';

/** What was found about the small changes of one protocol. */
export interface UnguardedReport {
  readonly protocol: string;
  readonly file: string;
  readonly guards: readonly Guard[];
  /** By the name of the change. */
  readonly reasons: ReadonlyMap<string, { readonly accepted: string }>;
  readonly problems: readonly Problem[];
  readonly coverage: Coverage;
}

/** Asks about one protocol; `each` is told of every change as soon as it is known. */
export function unguardedReport(
  file: string,
  guarded: Guarded,
  each: (guard: Guard, accepted: string | null) => void,
): UnguardedReport {
  const { document, compiled, cases } = guarded;
  const reasons = reasonsIn(cases);
  const guards: Guard[] = [];
  for (const guard of guardsOf(guarded)) {
    guards.push(guard);
    each(guard, reasons.get(guard.change.name)?.accepted ?? null);
  }
  const problems = [...unknownReasons(cases, document, compiled.protocol), ...needlessReasons(cases, guards)];
  const coverage = coverageOf(compiled, document, cases);
  return { protocol: compiled.protocol.name, file, guards, reasons, problems, coverage };
}

/** The changes that nothing notices and for which no reason is given. */
export const unanswered = ({ guards, reasons }: UnguardedReport): Guard[] =>
  guards.filter(({ kind, change }) => kind === 'unguarded' && !reasons.has(change.name));

/** What the cases do not show, a line each. */
export function coverageGaps({ rules, edges }: Coverage): string[] {
  const words = { met: 'met', not_met: 'not met', undecided: 'undecided' } as const;
  return [
    ...rules
      .filter(({ unseen }) => unseen.length > 0)
      .map(({ rule, unseen }) => `rule ${rule}: never seen ${unseen.map((each) => words[each]).join(', ')}`),
    ...edges.flatMap(({ edge, holds, fails }) => {
      if (holds && fails) return [];
      const side = !holds && !fails ? 'on either side' : holds ? 'where it does not hold' : 'where it holds';
      return [`${edge}: never seen just ${side}`];
    }),
  ];
}

/** The same as plain JSON. */
export function unguardedToJson(report: UnguardedReport): unknown {
  const { rules, edges } = report.coverage;
  return {
    protocol: report.protocol,
    file: report.file,
    changes: report.guards.map((guard) => ({
      change: guard.change.name,
      kind: guard.change.kind,
      is: guard.kind,
      ...(guard.kind === 'noticed' ? { case: guard.by } : {}),
      ...(guard.kind === 'refused' ? { says: guard.says } : {}),
      ...(guard.kind === 'unguarded'
        ? {
            accepted: report.reasons.get(guard.change.name)?.accepted ?? null,
            ...(guard.example.kind === 'case'
              ? { example: guard.example.yaml }
              : { no_example: guard.example.because }),
          }
        : {}),
    })),
    problems: report.problems,
    coverage: {
      rules: rules.map(({ rule, seen, unseen }) => ({ rule, seen, unseen })),
      comparisons: edges.map(({ edge, holds, fails }) => ({ comparison: edge, holds, does_not_hold: fails })),
    },
  };
}
