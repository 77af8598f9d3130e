import type { Compiled } from '../outcome/compile.ts';
import { showProblem } from '../problems/show-problem.ts';
import { kindOf } from './kind-of.ts';
import { findProtocol, UnreadableFile } from './files.ts';
import { loadProtocol } from './load.ts';
import type { BuildOptions } from './build-smt.ts';
import { parseCall } from './parse-call.ts';
import type { Unreadable } from './smt-question.ts';
import { cannotAsk } from './say.ts';
import { exit, type Call, type Exit, type Terminal } from './terminal.ts';
import { UnwritableFile, writeWhole } from './write-whole.ts';

/** A protocol as the text of a target; or why what else was asked for cannot be read. */
type Write = (compiled: Compiled, more: BuildOptions) => string | Unreadable;

/** What a protocol can be written as. Each writer is loaded only when it is asked for. */
const targets: Readonly<Record<string, () => Promise<Write>>> = {
  'json-logic': async () => {
    const { logicToArtefact } = await import('../targets/json-logic/logic-to-artefact.ts');
    return ({ logic, protocol }) => logicToArtefact(logic, protocol);
  },
  typescript: async () => {
    const { logicToTypescript } = await import('../targets/typescript/logic-to-typescript.ts');
    return ({ logic, protocol }) => logicToTypescript(logic, protocol);
  },
  'smt-lib': async () => (await import('./build-smt.ts')).writeSmt,
};

/** Options of `build` beside `--to` and `--out`. Only SMT-LIB takes them. */
const questionOptions = {
  ask: { type: 'string' },
  where: { type: 'string', multiple: true },
  sets: { type: 'string' },
  limits: { type: 'string' },
} as const;

/** `vitalwright build PROTOCOL --to json-logic|smt-lib|typescript [--out FILE]`, and a question with SMT-LIB. */
export const build: Call = async (args, terminal) => {
  const call = parseCall(
    args,
    { to: { type: 'string' }, out: { type: 'string' }, ...questionOptions },
    terminal,
  );
  if (!call) return exit.couldNotAsk;
  const [asked, ...more] = call.positionals;
  if (call.values.to === 'site') return buildRooms(asked, more, call, terminal);
  if (asked === undefined || more.length > 0) {
    terminal.err('One protocol is to be named: its file, its folder, or its name below protocols/.\n');
    return exit.couldNotAsk;
  }
  const to = String(call.values.to ?? '');
  const target = Object.hasOwn(targets, to) ? targets[to] : undefined;
  if (!target) {
    terminal.err(`--to takes ${Object.keys(targets).join(' or ')}; or site, for the rooms as files.\n`);
    return exit.couldNotAsk;
  }
  const question = Object.keys(questionOptions).find((name) => name in call.values || name in call.lists);
  if (question !== undefined && to !== 'smt-lib') {
    terminal.err(`--${question} is for --to smt-lib alone.\n`);
    return exit.couldNotAsk;
  }
  try {
    const compiled = await loadOne(asked, terminal);
    if (!compiled) return exit.couldNotAsk;
    const text = (await target())(compiled, { ...call.values, where: call.lists['where'] ?? [] });
    if (typeof text !== 'string') {
      terminal.err(`${text.why}.\n`);
      return exit.couldNotAsk;
    }
    if (call.values.out === undefined) terminal.out(text);
    else await writeWhole(String(call.values.out), text);
    return exit.well;
  } catch (error) {
    if (!(error instanceof UnreadableFile) && !(error instanceof UnwritableFile)) throw error;
    terminal.err(`${error.message}\n`);
    return exit.couldNotAsk;
  }
};

/** `vitalwright build [FOLDER] --to site --out NEW`. */
async function buildRooms(
  folder: string | undefined,
  more: readonly string[],
  { values, lists }: NonNullable<ReturnType<typeof parseCall>>,
  terminal: Terminal,
): Promise<Exit> {
  const question = Object.keys(questionOptions).find((name) => name in values || name in lists);
  if (question !== undefined) return cannotAsk(`--${question} is for --to smt-lib alone.`, terminal);
  if (more.length > 0) return cannotAsk('At most one folder with protocols is to be named.', terminal);
  const { buildSite } = await import('./build-site.ts');
  return buildSite(folder ?? 'protocols', typeof values.out === 'string' ? values.out : null, terminal);
}

/** The protocol that is asked for; null when it has errors or is none, which is then said. Warnings are said too. */
async function loadOne(asked: string, terminal: Terminal): Promise<Compiled | null> {
  const path = await findProtocol(asked);
  if (path === null) {
    terminal.err(
      `There is no protocol "${asked}": no such file, no such folder, and no such name below protocols/.\n`,
    );
    return null;
  }
  if ((await kindOf(path)) === 'ward') {
    terminal.err(`"${asked}" is a ward policy: build each protocol that it reads with by itself.\n`);
    return null;
  }
  const { compiled, problems } = await loadProtocol(path, null);
  for (const problem of problems) terminal.err(`${showProblem(problem)}\n\n`);
  if (compiled && hasFaultsOverTime(compiled)) {
    terminal.err(
      `"${asked}" looks back over sets that may have faults of technique: a target reads one set, and would settle what they leave open.\n`,
    );
    return null;
  }
  return compiled;
}

const hasFaultsOverTime = ({ protocol }: Compiled): boolean =>
  protocol.faults.length > 0 && [...protocol.measures.values()].some(({ how }) => 'over' in how);
