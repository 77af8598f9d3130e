import { jsonToDocument } from './json-to-document.ts';
import type { ReadText } from './read-text.ts';
import { yamlToDocument } from './yaml-to-document.ts';

/** Reads a text by the ending of its name: JSON for `.json`, else YAML. */
export function textToDocument(file: string, text: string): ReadText {
  return file.toLowerCase().endsWith('.json') ? jsonToDocument(file, text) : yamlToDocument(file, text);
}
