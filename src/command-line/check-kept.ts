import { basename, dirname, join, relative } from 'node:path';
import { checkList } from '../editions/check-list.ts';
import { findingsToProblems } from '../document/finding-to-problem.ts';
import { reporter, type Finding } from '../problems/problem.ts';
import { textToFile } from '../shape/text-to-file.ts';
import type { FileReport } from './file-report.ts';
import { inForceAt } from '../editions/in-force-at.ts';
import { textToTime } from '../series/text-to-time.ts';
import { problemsOfPut } from './in-force.ts';
import { openRecord } from './open-record.ts';
import { recordFolder } from './record-files.ts';
import type { Terminal } from './terminal.ts';
import { loadEdition } from './edition-files.ts';
import { readText } from './files.ts';

/** Whether a sealed edition is as it was sealed, and this kit answers its cases as then. */
export async function checkEdition(path: string): Promise<FileReport> {
  const { file, edition, problems } = await loadEdition(path);
  const sealed = edition?.file;
  return {
    file,
    kind: 'edition',
    name: sealed?.name ?? null,
    edition: sealed?.edition ?? null,
    rules: null,
    problems,
    cases: [],
  };
}

/**
 * The record of a policy, and every edition that it puts in force: that it is there, as it was sealed, and was approved.
 * A check looks and leaves nothing behind.
 */
export async function checkRecord(folder: string, terminal: Terminal): Promise<FileReport> {
  const { record, problems } = await openRecord(folder, terminal, { keep: false });
  const name = basename(folder);
  const file = relative(process.cwd(), join(folder, recordFolder));
  const about = { file, kind: 'record' as const, name, rules: null, cases: [] };
  if (!record) return { ...about, edition: null, problems };
  const puts = record.entries.flatMap((entry) =>
    entry.in_force ? [{ entry, inForce: entry.in_force }] : [],
  );
  const found = await Promise.all(puts.map(async (put) => problemsOfPut(record, put, folder)));
  const at = textToTime(terminal.now);
  const state = typeof at === 'number' ? inForceAt(record, at) : null;
  const edition = state?.kind === 'in_force' ? state.put.inForce.edition : null;
  return { ...about, edition, problems: found.flat() };
}

/** A list of approvers by itself; whether it holds is for the record to say. */
export async function checkApprovers(path: string): Promise<FileReport> {
  const { file, text } = await readText(path);
  const { value, document, problems } = textToFile('approvers', file, text);
  const findings: Finding[] = [];
  if (value) {
    const report = reporter(findings);
    const own = basename(dirname(path));
    if (value.approvers !== own)
      report('approvers_of_another', ['approvers'], { name: value.approvers, own });
    checkList(value, [], report);
  }
  const found = document ? [...problems, ...findingsToProblems(document, findings)] : problems;
  return {
    file,
    kind: 'approvers',
    name: value?.approvers ?? null,
    edition: null,
    rules: null,
    problems: found,
    cases: [],
  };
}
