import { measureKinds } from '../protocol/read-measure.ts';
import type { Schema } from '../shape/schema.ts';
import { markdownText, pageBanner, schemaNamed, type Output } from './output.ts';

/** The page of the measure kinds: what each is, and its example from the schema. */
export const measureKindsPage: Output = {
  path: 'schema/reference/measure_kinds.md',
  make: (inputs) => {
    const { schema } = schemaNamed(inputs, 'protocol');
    const properties = schema.$defs?.['measure']?.properties ?? {};
    const others = Object.keys(properties).filter((key) => !measureKinds.some((kind) => kind === key));
    return [
      pageBanner('schema/protocol.schema.json'),
      '# Measure kinds\n',
      'A measure has exactly one of these keys.\n',
      '| kind | what | example |',
      '|---|---|---|',
      ...measureKinds.map((kind) => row(kind, properties[kind])),
      '\nBeside them:\n',
      '| key | what | example |',
      '|---|---|---|',
      ...others.map((key) => row(key, properties[key])),
      '',
    ].join('\n');
  },
};

function row(key: string, schema: Schema | undefined): string {
  const example = JSON.stringify(schema?.examples?.[0] ?? null);
  return `| \`${key}\` | ${markdownText(schema?.description ?? '')} | \`${markdownText(example)}\` |`;
}
