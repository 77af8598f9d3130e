import type { Bounds } from '../../src/series/bounds.ts';
import { answersOf } from '../../src/targets/json-logic/reader.mjs';
import { columnsOf, type Row } from '../targets/typescript/columns-of.ts';
import type { Example } from './generators.ts';
import { answerOf, boundsOf, protocolOf, type KitAnswer } from './kit.ts';
import { plainApart } from './plain.ts';
import { ladderText } from './protocols.ts';
import { apply, counts, named, saidApart, saidBy, targetsOf, type Targets } from './said.ts';

/** What the module packed for one set, and the set as a row of columns where a row can say it. */
interface Packed {
  readonly told: readonly string[];
  readonly out: Int32Array;
  readonly row: Row | null;
}

/** What differs between the kit's closures, the generated module and json-logic-js for one set. */
export function targetsSay({ compiled, module, file }: Targets, bounds: Bounds, kit: KitAnswer): Packed {
  const { narrow, wide } = bounds;
  const inputs = named(compiled, narrow);
  const library = answersOf(file, apply, inputs, narrow === wide ? inputs : named(compiled, wide));
  const out = new Int32Array(module.words);
  module.packBounds(narrow, out, 0, wide);
  const expected = saidBy(kit);
  const told = [
    ...saidApart('json-logic-js', library, expected),
    ...saidApart('the module', module.unpack(out, 0), expected),
    ...measuresApart(kit, 'the module', module.measuresOfBounds?.(narrow) ?? {}),
    ...measuresApart(kit, 'json-logic-js', library.measures),
  ];
  const row = narrow === wide ? columnsOf(compiled, narrow) : null;
  const rows = row ? module.packColumns(row.columns, 1) : out;
  if (String(rows) !== String(out)) told.push(`columns: ${String(rows)}, not ${String(out)}`);
  if (row) counts.rows += 1;
  if (row?.complete) counts.complete += 1;
  return { told, out, row };
}

/** Many rows at a time say what each said by itself. */
export function batchApart({ module }: Targets, asked: readonly Pick<Packed, 'out' | 'row'>[]): string[] {
  const told = asked.flatMap(({ row, out }) => (row ? [{ row, out }] : []));
  const first = told[0]?.row.columns;
  if (!first) return [];
  const column = (name: string): number[] => told.map(({ row }) => row.columns[name]?.[0] ?? NaN);
  const columns = Object.fromEntries(Object.keys(first).map((name) => [name, column(name)]));
  const rows = module.packColumns(columns, told.length);
  const wrong = told.findIndex(({ out }, index) =>
    out.some((word, place) => rows[index * module.words + place] !== word),
  );
  return wrong === -1 ? [] : [`row ${wrong} of ${told.length} columns says something else than alone`];
}

/** Measures as the nearest binary fraction of the exact one; what never happened is a number beyond every window. */
function measuresApart(
  kit: KitAnswer,
  target: string,
  measures: Readonly<Record<string, { readonly low: number; readonly high: number } | null>>,
): string[] {
  return Object.entries(kit.measures).flatMap(([name, exact]) => {
    const found = measures[name];
    if (!exact || !found) return exact === found ? [] : [`${target}: ${name} is ${JSON.stringify(found)}`];
    const apart = (['low', 'high'] as const).filter((end) => !near(exact[end], found[end]));
    return apart.map((end) => `${target}: ${name} ${end} is ${found[end]}, not ${exact[end]}`);
  });
}

function near(exact: string, found: number): boolean {
  if (exact === 'never') return Math.abs(found) > 1e4;
  const [n = '', d = '1'] = exact.split('/');
  const value = Number(n) / Number(d);
  return Math.abs(value - found) <= 1e-12 * Math.max(1, Math.abs(value));
}

/** What differs between the targets over the sets of one example, with all that is needed to see it again. */
export async function targetsApart(example: Example): Promise<string[]> {
  const targets = await targetsOf(protocolOf(example.made.text, ladderText));
  const asked: Packed[] = [];
  for (const set of example.sets) {
    const bounds = boundsOf(targets.compiled, JSON.stringify(set));
    const kit = answerOf(targets.compiled, bounds);
    const packed = targetsSay(targets, bounds, kit);
    const found = [...packed.told, ...plainApart(targets, example.made, set, bounds, kit)];
    if (found.length) return [...found, example.made.text, JSON.stringify(set)];
    asked.push(packed);
    counts.asked += 1;
  }
  const found = batchApart(targets, asked);
  return found.length ? [...found, example.made.text, JSON.stringify(example.sets)] : [];
}
