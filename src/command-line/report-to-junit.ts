import type { FileReport } from './file-report.ts';

/** The check's answer as JUnit XML: a suite for each file, a test for each case, and one for the file's own problems. */
export function reportToJunit(reports: readonly FileReport[]): string {
  const suites = reports.map((report) => {
    const own = report.problems.filter(({ code, severity }) => severity === 'error' && code !== 'case_fails');
    const tests = [
      testCase(
        'the file itself',
        own.map(({ line, says }) => `line ${line}: ${says}`),
      ),
      ...report.cases.map(({ name, differences }) =>
        testCase(
          name,
          differences.map(({ what, expected, found }) => `${what}: expected ${expected}, found ${found}`),
        ),
      ),
    ];
    const failures = tests.filter(({ failed }) => failed).length;
    const open = `<testsuite name="${escaped(report.name ?? report.file)}" tests="${tests.length}" failures="${failures}">`;
    return [open, ...tests.map(({ xml }) => xml), '</testsuite>'].join('\n');
  });
  return `<?xml version="1.0" encoding="UTF-8"?>\n<testsuites name="vitalwright">\n${suites.join('\n')}\n</testsuites>\n`;
}

function testCase(name: string, failures: readonly string[]): { xml: string; failed: boolean } {
  const open = `<testcase name="${escaped(name)}"`;
  if (failures.length === 0) return { xml: `${open}/>`, failed: false };
  const text = failures.map(escaped).join('\n');
  return {
    xml: `${open}><failure message="${escaped(failures[0] as string)}">${text}</failure></testcase>`,
    failed: true,
  };
}

/** Text for XML 1.0: the five characters that mean something, and no control characters, which it cannot hold. */
function escaped(text: string): string {
  const entities: Record<string, string> = {
    '&': '&amp;',
    '<': '&lt;',
    '>': '&gt;',
    '"': '&quot;',
    "'": '&apos;',
  };
  return [...text]
    .filter((letter) => !isForbidden(letter.codePointAt(0) as number))
    .map((letter) => entities[letter] ?? letter)
    .join('');
}

const isForbidden = (code: number): boolean =>
  (code < 0x20 && code !== 9 && code !== 10 && code !== 13) ||
  (code >= 0xd800 && code <= 0xdfff) ||
  code === 0xfffe ||
  code === 0xffff;
