import { dirname, join } from 'node:path';
import { yamlToDocument } from '../document/yaml-to-document.ts';
import { toPlain, type Document } from '../document/document.ts';
import { hasErrors } from '../problems/problem.ts';
import { readLadder, runWardCases } from '../index.ts';
import { casesIn } from '../cases/run-cases.ts';
import { unknownReasons } from '../review/guards/reasons.ts';
import { textToFile } from '../shape/text-to-file.ts';
import { exists, fileNames, filesBelow, readText } from './files.ts';
import { checkApprovers, checkEdition, checkRecord } from './check-kept.ts';
import type { FileReport } from './file-report.ts';
import type { Terminal } from './terminal.ts';
import { kindOf } from './kind-of.ts';
import { loadProtocol } from './load.ts';
import { loadWard } from './load-ward.ts';

/** Whether everything that was checked holds. Warnings do not stand in the way. */
export function holds({ problems }: FileReport): boolean {
  return !hasErrors(problems);
}

/** Checks every file at or below some paths, each once. */
export async function checkFiles(paths: readonly string[], terminal: Terminal): Promise<FileReport[]> {
  const found = new Set<string>();
  for (const path of paths) for (const file of await filesBelow(path)) found.add(file);
  const reports: FileReport[] = [];
  for (const path of [...found].sort()) {
    const report = await checkFile(path, found, terminal);
    if (report) reports.push(report);
  }
  return reports;
}

async function checkFile(
  path: string,
  all: ReadonlySet<string>,
  terminal: Terminal,
): Promise<FileReport | null> {
  const { today } = terminal;
  switch (await kindOf(path)) {
    case 'protocol':
      return checkProtocol(path, today);
    case 'ward':
      return checkWard(path, today);
    case 'cases': {
      const [protocol, ward] = [fileNames.protocol, fileNames.ward].map((name) =>
        join(dirname(path), name),
      ) as [string, string];
      if (all.has(protocol) || all.has(ward)) return null;
      if (await exists(protocol)) return checkProtocol(protocol, today);
      return (await exists(ward)) ? checkWard(ward, today) : checkPlain(path);
    }
    case 'ladder':
      return checkLadder(path);
    case 'edition':
      return checkEdition(path);
    case 'approvers':
      return checkApprovers(path);
    case 'record':
      // The whole record is checked once, where its first entry that is there stands.
      return isFirstEntry(path, all) ? checkRecord(dirname(dirname(path)), terminal) : null;
  }
}

const isFirstEntry = (path: string, all: ReadonlySet<string>): boolean =>
  ![...all].some((each) => dirname(each) === dirname(path) && each.endsWith('.json') && each < path);

async function checkProtocol(path: string, today: string): Promise<FileReport> {
  const { file, document, compiled, problems, casesPath } = await loadProtocol(path, today);
  const named = { file, kind: 'protocol' as const, ...nameAndEdition(document, 'protocol') };
  if (!compiled || casesPath === null) {
    return { ...named, rules: compiled?.protocol.rules.length ?? null, problems, cases: [] };
  }
  const text = await readText(casesPath);
  const read = yamlToDocument(text.file, text.text);
  const { results, problems: inCases } = read.document
    ? casesIn(read.document, compiled)
    : { results: [], problems: textToFile('cases', text.file, text.text).problems };
  const reasons = read.document && document ? unknownReasons(read.document, document, compiled.protocol) : [];
  return {
    ...named,
    rules: compiled.protocol.rules.length,
    problems: [...problems, ...(read.document ? read.problems : []), ...inCases, ...reasons],
    cases: results,
  };
}

async function checkLadder(path: string): Promise<FileReport> {
  const { file, text } = await readText(path);
  const { document } = yamlToDocument(file, text);
  const named = { file, kind: 'ladder' as const, ...nameAndEdition(document, 'ladder') };
  return { ...named, rules: null, problems: readLadder(file, text).problems, cases: [] };
}

async function checkWard(path: string, today: string): Promise<FileReport> {
  const { file, document, ward, problems, casesPath } = await loadWard(path, today);
  const named = { file, kind: 'ward' as const, ...nameAndEdition(document, 'ward'), rules: null };
  if (!ward || casesPath === null) return { ...named, problems, cases: [] };
  const text = await readText(casesPath);
  const { results, problems: inCases } = runWardCases(text.file, text.text, ward);
  return { ...named, problems: [...problems, ...inCases], cases: results };
}

/** Cases that stand beside nothing: only their shape can be looked at. */
async function checkPlain(path: string): Promise<FileReport> {
  const { file, text } = await readText(path);
  const { document, problems } = textToFile('cases', file, text);
  return { file, kind: 'cases', ...nameAndEdition(document, 'protocol'), rules: null, problems, cases: [] };
}

function nameAndEdition(
  document: Document | null,
  key: string,
): { name: string | null; edition: number | null } {
  const plain = (document ? toPlain(document.root) : {}) as Record<string, unknown>;
  const [name, edition] = [plain[key], plain['edition']];
  return {
    name: typeof name === 'string' ? name : null,
    edition: typeof edition === 'number' ? edition : null,
  };
}
