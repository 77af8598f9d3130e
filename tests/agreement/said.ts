import jsonLogic from 'json-logic-js';
import type { Compiled } from '../../src/index.ts';
import type { LogicFile } from '../../src/shape/generated/types.ts';
import { logicToArtefact } from '../../src/targets/json-logic/logic-to-artefact.ts';
import type { Apply } from '../../src/targets/json-logic/reader.mjs';
import { loadModule, type AnyModule } from '../targets/typescript/load-module.ts';
import type { KitAnswer } from './kit.ts';

export const apply = jsonLogic.apply.bind(jsonLogic) as Apply;

/** How many sets could be asked as a row of columns, how many of them went straight through, and how many as a program gives them. */
export const counts = { rows: 0, complete: 0, plain: 0, asked: 0 };

/** What all targets say alike: everything but the sentences. */
export type Said = Pick<KitAnswer, 'applies' | 'level'> & {
  readonly rules: Readonly<Record<string, string>>;
};

/** All that runs one protocol, made once. */
export interface Targets {
  readonly compiled: Compiled;
  readonly module: AnyModule;
  readonly file: LogicFile;
}

export async function targetsOf(compiled: Compiled): Promise<Targets> {
  const file = JSON.parse(logicToArtefact(compiled.logic, compiled.protocol)) as LogicFile;
  return { compiled, module: await loadModule(compiled), file };
}

/** The kit's answer, without what targets do not say. */
export const saidBy = ({ applies, level, rules }: KitAnswer): Said => ({
  applies,
  level,
  rules: Object.fromEntries(Object.entries(rules).map(([rule, { state }]) => [rule, state])),
});

/** Inputs by the names that the logic gives them. */
export const named = ({ logic }: Compiled, inputs: Float64Array): Record<string, number> =>
  Object.fromEntries(logic.inputs.map(({ name }, index) => [name, inputs[index] ?? NaN]));

/** What a target says and the kit does not. */
export const saidApart = (target: string, { applies, level, rules }: Said, expected: Said): string[] => {
  const said = { applies, level, rules };
  return same(said, expected) ? [] : [`${target}: ${JSON.stringify(said)}, not ${JSON.stringify(expected)}`];
};

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
