import { parseTree, type ParseError } from 'jsonc-parser';
import type { Node } from './document.ts';
import { jsonDetail, refuseJsonMistakes } from './json-mistakes.ts';
import { scanJson } from './json-scan.ts';
import { JsonTreeReader } from './json-tree.ts';
import { limits } from './limits.ts';
import { readText, type ReadText } from './read-text.ts';
import type { TextFaults } from './text-faults.ts';

/**
 * Reads a JSON text. Never throws; what is wrong comes as problems, each at its place. The limits are those of YAML, numbers
 * are plain decimals, and a key that stands twice is refused, where `JSON.parse` would silently keep the last.
 *
 * `jsonToDocument('set.json', '{ "pulse": 1e2 }').problems[0]?.says` is `'"1e2" is not a number in plain digits.'`
 */
export function jsonToDocument(file: string, text: string): ReadText {
  return readText(file, text, readJson);
}

function readJson(text: string, faults: TextFaults): Node | null {
  if (text.trim() === '') {
    faults.add('text_empty', { start: 0, end: text.length }, {});
    return null;
  }
  const obstacle = scanJson(text);
  if (obstacle) {
    const span = { start: obstacle.at, end: obstacle.at + 1 };
    if (obstacle.kind === 'too_deep') faults.add('too_deep', span, { most: limits.depth });
    else faults.add('not_json', span, { detail: jsonDetail('InvalidCommentToken') });
    return null;
  }
  const errors: ParseError[] = [];
  const tree = parseTree(text, errors, { disallowComments: true, allowTrailingComma: false });
  refuseJsonMistakes(text, errors, faults);
  return tree && errors.length === 0 ? new JsonTreeReader(text, faults).node(tree) : null;
}
