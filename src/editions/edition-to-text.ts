import { Document, isMap, isScalar, isSeq, visit } from 'yaml';
import { sealed } from './seal.ts';
import type { Unsealed } from './unsealed.ts';

const head = `# A sealed edition. It is never edited: with one character changed it is refused. A change is a new edition.
`;

/** An edition as the text of its file, sealed: texts as they were written, each answer on a line of its own. */
export function editionToText(edition: Unsealed): string {
  const document = new Document(edition);
  const outcomes = document.get('outcomes');
  if (isSeq(outcomes)) for (const item of outcomes.items) if (isMap(item)) item.flow = true;
  visit(document, {
    Scalar(_, node) {
      if (typeof node.value === 'string' && node.value.includes('\n')) node.type = 'BLOCK_LITERAL';
    },
    Pair(_, { key }) {
      // Names that YAML of another age would take for something else stand in quotation marks.
      if (isScalar(key) && /^(?:y|n|yes|no|on|off|true|false|null)$/i.test(String(key.value)))
        key.type = 'QUOTE_DOUBLE';
    },
  });
  return sealed(head + document.toString({ lineWidth: 0, flowCollectionPadding: true }));
}
