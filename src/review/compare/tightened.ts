import type { Input } from '../../logic/inputs.ts';
import type { Logic } from '../../logic/logic.ts';
import { and, not, or, variable, type Logical } from '../../logic/operators.ts';
import { stepsFor } from '../../logic/used-steps.ts';
import type { Compiled } from '../../outcome/compile.ts';
import type { Read } from '../../outcome/view.ts';
import { logicToEvaluator, type Evaluator } from '../../targets/evaluator/logic-to-evaluator.ts';
import { inputsBehind } from '../observations-behind.ts';
import { conditionsAsked, stands, type Atoms } from './atoms.ts';
import { comparisonsIn } from '../../protocol/walk.ts';
import { stepName } from '../../logic/logic.ts';
import { fillerOf } from './fill.ts';
import type { Node } from './node.ts';
import type { Space } from './space.ts';

/** A protocol that can be asked about many sets at once, tightened by comparisons that are settled. */
export interface Tightened {
  readonly compiled: Compiled;
  readonly evaluator: Evaluator;
  /** Good until the next call. */
  readonly run: (node: Node) => Float64Array;
  readonly applies: Truth;
  readonly levels: { readonly raised: Read; readonly could: Read; readonly floor: Read };
  readonly rules: ReadonlyMap<string, RuleReads>;
}

interface Truth {
  readonly certain: Read;
  readonly possible: Read;
}

export interface RuleReads extends Truth {
  readonly explained: Truth;
  readonly notReliable: Read;
}

/** `certain` and `counts` are made to hold where the comparison does, `possible` and `could` to fail where it does not. */
export function tightenedOf(compiled: Compiled, atoms: Atoms, space: Space): Tightened {
  const { logic, protocol } = compiled;
  const named = namesOf(compiled, atoms);
  const indices = [...new Set(named.values())];
  const own = inputsBehind(logic, [...answersIn(logic)]);
  const inputs = [...own, ...indices.flatMap((index) => [flag(yes(index)), flag(no(index))])];
  const steps = logic.steps.map(({ name, is }) => ({ name, is: tighten(name, is, named) }));
  const asked = [...answersIn(logic)];
  const evaluator = logicToEvaluator({ ...logic, inputs, steps: stepsFor(steps, asked) });
  const fill = fillerOf(own, protocol, space);
  const row = new Float64Array(inputs.length);
  const read = (logical: Logical): Read => evaluator.reader(logical);
  const truth = ({ certain, possible }: { certain: Logical; possible: Logical }): Truth => ({
    certain: read(certain),
    possible: read(possible),
  });
  return {
    compiled,
    evaluator,
    run: (node) => {
      fill(node.lows, node.highs, row);
      indices.forEach((index, at) => {
        const stand = node.stands[index];
        row[own.length + 2 * at] = stand === stands.holds ? 1 : 0;
        row[own.length + 2 * at + 1] = stand === stands.fails ? 1 : 0;
      });
      return evaluator.run(row);
    },
    applies: truth(logic.applies),
    levels: {
      raised: read(logic.levels.raised),
      could: read(logic.levels.could),
      floor: read(logic.levels.floor),
    },
    rules: new Map(
      logic.rules.map((rule) => [
        rule.rule,
        { ...truth(rule), explained: truth(rule.explained), notReliable: read(rule.notReliable) },
      ]),
    ),
  };
}

const yes = (index: number): string => `settled ${index}:value`;
const no = (index: number): string => `settled ${index}:failing`;
const flag = (name: string): Input => ({ name, of: 'limit', owner: name, part: 'value', choice: null });

function* answersIn({ applies, rules, levels }: Logic): Generator<Logical> {
  yield* Object.values(applies);
  yield* Object.values(levels);
  for (const { certain, possible, explained, notReliable } of rules)
    yield* [certain, possible, notReliable, ...Object.values(explained)];
}

/** By the name of each step that says how an askew comparison stands, the index of its atom. */
function namesOf(compiled: Compiled, atoms: Atoms): ReadonlyMap<string, number> {
  const names = new Map<string, number>();
  for (const condition of conditionsAsked(compiled)) {
    for (const { path } of comparisonsIn(condition)) {
      const place = stepName(path);
      const atom = atoms.at(compiled, place);
      if (atom?.askew) for (const rail of rails) names.set(`${place}:${rail}`, atom.index);
    }
  }
  return names;
}

const rails = ['certain', 'counts', 'possible', 'could', 'could_not'] as const;

function tighten(name: string, is: Logical, named: ReadonlyMap<string, number>): Logical {
  const index = named.get(name);
  if (index === undefined) return is;
  const rail = name.slice(name.lastIndexOf(':') + 1);
  if (rail === 'certain' || rail === 'counts') return or(is, variable(yes(index)));
  return and(is, not(variable(rail === 'could_not' ? yes(index) : no(index))));
}
