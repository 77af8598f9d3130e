import type { Node } from '../../document/document.ts';

/** A part of a document on one line: `{ age: 58 y, systolic: 104 }`. */
export function nodeToYaml(node: Node): string {
  if (node.kind === 'list') return `[${node.items.map(nodeToYaml).join(', ')}]`;
  if (node.kind === 'map') {
    const entries = node.entries.map(({ key, value }) => `${key}: ${nodeToYaml(value)}`);
    return entries.length === 0 ? '{}' : `{ ${entries.join(', ')} }`;
  }
  return typeof node.value === 'string' ? textToYaml(node.value) : String(node.value);
}

/** Words and numbers with a unit stand as they are; every other text in quotation marks. */
export const textToYaml = (text: string): string =>
  /^(?:[a-z][a-z0-9_ ]*|[0-9]+(?:\.[0-9]+)? [a-z]+)$/.test(text) && !/ $|^(?:null|true|false)$/.test(text)
    ? text
    : JSON.stringify(text);
