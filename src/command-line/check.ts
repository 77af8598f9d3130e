import { showProblem } from '../problems/show-problem.ts';
import { visible } from '../problems/visible.ts';
import { parseCall } from './parse-call.ts';
import { findEdition } from './edition-files.ts';
import { checkFiles, holds } from './check-files.ts';
import type { FileReport } from './file-report.ts';
import { UnreadableFile } from './files.ts';
import { reportToJunit } from './report-to-junit.ts';
import { reportToJson } from './report-to-json.ts';
import { showFindings } from './show-findings.ts';
import { showStage } from './show-stage.ts';
import { showUnguarded } from './show-unguarded.ts';
import { jsonText } from './json-text.ts';
import { exit, type Call, type Exit, type Terminal } from './terminal.ts';
import { UnwritableFile, writeWhole } from './write-whole.ts';

/** `vitalwright check [PATH…] [--json] [--junit FILE] [--show STAGE] [--unguarded] [--findings]`. */
export const check: Call = async (args, terminal) => {
  const options = {
    json: { type: 'boolean' },
    junit: { type: 'string' },
    show: { type: 'string' },
    unguarded: { type: 'boolean' },
    findings: { type: 'boolean' },
  } as const;
  const call = parseCall(args, options, terminal);
  if (!call) return exit.couldNotAsk;
  if (['show', 'unguarded', 'findings', 'junit'].filter((each) => each in call.values).length > 1) {
    terminal.err('Only one of --show, --unguarded, --findings and --junit is to be given.\n');
    return exit.couldNotAsk;
  }
  const asked = call.positionals.length > 0 ? call.positionals : ['protocols'];
  const paths = await Promise.all(asked.map(async (each) => (await findEdition(each))?.path ?? each));
  try {
    if (call.values.show !== undefined) return await showStage(String(call.values.show), paths, terminal);
    if (call.values.unguarded)
      return await showUnguarded(paths, terminal, { json: call.values.json === true });
    if (call.values.findings) return await showFindings(paths, terminal, { json: call.values.json === true });
    const reports = await checkFiles(paths, terminal);
    if (reports.length === 0) {
      terminal.err(`There is no protocol, ladder, ward or case file in ${paths.join(', ')}.\n`);
      return exit.couldNotAsk;
    }
    if (call.values.junit !== undefined) await writeWhole(String(call.values.junit), reportToJunit(reports));
    return call.values.json ? sayJson(reports, terminal) : say(reports, terminal);
  } catch (error) {
    if (!(error instanceof UnreadableFile) && !(error instanceof UnwritableFile)) throw error;
    terminal.err(`${error.message}\n`);
    return exit.couldNotAsk;
  }
};

function sayJson(reports: readonly FileReport[], terminal: Terminal): Exit {
  terminal.out(jsonText(reportToJson(reports)));
  return verdict(reports);
}

function say(reports: readonly FileReport[], terminal: Terminal): Exit {
  for (const report of reports) {
    terminal.out(`${visible(line(report))}\n`);
    for (const problem of report.problems) terminal.err(`\n${showProblem(problem)}\n`);
    if (report.problems.length > 0) terminal.err('\n');
  }
  const failing = reports.filter((report) => !holds(report)).length;
  const cases = reports.reduce((total, report) => total + report.cases.length, 0);
  terminal.out(
    failing === 0
      ? `\nAll is well: ${counted(reports.length, 'file')}, ${counted(cases, 'case')}, each as expected.\n`
      : `\n${failing} of ${counted(reports.length, 'file')} must be mended.\n`,
  );
  return verdict(reports);
}

function line({ file, kind, name, edition, rules, cases, problems }: FileReport): string {
  const parts = [name ?? file, whatItIs(kind, edition)];
  if (rules !== null) parts.push(counted(rules, 'rule'));
  if (kind === 'protocol' || kind === 'ward') {
    const well = cases.filter(({ differences }) => differences.length === 0).length;
    parts.push(cases.length === 0 ? 'no cases' : `${well} of ${counted(cases.length, 'case')} as expected`);
  }
  const errors = problems.filter(({ severity }) => severity === 'error').length;
  const warnings = problems.length - errors;
  if (errors > 0) parts.push(counted(errors, 'problem'));
  if (warnings > 0) parts.push(counted(warnings, 'warning'));
  return parts.join(' · ');
}

/** What a file is, with its number: `protocol, edition 2`. */
function whatItIs(kind: FileReport['kind'], edition: number | null): string {
  if (kind === 'edition') return `sealed edition${edition === null ? '' : ` ${edition}`}`;
  if (kind === 'record') return edition === null ? 'record' : `record, edition ${edition} in force`;
  return edition === null ? kind : `${kind}, edition ${edition}`;
}

const counted = (count: number, word: string): string => `${count} ${word}${count === 1 ? '' : 's'}`;

const verdict = (reports: readonly FileReport[]): Exit =>
  reports.every(holds) ? exit.well : exit.doesNotHold;
