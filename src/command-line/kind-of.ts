import { basename } from 'node:path';
import { yamlToDocument } from '../document/yaml-to-document.ts';
import { fileNames, readText, type FileKind } from './files.ts';

/** What a file is: by its name, and for a file of another name by what it declares. */
export async function kindOf(path: string): Promise<FileKind> {
  const byName = (Object.keys(fileNames) as FileKind[]).find((kind) => fileNames[kind] === basename(path));
  if (byName) return byName;
  const { file, text } = await readText(path);
  const { document } = yamlToDocument(file, text);
  const keys = document?.root.kind === 'map' ? document.root.entries.map(({ key }) => key) : [];
  if (keys.includes('cases')) return 'cases';
  if (keys.includes('ladder') && keys.includes('levels')) return 'ladder';
  return keys.includes('ward') ? 'ward' : 'protocol';
}
