import jsonLogic from 'json-logic-js';
import type { LogicFile } from '../../src/shape/generated/types.ts';
import { logicToArtefact } from '../../src/targets/json-logic/logic-to-artefact.ts';
import { answersOf, type Apply } from '../../src/targets/json-logic/reader.mjs';
import { columnsOf } from '../targets/typescript/columns-of.ts';
import { loadModule, type AnyModule } from '../targets/typescript/load-module.ts';
import type { Example } from './generators.ts';
import { askKit, boundsOf, protocolOf, type KitAnswer } from './kit.ts';
import { ladderText } from './protocols.ts';

const apply = jsonLogic.apply.bind(jsonLogic) as Apply;

/** How many sets could be asked as a row of columns, and how many of them went straight through. */
export const counts = { rows: 0, complete: 0, asked: 0 };

/** What all targets say alike: everything but the sentences. */
type Said = Pick<KitAnswer, 'applies' | 'level'> & { readonly rules: Readonly<Record<string, string>> };

/** What differs between the kit's closures, the generated module and json-logic-js for one set. */
function differences(example: Example, set: unknown, module: AnyModule, file: LogicFile): string[] {
  const { text } = example.made;
  const json = JSON.stringify(set);
  const compiled = protocolOf(text, ladderText);
  const { narrow, wide } = boundsOf(compiled, json);
  const kit = askKit(text, ladderText, json);
  const expected: Said = {
    applies: kit.applies,
    level: kit.level,
    rules: Object.fromEntries(Object.entries(kit.rules).map(([rule, { state }]) => [rule, state])),
  };
  const named = (inputs: Float64Array): Record<string, number> =>
    Object.fromEntries(compiled.logic.inputs.map(({ name }, index) => [name, inputs[index] ?? NaN]));
  const inputs = named(narrow);
  const library = answersOf(file, apply, inputs, narrow === wide ? inputs : named(wide));
  const out = new Int32Array(module.words);
  module.packBounds(narrow, out, 0, wide);
  const generated = module.unpack(out, 0);
  const found = { 'json-logic-js': library, 'the module': generated };
  const told = Object.entries(found).flatMap(([target, { applies, level, rules }]) => {
    const said = { applies, level, rules };
    return same(said, expected)
      ? []
      : [`${target}: ${JSON.stringify(said)}, not ${JSON.stringify(expected)}`];
  });
  const row = narrow === wide ? columnsOf(compiled, narrow) : null;
  const rows = row ? module.packColumns(row.columns, 1) : out;
  if (String(rows) !== String(out)) told.push(`columns: ${String(rows)}, not ${String(out)}`);
  if (row) counts.rows += 1;
  if (row?.complete) counts.complete += 1;
  const measures = module.measuresOfBounds?.(narrow) ?? {};
  return [
    ...told,
    ...measuresApart(kit, 'the module', measures),
    ...measuresApart(kit, 'json-logic-js', library.measures),
  ];
}

const same = (one: Said, other: Said): boolean => {
  const told = ({ applies, level, rules }: Said): string =>
    JSON.stringify([
      applies,
      level && [level.at_least, level.could_be, level.settled],
      Object.keys(rules)
        .sort()
        .map((rule) => [rule, rules[rule]]),
    ]);
  return told(one) === told(other);
};

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
  const compiled = protocolOf(example.made.text, ladderText);
  const module = await loadModule(compiled);
  const file = JSON.parse(logicToArtefact(compiled.logic, compiled.protocol)) as LogicFile;
  for (const set of example.sets) {
    const found = differences(example, set, module, file);
    if (found.length) return [...found, example.made.text, JSON.stringify(set)];
    counts.asked += 1;
  }
  return [];
}
