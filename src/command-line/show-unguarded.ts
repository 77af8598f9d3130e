import { basename } from 'node:path';
import { yamlToDocument } from '../document/yaml-to-document.ts';
import { hasErrors } from '../problems/problem.ts';
import { showProblem } from '../problems/show-problem.ts';
import { redCases, type Guard } from '../review/guards/guards-of.ts';
import { vitalSigns } from '../vocabulary/vital-signs.ts';
import { fileNames, filesBelow, readText } from './files.ts';
import { jsonText } from './json-text.ts';
import { loadProtocol, type Loaded } from './load.ts';
import { exit, type Exit, type Terminal } from './terminal.ts';
import {
  coverageGaps,
  unanswered,
  unguardedReport,
  unguardedToJson,
  type UnguardedReport,
} from './unguarded-report.ts';

/** Asks what notices each small change of each protocol below some paths, and prints what nothing notices. */
export async function showUnguarded(
  paths: readonly string[],
  terminal: Terminal,
  { json }: { readonly json: boolean },
): Promise<Exit> {
  const reports: UnguardedReport[] = [];
  let holds = true;
  for (const path of paths) {
    for (const file of await filesBelow(path)) {
      if (basename(file) !== fileNames.protocol) continue;
      const report = await reportOn(await loadProtocol(file, null), terminal, json);
      if (report) reports.push(report);
      if (!report || unanswered(report).length > 0 || hasErrors(report.problems)) holds = false;
    }
  }
  if (reports.length === 0 && holds) {
    terminal.err(`There is no protocol in ${paths.join(', ')}.\n`);
    return exit.couldNotAsk;
  }
  if (json) terminal.out(jsonText({ holds, protocols: reports.map(unguardedToJson) }));
  return holds ? exit.well : exit.doesNotHold;
}

async function reportOn(loaded: Loaded, terminal: Terminal, json: boolean): Promise<UnguardedReport | null> {
  const report = await unguardedOf(loaded, terminal, (guard, accepted) => {
    if (!json) terminal.out(lines(guard, accepted));
  });
  if (!report) return null;
  for (const problem of report.problems) terminal.err(`\n${showProblem(problem)}\n`);
  if (!json) terminal.out(summary(report));
  return report;
}

/** What notices each small change of a protocol; null, and said, when its own check or a case stands in the way. */
export async function unguardedOf(
  loaded: Loaded,
  terminal: Terminal,
  each: (guard: Guard, accepted: string | null) => void = () => undefined,
): Promise<UnguardedReport | null> {
  const { file, document, compiled, casesPath } = loaded;
  if (!document || !compiled) {
    terminal.err(`${file} has problems of its own; "vitalwright check" says which.\n`);
    return null;
  }
  const { protocol } = compiled;
  const cases = casesPath === null ? null : await readText(casesPath);
  const text = cases?.text ?? `protocol: ${protocol.name}\ncases: []\n`;
  const read = yamlToDocument(cases?.file ?? fileNames.cases, text);
  if (!read.document || hasErrors(read.problems)) {
    terminal.err(`${casesPath ?? file} cannot be read; "vitalwright check" says why.\n`);
    return null;
  }
  const [red] = redCases(protocol, read.document);
  if (red !== undefined) {
    terminal.err(`${file}: a case is not as expected before anything is changed: ${red}.\n`);
    return null;
  }
  const surroundings = { dictionary: vitalSigns, ladder: protocol.ladder, today: null };
  const guarded = { document, compiled, cases: read.document, surroundings };
  return unguardedReport(file, guarded, each);
}

/** What is to be said of one change: nothing, when it is noticed. */
function lines(guard: Guard, accepted: string | null): string {
  const { change } = guard;
  if (guard.kind === 'changes_nothing')
    return `${change.name}\n  changes nothing: no set tells the two apart\n`;
  if (guard.kind !== 'unguarded') return '';
  if (accepted !== null) return `${change.name}\n  no case notices; accepted: ${accepted}\n`;
  const { example } = guard;
  const how =
    example.kind === 'case'
      ? `a case that would, to be reviewed and pasted below cases:\n\n${example.yaml}`
      : example.because === 'too_large'
        ? 'no case was found that would: the search was too large. Write one, or give a reason'
        : 'no case was found that would: it may need earlier sets, or a limit changed for one patient. Write one, or give a reason';
  return `${change.name}\n  UNGUARDED: no case notices; ${how}\n`;
}

function summary(report: UnguardedReport): string {
  const { guards, protocol, coverage } = report;
  const count = (kind: Guard['kind']): number => guards.filter((each) => each.kind === kind).length;
  const open = unanswered(report).length;
  const parts = [
    `${guards.length} changes`,
    `${count('noticed')} noticed by a case`,
    `${count('refused')} refused by the check`,
    ...(count('changes_nothing') > 0 ? [`${count('changes_nothing')} that change nothing`] : []),
    ...(count('unguarded') > open ? [`${count('unguarded') - open} accepted`] : []),
    `${open} unguarded`,
  ];
  const gaps = coverageGaps(coverage);
  return [
    `${protocol}: ${parts.join(', ')}`,
    gaps.length === 0
      ? '  the cases see every rule met, not met and undecided, and every comparison just on both sides'
      : `  the cases do not show everything (this fails nothing):\n${gaps.map((gap) => `    ${gap}`).join('\n')}`,
    '',
  ].join('\n');
}
