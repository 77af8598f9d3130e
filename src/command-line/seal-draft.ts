import { basename, dirname } from 'node:path';
import { protocolToEdition, wardToEdition, type About } from '../editions/to-edition.ts';
import type { Unsealed } from '../editions/unsealed.ts';
import type { EditionFile } from '../shape/generated/types.ts';
import type { Compiled, Ward } from '../index.ts';
import { editionPath, loadEdition } from './edition-files.ts';
import { exists, findLadder, protocolsBeside, readText } from './files.ts';
import { loadParents } from './load-parents.ts';
import { loadProtocol, type Loaded } from './load.ts';
import { loadWard, type LoadedWard } from './load-ward.ts';
import { sayProblems } from './say.ts';
import { conditions, type ToBeSealed } from './seal-conditions.ts';
import type { Terminal } from './terminal.ts';

/** An edition before its seal, and what must hold before it gets one. */
export interface SealDraft {
  readonly draft: Unsealed;
  readonly toBe: ToBeSealed;
}

/** The protocol of a file as an edition to be sealed; null, and said, when something does not hold. */
export async function draftOfProtocol(
  path: string,
  about: About,
  terminal: Terminal,
): Promise<SealDraft | null> {
  const loaded = await loadProtocol(path, terminal.today);
  const { compiled } = loaded;
  if (!compiled || !loaded.document) return refused(loaded, terminal);
  const { name, ladder, reviewBy } = compiled.protocol;
  const toBe = { kind: 'protocol', path, loaded, name, reviewBy } as const;
  if (!isInItsFolder(name, path, terminal)) return null;
  const cases = await textAt(loaded.casesPath);
  const texts = await textsOf(path, loaded, compiled);
  const parts = { ladder: await ladderText(ladder.name, path), texts, cases };
  return { draft: protocolToEdition(compiled, parts, about), toBe };
}

/** The ward policy of a file as an edition to be sealed, with the sealed editions that it reads with. */
export async function draftOfWard(path: string, about: About, terminal: Terminal): Promise<SealDraft | null> {
  const loaded = await loadWard(path, terminal.today);
  const { ward } = loaded;
  if (!ward) return refused(loaded, terminal);
  const toBe = { kind: 'ward', path, loaded, name: ward.name, reviewBy: ward.own.reviewBy } as const;
  if (!isInItsFolder(ward.name, path, terminal)) return null;
  const members = await sealedMembers(ward, path, terminal);
  if (!members) return null;
  const { text } = await readText(path);
  const cases = await textAt(loaded.casesPath);
  const parts = { ladder: await ladderText(ward.ladder.name, path), texts: { [ward.name]: text }, cases };
  return { draft: wardToEdition(ward, parts, members, about), toBe };
}

function refused({ problems }: Loaded | LoadedWard, terminal: Terminal): null {
  sayProblems(problems, terminal);
  terminal.err('It was not sealed: it has problems of its own.\n');
  return null;
}

/** A sealed edition is found by the name of its folder. */
function isInItsFolder(name: string, path: string, terminal: Terminal): boolean {
  const isSame = basename(dirname(path)) === name;
  if (!isSame) terminal.err(`It was not sealed: "${name}" must stand in a folder of that name.\n`);
  return isSame;
}

/** Asks everything that must hold, and says of each whether it does. */
export async function allHold(toBe: ToBeSealed, terminal: Terminal): Promise<boolean> {
  for (const { asks, lacks } of conditions) {
    const found = await lacks(toBe, terminal);
    if (found.length === 0) terminal.out(`Holds: ${asks(toBe)}\n`);
    else {
      for (const each of found) terminal.err(`${each}\n`);
      terminal.err(`It was not sealed. This does not hold: ${asks(toBe)}\n`);
      return false;
    }
  }
  return true;
}

/** The sealed editions of a ward's protocols, each saying what the ward's draft was checked with. */
async function sealedMembers(ward: Ward, path: string, terminal: Terminal): Promise<EditionFile[] | null> {
  const places = await protocolsBeside(path);
  const members: EditionFile[] = [];
  for (const { protocol } of ward.members) {
    const place = places.get(protocol.name);
    const sealedAt = place === undefined ? null : editionPath(dirname(place), protocol.edition);
    const isThere = sealedAt !== null && (await exists(sealedAt));
    const loaded = isThere ? await loadEdition(sealedAt) : null;
    const file = loaded?.edition?.file;
    if (file?.digest === protocol.digest) members.push(file);
    else {
      sayProblems(loaded?.problems ?? [], terminal);
      const why = !loaded ? 'is not sealed' : file ? 'is sealed and says something else' : 'does not hold';
      terminal.err(`It was not sealed: edition ${protocol.edition} of "${protocol.name}" ${why}.\n`);
      return null;
    }
  }
  terminal.out(`Holds: each of the ${members.length} protocols that it reads with is a sealed edition\n`);
  return members;
}

/** The text of a protocol and of everything that it is based on. */
async function textsOf(
  path: string,
  { document }: Loaded,
  { protocol }: Compiled,
): Promise<Record<string, string>> {
  const { text } = await readText(path);
  const parents = document ? await loadParents(document, path) : new Map<string, { text: string }>();
  const based = protocol.basedOn.map(({ name }) => [name, parents.get(name)?.text ?? ''] as const);
  return { [protocol.name]: text, ...Object.fromEntries(based) };
}

async function ladderText(name: string, path: string): Promise<string> {
  return textAt(await findLadder(name, path));
}

const textAt = async (path: string | null): Promise<string> =>
  path === null ? '' : (await readText(path)).text;
