import { yamlToDocument } from '../document/yaml-to-document.ts';
import { compile, type Compiled } from '../outcome/compile.ts';
import { hasErrors, type Problem, type Report } from '../problems/problem.ts';
import { documentToLadder, documentToProtocol } from '../protocol/document-to-protocol.ts';
import { protocolToLogic } from '../logic/protocol-to-logic.ts';
import type { Ladder } from '../protocol/protocol.ts';
import type { EditionFile } from '../shape/generated/types.ts';
import type { Dictionary } from '../vocabulary/dictionary.ts';
import { documentToWard } from '../ward/document-to-ward.ts';
import type { Ward } from '../ward/ward.ts';
import type { Asked } from './cases-to-answers.ts';
import { dictionaryWith } from './own-dictionary.ts';

/** What an edition is read with, beside its texts. */
interface Beside {
  readonly dictionary: Dictionary;
  readonly ladder: Ladder;
}

/** Reads the parts of an edition anew, from nothing but what stands in it. Null, and reported, when this kit cannot. */
export function readParts(file: EditionFile, report: Report): Asked | null {
  const dictionary = dictionaryWith(file.dictionary);
  if (!dictionary) {
    report('edition_part_unread', ['dictionary'], { part: 'its observations', says: 'see the dictionary' });
    return null;
  }
  const read = yamlToDocument('its ladder', file.ladder);
  const { ladder, problems } = read.document ? documentToLadder(read.document) : { ladder: null, ...read };
  if (!ladder) {
    tell('ladder', ['ladder'], problems, report);
    return null;
  }
  return file.sealed === 'ward'
    ? readSealedWard(file, { dictionary, ladder }, report)
    : readSealedProtocol(file, file.name, { dictionary, ladder }, report);
}

/** What was checked when it was sealed is not searched for again: only what is needed to read it, so that a bedside does not wait. */
function readSealedProtocol(
  file: EditionFile,
  name: string,
  { dictionary, ladder }: Beside,
  report: Report,
): Compiled | null {
  const { document, problems } = yamlToDocument(name, file.texts[name] ?? '');
  const parents = new Map(Object.entries(file.texts).map(([each, text]) => [each, { file: each, text }]));
  const read = document && documentToProtocol(document, { dictionary, ladder, today: null, parents });
  if (!read?.protocol) {
    tell(name, ['texts', name], read?.problems ?? problems, report);
    return null;
  }
  const { logic, tooLarge } = protocolToLogic(read.protocol);
  if (tooLarge.length === 0) return compile(read.protocol, logic);
  report('edition_part_unread', ['texts', name], { part: `"${name}"`, says: 'its numbers grow too large' });
  return null;
}

function readSealedWard(file: EditionFile, beside: Beside, report: Report): Ward | null {
  const protocols = new Map<string, Compiled | null>();
  for (const { protocol: name, digest } of file.reads_with ?? []) {
    const compiled = readSealedProtocol(file, name, beside, report);
    if (compiled && compiled.protocol.digest !== digest)
      report('edition_digest_otherwise', ['texts', name], { found: compiled.protocol.digest.slice(0, 19) });
    protocols.set(name, compiled?.protocol.digest === digest ? compiled : null);
  }
  if ([...protocols.values()].includes(null)) return null;
  const { document, problems } = yamlToDocument(file.name, file.texts[file.name] ?? '');
  const read = document && documentToWard(document, { ladder: beside.ladder, protocols, today: null });
  if (!read?.ward) tell(file.name, ['texts', file.name], read?.problems ?? problems, report);
  return read?.ward ?? null;
}

function tell(part: string, path: readonly string[], problems: readonly Problem[], report: Report): void {
  const first = problems.find((problem) => hasErrors([problem]));
  const says = first ? `line ${first.line}: ${first.says}` : 'it is no longer there';
  report('edition_part_unread', [...path], { part: `"${part}"`, says });
}
