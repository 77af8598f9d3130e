import { existsSync, mkdirSync, readFileSync, writeFileSync } from 'node:fs';
import { dirname, join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { format, resolveConfig } from 'prettier';
import { outputs } from './outputs.ts';
import { readSchemas } from './schema-files.ts';
import type { Output, Inputs } from './output.ts';

/**
 * `npm run generate` writes every generated file; with `-- --check` it writes nothing and exits with 1 when one of them is not
 * what would be written.
 *
 *     schema/*.schema.json, schema/vital_signs.yaml ─► outputs ─► formatted ─► written, or compared byte for byte
 */
export const root = fileURLToPath(new URL('../..', import.meta.url));

export function readInputs(): Inputs {
  return {
    schemas: readSchemas(join(root, 'schema')),
    vitalSigns: readFileSync(join(root, 'schema/vital_signs.yaml'), 'utf8'),
  };
}

/** The text of one generated file, formatted as the rest of the project. */
export async function generated(output: Output, inputs: Inputs): Promise<string> {
  const filepath = join(root, output.path);
  return format(await output.make(inputs), { ...(await resolveConfig(filepath)), filepath });
}

/** The generated files that are missing or are not what would be written. */
export async function drifted(
  inputs: Inputs,
  among: readonly Output[] = outputs,
): Promise<readonly string[]> {
  const different: string[] = [];
  for (const output of among) {
    const path = join(root, output.path);
    const standing = existsSync(path) ? readFileSync(path, 'utf8') : null;
    if (standing !== (await generated(output, inputs))) different.push(output.path);
  }
  return different;
}

async function write(inputs: Inputs): Promise<void> {
  for (const output of outputs) {
    const path = join(root, output.path);
    mkdirSync(dirname(path), { recursive: true });
    writeFileSync(path, await generated(output, inputs));
  }
}

async function main(): Promise<number> {
  const inputs = readInputs();
  if (!process.argv.includes('--check')) {
    await write(inputs);
    console.log(`${outputs.length} files generated.`);
    return 0;
  }
  const different = await drifted(inputs);
  for (const path of different) console.error(`${path} is not what the schemas say. npm run generate`);
  return different.length === 0 ? 0 : 1;
}

if (process.argv[1] === fileURLToPath(import.meta.url)) process.exitCode = await main();
