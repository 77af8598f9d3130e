import { Ajv2020 } from 'ajv/dist/2020.js';
import standaloneCode from 'ajv/dist/standalone/index.js';
import { banner, type Inputs, type Output } from './output.ts';

/** The schemas compiled to plain functions, so that a page whose policy forbids `eval` can check a file too. */
export const validatorsOutput: Output = {
  path: 'src/shape/generated/validators.js',
  make(inputs) {
    const exported = Object.fromEntries(inputs.schemas.map(({ name, file }) => [name, file]));
    const code = standaloneCode(schemaChecker(inputs), exported).replace(/^"use strict";/, '');
    return banner('schema/*.schema.json') + joining(withoutRequire(code));
  },
};

export const validatorTypesOutput: Output = {
  path: 'src/shape/generated/validators.d.ts',
  make({ schemas }) {
    const each = schemas.map(({ name }) => `export const ${name}: Validator;`);
    return `${banner('schema/*.schema.json')}import type { Validator } from '../validator.ts';\n\n${each.join('\n')}\n`;
  },
};

/** Ajv with every schema, as strict as the subset allows: a value may be of several types, everything else must be stated. */
export function schemaChecker({ schemas }: Pick<Inputs, 'schemas'>): Ajv2020 {
  return new Ajv2020({
    schemas: schemas.map(({ schema }) => JSON.parse(JSON.stringify(schema, withoutWords)) as object),
    strict: true,
    strictRequired: true,
    allowUnionTypes: true,
    allErrors: true,
    // The wording is ours, and one function for each definition is shorter than a copy at each place that uses it.
    messages: false,
    inlineRefs: false,
    code: { source: true, esm: true, lines: true },
  });
}

/** Leaves out what checks nothing. Where such a word is the name of a key that authors write, its schema stays. */
function withoutWords(key: string, part: unknown): unknown {
  const isWords = ['title', 'description'].includes(key)
    ? typeof part === 'string'
    : key === 'examples' && Array.isArray(part);
  return isWords ? undefined : part;
}

/** What a validator needs at run time, in place of what Ajv would `require`: the length of a text in characters. */
const runtime: Readonly<Record<string, string>> = {
  'ajv/dist/runtime/ucs2length': '(text) => [...text].length',
};

function withoutRequire(code: string): string {
  const inlined = code.replace(/require\("([^"]+)"\)\.default/g, (_, module: string) => {
    const own = runtime[module];
    if (own === undefined) throw new Error(`The validators ask for ${module}, which has no form of our own`);
    return own;
  });
  if (/\brequire\s*\(/.test(inlined)) throw new Error('The validators still ask for a module');
  return inlined;
}

/**
 * Ajv copies all failures found so far at every part that has one more; for a long list of wrong items that takes the square of
 * its length. Here they are added to the list that there is, while it is shorter than anybody reads: a file with more is refused as
 * well, and says that there are more.
 */
function joining(code: string): string {
  const copying = /vErrors === null \? ([\w.]+)\.errors : vErrors\.concat\(\1\.errors\)/g;
  if (!copying.test(code)) throw new Error('The validators no longer join failures in the known way');
  const joined = code.replace(copying, 'joined(vErrors, $1.errors)');
  if (joined.includes('.concat(')) throw new Error('The validators still copy failures');
  return `${joined}
function joined(all, more) {
  if (all === null) return more;
  for (let at = 0; at < more.length && all.length < 10000; at++) all.push(more[at]);
  return all;
}
`;
}
