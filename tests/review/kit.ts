import { yamlToDocument } from '../../src/document/yaml-to-document.ts';
import type { Document } from '../../src/document/document.ts';
import { documentToLadder } from '../../src/protocol/document-to-protocol.ts';
import { changesOf } from '../../src/review/changes/changes-of.ts';
import type { Change } from '../../src/review/changes/change.ts';
import { documentToChecked } from '../../src/review/document-to-checked.ts';
import { guardsOf, type Guard, type Guarded } from '../../src/review/guards/guards-of.ts';
import { vitalSigns } from '../../src/vocabulary/vital-signs.ts';

const levels =
  'ladder: example_ladder\nedition: 1\nlevels: [{ level: usual_round }, { level: look_again }, { level: call_doctor }]\n';

function documentOf(file: string, text: string): Document {
  const { document, problems } = yamlToDocument(file, text);
  if (!document) throw new Error(problems.map(({ says }) => says).join('\n'));
  return document;
}

/** A small protocol; the parts are laid below its head. */
const protocolText = (parts: string): string =>
  `protocol: example\nedition: 1\ntitle: An example\nladder: example_ladder\nsources: { council: { cite: "Common practice, no published source" } }\n${parts}`;

/** A protocol and its cases, ready for the question of what guards it. */
export function guarded(parts: string, cases: string, ladderText = levels): Guarded {
  const document = documentOf('protocol.yaml', parts.startsWith('protocol:') ? parts : protocolText(parts));
  const { ladder } = documentToLadder(documentOf('ladder.yaml', ladderText));
  const surroundings = { dictionary: vitalSigns, ladder, today: null };
  const { compiled, problems } = documentToChecked(document, surroundings);
  if (!compiled) throw new Error(problems.map(({ says }) => says).join('\n'));
  const whole =
    cases.startsWith('protocol:') || cases.startsWith('#') ? cases : `protocol: example\n${cases}`;
  return { document, compiled, cases: documentOf('cases.yaml', whole), surroundings };
}

/** Every change of a small protocol. */
function changes(parts: string): Change[] {
  const { document, compiled } = guarded(parts, 'cases: []\n');
  return changesOf(document, compiled.protocol);
}

export const namesOf = (kind: Change['kind'], parts: string): string[] =>
  changes(parts)
    .filter((change) => change.kind === kind)
    .map(({ name }) => name);

/** What notices each change, by its name. */
export const guardsByName = (of: Guarded): Map<string, Guard> =>
  new Map([...guardsOf(of)].map((guard) => [guard.change.name, guard]));
