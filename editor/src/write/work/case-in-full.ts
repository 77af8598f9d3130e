import type { Reader, Series } from '../../../../src/index.ts';
import type { CaseInFull, LinesHere } from '../messages.ts';

/** What a reader says of a case, and which rules decided it; `lines`: where those of this text stand. */
export function caseInFull(
  name: string,
  reader: Reader,
  series: Series,
  lines: ReadonlyMap<string, LinesHere>,
): CaseInFull | null {
  const [reading] = reader.read(series);
  if (!reading) return null;
  const { sheet } = reading;
  return {
    name,
    observed: sheet.observed.map(({ title, words }) => ({ title, words })),
    heading: sheet.level.heading,
    couldBe: sheet.level.couldBe,
    reasons: sheet.level.reasons,
    toGet: sheet.level.toGet.map(({ label, names }) => `${label}: ${names}`),
    plan: sheet.plan && `${sheet.plan.title}. ${sheet.plan.says}`,
    tell: sheet.reads.length === 0 ? [] : sheet.level.tell,
    reads: sheet.reads.map(({ says }) => says),
    rules: sheet.why.map(({ rule, title, of, level, decidedBy }) => ({
      name: rule,
      title,
      of,
      level,
      decidedBy,
      lines: lines.get(rule) ?? null,
    })),
  };
}
