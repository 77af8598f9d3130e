import { basename } from 'node:path';
import { yamlToDocument } from '../document/yaml-to-document.ts';
import { caution } from '../outcome/caution.ts';
import { hasErrors } from '../problems/problem.ts';
import { showProblem } from '../problems/show-problem.ts';
import { findingsOf } from '../review/findings/find-findings.ts';
import { scope } from '../review/findings/wording.ts';
import { fileNames, filesBelow, readText } from './files.ts';
import {
  findingsInWords,
  findingsToJson,
  unansweredFindings,
  type FindingsReport,
} from './findings-report.ts';
import { jsonText } from './json-text.ts';
import { loadProtocol } from './load.ts';
import { exit, type Exit, type Terminal } from './terminal.ts';

/** Asks what each protocol below some paths does not tell by itself, and prints what is found. */
export async function showFindings(
  paths: readonly string[],
  terminal: Terminal,
  { json }: { readonly json: boolean },
): Promise<Exit> {
  const reports: FindingsReport[] = [];
  let holds = true;
  for (const path of paths) {
    for (const file of await filesBelow(path)) {
      if (basename(file) !== fileNames.protocol) continue;
      const report = await reportOn(file, terminal);
      if (!report) {
        holds = false;
        continue;
      }
      reports.push(report);
      for (const problem of report.problems) terminal.err(`\n${showProblem(problem)}\n`);
      if (!json) terminal.out(findingsInWords(report));
      if (unansweredFindings(report).length > 0 || hasErrors(report.problems)) holds = false;
    }
  }
  if (reports.length === 0 && holds) {
    terminal.err(`There is no protocol in ${paths.join(', ')}.\n`);
    return exit.couldNotAsk;
  }
  if (json) terminal.out(jsonText({ holds, scope, caution, protocols: reports.map(findingsToJson) }));
  else terminal.out(`${scope}\n${caution}\n`);
  return holds ? exit.well : exit.doesNotHold;
}

async function reportOn(path: string, terminal: Terminal): Promise<FindingsReport | null> {
  const { file, document, compiled, casesPath } = await loadProtocol(path, null);
  if (!document || !compiled) {
    terminal.err(`${file} has problems of its own; "vitalwright check" says which.\n`);
    return null;
  }
  const text = casesPath === null ? null : await readText(casesPath);
  const cases = text && yamlToDocument(text.file, text.text);
  if (cases && (!cases.document || hasErrors(cases.problems))) {
    terminal.err(`${casesPath ?? ''} cannot be read; "vitalwright check" says why.\n`);
    return null;
  }
  return {
    file,
    protocol: compiled.protocol.name,
    ...findingsOf({ compiled, document, cases: cases?.document ?? null }),
  };
}
