import Fraction from 'fraction.js';
import type { MapNode, Node } from '../../document/document.ts';
import type { Box as Sets } from '../box.ts';
import { boxToGiven } from '../examples/box-to-given.ts';
import { map, scalar } from '../examples/nodes.ts';
import { nearest, type Box } from './box.ts';
import type { Question } from './question.ts';
import { lackName, type Variable } from './space.ts';
import type { Subject } from './subject.ts';

/** One set, as a case gives it. */
export type Given = MapNode;

/** The set of a box that is nearest to ordinary; of pairs, both sets. */
export function givensOf(box: Box, question: Question, subject: Subject): readonly Given[] {
  const { space, seconds } = question;
  const first = space.variables.map((variable, index) => nearest(box, index, variable));
  const value = (index: number): number => first[index] as number;
  const zero = (index: number): number => (seconds.get(index)?.kind === 'only_here' ? 0 : value(index));
  const set = (of: (index: number) => number): Given => given(of, question, subject);
  if (seconds.size === 0) return [set(value)];
  const second = (index: number): number => {
    const how = seconds.get(index);
    if (how?.kind === 'moved') return value(index) + how.by;
    return how?.kind === 'as' ? value(how.variable) : value(index);
  };
  return [set(zero), set(second)];
}

function given(of: (index: number) => number, { space }: Question, subject: Subject): Given {
  const ranges = new Map<string, readonly [number, number]>();
  const choices = new Map<string, readonly string[]>();
  const absent = new Map<string, 'missing' | 'unobtainable'>();
  const value = (name: string): number => of(space.at(name));
  for (const { name, kind, choices: all } of subject.observations.values()) {
    const lack = space.find(lackName(name)) === null ? 0 : value(lackName(name));
    if (lack > 0) absent.set(name, lack === 1 ? 'missing' : 'unobtainable');
    if (kind === 'number') ranges.set(name, [value(name), value(name)]);
    else if (kind === 'several')
      for (const { choice } of all)
        choices.set(`${name}:${choice}`, [value(`${name}:${choice}`) === 1 ? 'yes' : 'no']);
    else choices.set(name, [(space.variables[space.at(name)] as Variable).choices[value(name)] as string]);
  }
  const observed = new Map([...subject.observations].filter(([name]) => !subject.openLimits.has(name)));
  const sets: Sets = { ranges, choices, absent };
  const node = boxToGiven(sets, { observations: observed } as never);
  const limits = limitsOf(value, subject);
  return limits.length === 0
    ? node
    : { ...node, entries: [...map([['patient', map([['limits', map(limits)]])]]).entries, ...node.entries] };
}

/** The limits that are not as they are written, as a prescriber would state them. */
function limitsOf(value: (name: string) => number, { openLimits }: Subject): [string, Node][] {
  return [...openLimits].flatMap(([name, limit]): [string, Node][] => {
    const steps = value(name);
    if (steps === limit.value) return [];
    const number = Number(new Fraction(steps).div(limit.stepsPerUnit).toString());
    const by = limit.setBy ?? 'prescriber';
    return [
      [
        name,
        map([
          ['value', scalar(number)],
          ['by', scalar(by)],
        ]),
      ],
    ];
  });
}
