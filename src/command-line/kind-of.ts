import { basename, dirname } from 'node:path';
import { yamlToDocument } from '../document/yaml-to-document.ts';
import { fileNames, isKept, readText, type FileKind } from './files.ts';

/** What a file is: by its name, and for a file of another name by what it declares. */
export async function kindOf(path: string): Promise<FileKind> {
  const names = Object.keys(fileNames) as (keyof typeof fileNames)[];
  const byName = names.find((kind) => fileNames[kind] === basename(path));
  if (byName) return byName;
  if (isKept({ parentPath: dirname(path), name: basename(path) }))
    return path.endsWith('.json') ? 'record' : 'edition';
  const { file, text } = await readText(path);
  const { document } = yamlToDocument(file, text);
  const keys = document?.root.kind === 'map' ? document.root.entries.map(({ key }) => key) : [];
  if (keys.includes('sealed')) return 'edition';
  if (keys.includes('approvers')) return 'approvers';
  if (keys.includes('cases')) return 'cases';
  if (keys.includes('ladder') && keys.includes('levels')) return 'ladder';
  return keys.includes('ward') ? 'ward' : 'protocol';
}
