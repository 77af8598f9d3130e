import { yamlToDocument } from '../../src/document/yaml-to-document.ts';
import { compile, type Compiled } from '../../src/outcome/compile.ts';
import { documentToProtocol } from '../../src/protocol/document-to-protocol.ts';
import { changesOf } from '../../src/review/changes/changes-of.ts';
import { vitalSigns } from '../../src/vocabulary/vital-signs.ts';
import { askable, bundledLadder, bundledText } from '../bundled.ts';

/** A bundled protocol with its first threshold moved by one step, of a rule or of a score. */
export function movedThreshold(name: string): Compiled {
  const path = `${name}/protocol.yaml`;
  const { document } = yamlToDocument(path, bundledText(path));
  const change = document && changesOf(document, askable(name).protocol).find(({ kind }) => kind === 'step');
  if (!change) throw new Error(`${name} has no threshold`);
  const surroundings = { dictionary: vitalSigns, ladder: bundledLadder(), today: null };
  const { protocol, problems } = documentToProtocol(change.document, surroundings);
  if (!protocol) throw new Error(problems.map(({ says }) => says).join('\n'));
  return compile(protocol);
}
