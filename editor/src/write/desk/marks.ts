import { editor, MarkerSeverity, Range } from '../text-field/monaco.ts';
import type { LinesHere, ProblemHere, RuleInCase } from '../messages.ts';
import { parts } from '../parts.ts';
import type { Desk } from './desk.ts';

const owner = 'vitalwright';

/** A problem in one text: what is wrong, what was expected, what was probably meant. */
export function problemInWords({ says, expected, nearMiss }: ProblemHere): string {
  const more = [
    expected === null ? '' : ` Expected: ${expected}.`,
    nearMiss === null ? '' : ` Did you mean “${nearMiss}”?`,
  ];
  return says + more.join('');
}

/** Marks the problems in both texts, as they now stand. */
export function markProblems(desk: Desk, problems: readonly ProblemHere[]): void {
  desk.problems = problems;
  for (const part of parts) {
    const here = problems.filter((problem) => problem.part === part);
    editor.setModelMarkers(desk.models[part], owner, here.map(asMarker));
  }
}

const asMarker = (problem: ProblemHere): editor.IMarkerData => ({
  severity: problem.severity === 'error' ? MarkerSeverity.Error : MarkerSeverity.Warning,
  message: problemInWords(problem),
  startLineNumber: problem.line,
  endLineNumber: problem.line,
  startColumn: problem.column,
  endColumn: problem.column + problem.length,
});

const deciding = new WeakMap<Desk, string[]>();

/** Marks the lines of the rules that decided a case; none takes the marks away. */
export function markDeciding(desk: Desk, rules: readonly RuleInCase[]): void {
  const marks = rules.flatMap(({ lines }) => (lines ? [...markOf(lines)] : []));
  deciding.set(desk, desk.models.protocol.deltaDecorations(deciding.get(desk) ?? [], marks));
}

/** A bar beside the lines, and words behind the first: never colour alone. */
function markOf({ first, last }: LinesHere): editor.IModelDeltaDecoration[] {
  return [
    {
      range: new Range(first, 1, last, 1),
      options: { isWholeLine: true, className: 'deciding-lines', linesDecorationsClassName: 'deciding-bar' },
    },
    {
      range: new Range(first, 1, first, Number.MAX_SAFE_INTEGER),
      options: { after: { content: '  decided the chosen case', inlineClassName: 'deciding-words' } },
    },
  ];
}
