import type { FileReport } from './file-report.ts';
import { holds } from './check-files.ts';

/** The check's answer as one JSON document. */
export function reportToJson(reports: readonly FileReport[]): object {
  return {
    all_is_well: reports.every(holds),
    files: reports.map((report) => ({
      file: report.file,
      kind: report.kind,
      name: report.name,
      edition: report.edition,
      rules: report.rules,
      problems: report.problems,
      cases: report.cases.map(({ name, differences }) => ({
        case: name,
        as_expected: differences.length === 0,
        differences,
      })),
    })),
  };
}
