import { basename } from 'node:path';
import type { Compiled, Ward } from '../index.ts';
import { hasErrors } from '../problems/problem.ts';
import { caution } from '../outcome/caution.ts';
import { proofsOf } from '../review/requirements/prove.ts';
import { fileNames, filesBelow, findProtocol } from './files.ts';
import { jsonText } from './json-text.ts';
import { kindOf } from './kind-of.ts';
import { loadProtocol } from './load.ts';
import { loadWard } from './load-ward.ts';
import { parseCall } from './parse-call.ts';
import { proofsToJson, type Proven } from './proofs-to-json.ts';
import { cannotAsk, orUnreadable, sayProblems } from './say.ts';
import { proofLines } from './show-proof.ts';
import { exit, type Call, type Exit, type Terminal } from './terminal.ts';
import { wrap } from './wrap.ts';

/** `vitalwright prove [PROTOCOL...] [--json]`: answers what each protocol or ward policy states that must always hold. */
export const prove: Call = async (args, terminal) => {
  const call = parseCall(args, { json: { type: 'boolean' } }, terminal);
  if (!call) return exit.couldNotAsk;
  return orUnreadable(async () => {
    const paths = await pathsOf(call.positionals, terminal);
    return paths === null ? exit.couldNotAsk : proveAll(paths, call.values.json === true, terminal);
  }, terminal);
};

/** The files that are named; without any, every protocol and ward policy below protocols/. Null, and said, when one is not there. */
async function pathsOf(asked: readonly string[], terminal: Terminal): Promise<readonly string[] | null> {
  if (asked.length === 0) {
    const all = await filesBelow('protocols');
    return all.filter((path) => [fileNames.protocol, fileNames.ward].includes(basename(path) as never));
  }
  const paths: string[] = [];
  for (const name of asked) {
    const path = await findProtocol(name);
    if (path === null) {
      cannotAsk(`There is no protocol "${name}".`, terminal);
      return null;
    }
    paths.push(path);
  }
  return paths;
}

async function proveAll(paths: readonly string[], json: boolean, terminal: Terminal): Promise<Exit> {
  const all: Proven[] = [];
  const silent: string[] = [];
  for (const path of paths) {
    const asked = await askable(path, terminal);
    if (!asked) return exit.couldNotAsk;
    const proven = proveOne(path, asked, json ? null : terminal);
    if (proven.proofs.length > 0) all.push(proven);
    else silent.push(proven.name);
  }
  if (all.length === 0)
    return cannotAsk(`Nothing that must always hold is stated in ${silent.join(', ')}.`, terminal);
  if (json) terminal.out(jsonText(proofsToJson(all, silent)));
  else terminal.out(end(silent, terminal));
  const holds = all.every(({ proofs }) => proofs.every(({ verdict }) => verdict === 'proven'));
  return holds ? exit.well : exit.doesNotHold;
}

/** What was not asked, as nothing is stated there; and the caution. */
function end(silent: readonly string[], { width }: Terminal): string {
  const stated =
    silent.length === 0 ? [] : [`Nothing that must always hold is stated in: ${silent.join(', ')}.`];
  return [...stated, caution].map((text) => `${wrap(text, width).join('\n')}\n`).join('\n');
}

/** Null, and said, when it has problems of its own. */
async function askable(path: string, terminal: Terminal): Promise<Compiled | Ward | null> {
  const loaded =
    (await kindOf(path)) === 'ward' ? await loadWard(path, null) : await loadProtocol(path, null);
  if (hasErrors(loaded.problems)) sayProblems(loaded.problems, terminal);
  return 'ward' in loaded ? loaded.ward : loaded.compiled;
}

/** Proves one, and says each answer as it comes. */
function proveOne(path: string, asked: Compiled | Ward, terminal: Terminal | null): Proven {
  const { name, edition } = 'members' in asked ? asked : asked.protocol;
  const hazards = 'members' in asked ? asked.hazards : asked.protocol.hazards;
  const proofs = [];
  for (const proof of proofsOf(asked)) {
    if (proofs.length === 0) terminal?.out(`${name}, edition ${edition}\n\n`);
    proofs.push(proof);
    if (terminal) terminal.out(proofLines(proof, hazards, terminal.width));
  }
  return { file: path, name, edition, proofs };
}
