import { editor, MarkerSeverity } from '../text-field/monaco.ts';
import type { ProblemHere } from '../messages.ts';
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

/** Marks the problems in both texts. */
export function markProblems(desk: Desk, problems: readonly ProblemHere[]): void {
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
