import { banner, schemaNamed, type Inputs, type Output } from './output.ts';
import { typesOf } from './types.ts';

/**
 * The types of a dictionary file, and of what every other file shares with it (names, texts, quantities).
 *
 * They stand in `vocabulary`, which comes before `shape`; the types of the other files are passed on together with them.
 */
export const dictionaryTypesOutput: Output = {
  path: 'src/vocabulary/generated/dictionary-file.ts',
  async make(inputs) {
    const { text } = await typesOf(inputs.schemas, schemaNamed(inputs, 'dictionary'));
    return banner('schema/dictionary.schema.json') + text;
  },
};

/** The types of all files. */
export const typesOutput: Output = {
  path: 'src/shape/generated/types.ts',
  async make(inputs) {
    const shared = (await typesOf(inputs.schemas, schemaNamed(inputs, 'dictionary'))).own;
    const { text, used } = await otherTypes(inputs);
    const from = `from '../../vocabulary/generated/dictionary-file.ts';`;
    const imported = `import type { ${used.filter((name) => shared.includes(name)).join(', ')} } ${from}`;
    const passedOn = `export type { ${shared.join(', ')} } ${from}`;
    return `${banner('schema/*.schema.json')}${imported}\n\n${passedOn}\n\n${text}`;
  },
};

async function otherTypes(inputs: Inputs): Promise<{ text: string; used: readonly string[] }> {
  const texts: string[] = [];
  const used = new Set<string>();
  const owners = new Map<string, string>();
  for (const file of inputs.schemas) {
    const types = await typesOf(inputs.schemas, file);
    for (const name of types.own) {
      const owner = owners.get(name);
      if (owner !== undefined) throw new Error(`${owner} and ${file.file} both define the type ${name}`);
      owners.set(name, file.file);
    }
    if (file.name === 'dictionary') continue;
    for (const name of types.used) used.add(name);
    texts.push(types.text);
  }
  return { text: texts.join('\n'), used: [...used].sort() };
}
