import { banner, type Output } from './output.ts';

/** The schemas as plain data: what a problem says was expected, and what an editor shows at a key, is read from them. */
export const schemasOutput: Output = {
  path: 'src/shape/generated/schemas.ts',
  make({ schemas }) {
    const each = schemas.map(
      ({ name, schema }) => `export const ${name}: Schema = ${JSON.stringify(schema)};`,
    );
    return `${banner('schema/*.schema.json')}import type { Schema } from '../schema.ts';\n\n${each.join('\n\n')}\n`;
  },
};
