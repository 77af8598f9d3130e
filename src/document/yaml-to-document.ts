import { isScalar } from 'yaml';
import { hasMoreLines } from './checks/size.ts';
import type { Node } from './document.ts';
import { limits } from './limits.ts';
import { readText, type ReadText } from './read-text.ts';
import type { TextFaults } from './text-faults.ts';
import { refuseMistakes } from './yaml-mistakes.ts';
import { toTokens, toTree, type YamlTree } from './yaml-parse.ts';
import { YamlTreeReader } from './yaml-tree.ts';

/**
 * Reads a YAML text. Never throws; what is wrong comes as problems, all at once, each at its place.
 *
 *     text ─► characters ─► tokens, not too many and not too deep ─► tree ─► document
 *
 * Only what a form needs is read: maps with names as keys, lists, texts, plain decimals, true, false and nothing. Anything that
 * copies parts, or changes how the rest is read, is refused. `yes` and `no` are texts, as in YAML 1.2.
 *
 * `yamlToDocument('a.yaml', 'rate: 0x1F').problems[0]?.says` is `'"0x1F" is not a number in plain digits.'`
 */
export function yamlToDocument(file: string, text: string): ReadText {
  return readText(file, text, readYaml);
}

function readYaml(text: string, faults: TextFaults): Node | null {
  const everything = { start: 0, end: text.length };
  if (hasMoreLines(text, limits.parts)) {
    faults.add('too_many_parts', everything, { most: limits.parts });
    return null;
  }
  const read = toTokens(text, faults);
  if (!read) return null;
  const tree = toTree(read.tokens);
  if (read.tooDeep !== null) {
    refuseDepth(text, tree, read.tooDeep, faults);
    return null;
  }
  if (tree?.errors.length) {
    refuseMistakes(text, tree.errors, faults);
    return null;
  }
  if (isNothing(tree)) {
    if (faults.isEmpty) faults.add('text_empty', everything, {});
    return null;
  }
  return new YamlTreeReader(text, faults).node(tree?.contents ?? null, 0, 0);
}

/** A second colon on a line looks like nesting to the parser; where that is the mistake, it is told as what it is. */
function refuseDepth(text: string, tree: YamlTree | null, at: number, faults: TextFaults): void {
  const colons = tree?.errors.filter(({ code }) => code === 'BLOCK_AS_IMPLICIT_KEY') ?? [];
  if (colons.length > 0) refuseMistakes(text, colons, faults);
  else faults.add('too_deep', { start: at, end: at + 1 }, { most: limits.depth });
}

const isNothing = (tree: YamlTree | null): boolean =>
  tree === null || tree.contents === null || (isScalar(tree.contents) && tree.contents.value === null);
