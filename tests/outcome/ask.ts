import { Ajv2020 } from 'ajv/dist/2020.js';
import { expect } from 'vitest';
import { readProtocol, readSet, type Compiled, type Outcome } from '../../src/index.ts';
import { outcomeOf } from '../../src/outcome/bounds-to-outcome.ts';
import type { Bounds } from '../../src/series/bounds.ts';
import { seriesToBounds } from '../../src/series/series-to-bounds.ts';
import { bundledLadder } from '../bundled.ts';
import { files } from '../schema/schemas.ts';

const heading = `
protocol: small
edition: 1
title: A small protocol for a test
ladder: alder_ladder
sources: { test: { cite: "Common practice, no published source" } }
`;

/** A small protocol: its parts in YAML below a heading that is the same for all. It must pass the check. */
export function small(parts: string): Compiled {
  const { protocol, problems } = readProtocol('small.yaml', heading + parts, { ladder: bundledLadder() });
  if (!protocol) throw new Error(problems.map(({ line, says }) => `${line}: ${says}`).join('\n'));
  return protocol;
}

/** A set, or a series, as in JSON. */
export type Given = Readonly<Record<string, unknown>>;

export function boundsOf(compiled: Compiled, set: Given): Bounds {
  const { series, problems } = readSet('set.json', JSON.stringify(set), compiled);
  if (!series) throw new Error(problems.map(({ says }) => says).join('\n'));
  return seriesToBounds(compiled.protocol, series);
}

const checker = new Ajv2020({ schemas: files.map(({ schema }) => schema), allowUnionTypes: true });
const hasShape = checker.getSchema('outcome.schema.json');

/** The outcome of bounds. Whatever is asked, it has the shape of schema/outcome.schema.json. */
export function outcomeOfBounds(compiled: Compiled, bounds: Bounds): Outcome {
  const made = outcomeOf(compiled, bounds);
  const isValid = hasShape?.(JSON.parse(JSON.stringify(made)));
  if (isValid !== true) throw new Error(JSON.stringify(hasShape?.errors, null, 1));
  return made;
}

/** The outcome of a set. */
export const outcome = (compiled: Compiled, set: Given): Outcome =>
  outcomeOfBounds(compiled, boundsOf(compiled, set));

/** The rule of an outcome by its name. */
export function ruleOf({ rules }: Outcome, name: string): Outcome['rules'][number] {
  const found = rules.find((each) => each.rule === name);
  expect(found).toBeDefined();
  return found as Outcome['rules'][number];
}

/** An adult for whom the bundled protocols are, with what is given. */
export const adult = (given: Given): Given => ({
  age: { value: 58, unit: 'a' },
  pregnancy: 'not_pregnant',
  ...given,
});
