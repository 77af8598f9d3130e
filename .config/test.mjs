// `npm test`: everything that must hold before a change goes in. No step is skipped because an earlier one failed.

import { existsSync, mkdtempSync, readFileSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join, relative } from 'node:path';
import { browser } from './browser.mjs';
import { install, npm, root, say } from './house.mjs';
import { lackingSolvers } from './solvers.mjs';

const steps = [
  { script: 'build', checks: 'dist/ can be built' },
  { script: 'types', checks: 'the types fit' },
  { script: 'lint', checks: 'the lint rules hold' },
  { script: 'format', checks: 'the code is formatted' },
  { script: 'drift', checks: 'generated files are what the schema generates' },
  { script: 'unused', checks: 'no file, export or dependency is unused' },
  { script: 'unit', checks: 'the tests' },
];

/** Counts of the test run's report. A test file that could not even be read counts as one failure. */
function countTests(file) {
  if (!existsSync(file)) return { passed: 0, failed: 1, skipped: [] };
  const report = JSON.parse(readFileSync(file, 'utf8'));
  const tests = report.testResults.flatMap((each) =>
    each.assertionResults.map((test) => ({
      status: test.status,
      name: `${relative(root, each.name)}: ${test.fullName}`,
    })),
  );
  const unreadable = report.testResults.filter(
    (each) => each.status === 'failed' && !each.assertionResults.some((test) => test.status === 'failed'),
  );
  const with_ = (status) => tests.filter((test) => test.status === status);
  return {
    passed: with_('passed').length,
    failed: with_('failed').length + unreadable.length,
    skipped: tests.filter(({ status }) => status !== 'passed' && status !== 'failed').map(({ name }) => name),
  };
}

function runTests() {
  const folder = mkdtempSync(join(tmpdir(), 'vitalwright-test-'));
  const file = join(folder, 'report.json');
  const reporters = ['--reporter=default', '--reporter=json', `--outputFile.json=${file}`];
  const chrome = browser();
  const env = { ...process.env, ...(chrome ? { CHROME_PATH: chrome } : {}) };
  const code = npm(['run', '--silent', 'unit', '--', ...reporters], { env });
  const counts = countTests(file);
  rmSync(folder, { recursive: true, force: true });
  const holds = code === 0 && counts.failed === 0 && counts.passed > 0;
  return { ...counts, failed: holds ? 0 : Math.max(1, counts.failed), holds };
}

function runStep({ script, checks }) {
  say(`\n— ${script}: ${checks}`);
  if (script === 'unit') return runTests();
  const holds = npm(['run', '--silent', script]) === 0;
  return { passed: holds ? 1 : 0, failed: holds ? 0 : 1, skipped: [], holds };
}

function sum(results, key) {
  return results.reduce((total, result) => total + result[key], 0);
}

if (install() !== 0) {
  say('\n0 passed, 1 failed');
  process.exit(1);
}

const lacking = lackingSolvers();
const results = steps.map((step) => ({ ...step, ...runStep(step) }));
const skipped = results.flatMap((result) => result.skipped);
const [passed, failed] = [sum(results, 'passed'), sum(results, 'failed')];

say('\nSummary (each step counts as one, the tests one by one):');
for (const { script, checks, holds } of results) {
  say(`  ${holds ? 'holds ' : 'FAILED'}  ${script.padEnd(9)} ${checks}`);
}
for (const name of skipped) say(`  SKIPPED ${name}`);
for (const name of lacking) {
  say(
    `  NOT JUDGED: ${name} is not there, so that it answered none of the questions in SMT-LIB. Install Debian's ${name}.`,
  );
}
say(`\n${passed} passed, ${failed} failed${skipped.length > 0 ? `, ${skipped.length} skipped` : ''}`);
process.exitCode = failed === 0 ? 0 : 1;
