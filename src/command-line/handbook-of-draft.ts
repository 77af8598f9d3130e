import { dirname } from 'node:path';
import type { Document } from '../document/document.ts';
import { yamlToDocument } from '../document/yaml-to-document.ts';
import { risksOfCases, risksOfEdition, risksOfProtocol } from '../handbook/accepted-risks.ts';
import type { AcceptedRisk, HandbookInput } from '../handbook/input.ts';
import { hasErrors } from '../problems/problem.ts';
import { proveRequirements } from '../review/requirements/prove.ts';
import { teacherOf } from '../teach/teacher.ts';
import type { Ward } from '../ward/ward.ts';
import { exists, findProtocol, protocolsBeside, readText } from './files.ts';
import { editionPath, loadEdition } from './edition-files.ts';
import { changesSinceLast } from './handbook-changes.ts';
import type { FoundInput } from './handbook-input.ts';
import { kindOf } from './kind-of.ts';
import { loadProtocol } from './load.ts';
import { loadWard } from './load-ward.ts';
import { sayProblems } from './say.ts';
import { exit, type Terminal } from './terminal.ts';

/** The handbook of a file that is still written on; null, and said, when it has errors or is no protocol or ward policy. */
export async function handbookOfDraft(asked: string, terminal: Terminal): Promise<FoundInput | null> {
  const path = await findProtocol(asked);
  if (path === null) {
    terminal.err(`There is no protocol or ward policy "${asked}".\n`);
    return null;
  }
  const kind = await kindOf(path);
  if (kind !== 'ward' && kind !== 'protocol') {
    terminal.err(
      `"${asked}" is no protocol or ward policy. A sealed edition is named as NAME@N: alder_wing@1.\n`,
    );
    return null;
  }
  const input = await (kind === 'ward' ? draftOfWard : draftOf)(path, terminal);
  return input && { input, exit: exit.well };
}

async function draftOf(path: string, terminal: Terminal): Promise<HandbookInput | null> {
  const { document, compiled, problems, casesPath } = await loadProtocol(path, terminal.today);
  sayProblems(problems, terminal);
  if (!document || !compiled || hasErrors(problems)) return null;
  const cases = await documentAt(casesPath, terminal);
  const ofCases = cases ? risksOfCases(cases, compiled.protocol.title) : [];
  return {
    reads: compiled,
    teacher: teacherOf(compiled, cases),
    accepted: [...risksOfProtocol(document), ...ofCases],
    proofs: proveRequirements(compiled),
    changes: await changesSinceLast(dirname(path), compiled, cases),
    edition: null,
  };
}

async function draftOfWard(path: string, terminal: Terminal): Promise<HandbookInput | null> {
  const { ward, problems, casesPath } = await loadWard(path, terminal.today);
  sayProblems(problems, terminal);
  if (!ward || hasErrors(problems)) return null;
  const cases = await documentAt(casesPath, terminal);
  const accepted = await risksOfMembers(ward, path);
  return {
    reads: ward,
    teacher: teacherOf(ward, cases),
    accepted: [...accepted, ...(cases ? risksOfCases(cases, ward.title) : [])],
    proofs: proveRequirements(ward),
    changes: await changesSinceLast(dirname(path), ward, cases),
    edition: null,
  };
}

/** What the protocols of a ward accept, each in the edition that the ward reads with. */
async function risksOfMembers({ members }: Ward, path: string): Promise<AcceptedRisk[]> {
  const places = await protocolsBeside(path);
  const found = members.map(async ({ protocol: { name, edition } }) => {
    const place = places.get(name);
    if (place === undefined) return [];
    const { document, compiled, casesPath } = await loadProtocol(place, null);
    const sealed = editionPath(dirname(place), edition);
    if (compiled?.protocol.edition !== edition && (await exists(sealed))) {
      const loaded = await loadEdition(sealed);
      return loaded.edition ? risksOfEdition(loaded.edition.file) : [];
    }
    const cases =
      casesPath === null ? null : yamlToDocument(casesPath, (await readText(casesPath)).text).document;
    return [
      ...(document ? risksOfProtocol(document) : []),
      ...(cases ? risksOfCases(cases, compiled?.protocol.title ?? name) : []),
    ];
  });
  return (await Promise.all(found)).flat();
}

async function documentAt(path: string | null, terminal: Terminal): Promise<Document | null> {
  if (path === null) return null;
  const { file, text } = await readText(path);
  const { document, problems } = yamlToDocument(file, text);
  sayProblems(problems, terminal);
  return document;
}
