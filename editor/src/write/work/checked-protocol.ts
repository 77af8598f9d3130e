import type { PartLines, Problem, Written } from '../../../../src/index.ts';
import type { Checked, LinesHere } from '../messages.ts';
import type { Texts } from '../parts.ts';
import { problemHere } from './problem-here.ts';

export const linesHere = ({ firstLine, lastLine }: PartLines): LinesHere => ({
  first: firstLine,
  last: lastLine,
});

/** What the check of a protocol and its cases found, as the page shows it. */
export function checkedProtocol(
  { compiled, rules, cases, problems }: Written,
  ofLadder: readonly Problem[],
  texts: Texts,
): Checked {
  const lines = new Map(rules.map((rule) => [rule.name, linesHere(rule)]));
  const declared = compiled?.protocol.rules ?? [];
  return {
    usable: compiled !== null,
    problems: [
      ...problems.protocol.map((problem) => problemHere('protocol', problem, texts)),
      ...problems.cases.map((problem) => problemHere('cases', problem, texts)),
    ],
    ladder: compiled ? [] : ofLadder.map(({ file, line, says }) => `${file}, line ${line}: ${says}`),
    cases: cases.map(({ name, lines: at, passes, differences, levelSays, met }) => ({
      name,
      lines: linesHere(at),
      passes,
      why: passes ? [levelSays] : differences,
      met,
    })),
    rules: declared.map(({ name, title }) => ({ name, title, lines: lines.get(name) ?? null })),
  };
}
