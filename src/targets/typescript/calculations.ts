import { stepName, type Logic } from '../../logic/logic.ts';
import type { Input } from '../../logic/inputs.ts';
import { Code, code } from './code.ts';
import { Graph } from './graph.ts';
import type { Part } from './part.ts';
import type { ModuleInputs } from './module-inputs.ts';
import { writeParts } from './write-parts.ts';

/** The answers of logic as parts of one graph. */
export interface Answers {
  readonly graph: Graph;
  readonly read: (logical: Logic['levels']['raised']) => Part;
  readonly names: ReadonlyMap<Part, string>;
}

/** How many rules share a word. */
export const rulesInWord = 32;

/** `complete(…, out, at)`: straight through, for a set in which everything is one value. */
export function completeFunction(inputs: ModuleInputs): Code {
  const answers = answersOver(inputs, true);
  const { lines, summary, words } = packed(inputs.logic, answers);
  const out = words.flatMap(({ met, undecided }, index) => [
    code`  out[at + ${2 * index + 1}] = ${met};`,
    code`  out[at + ${2 * index + 2}] = ${undecided};`,
  ]);
  return code`function complete(
  ${completeParameters(inputs)},
  out: Int32Array,
  at: number,
): void {
${Code.joined([...lines, code`  out[at] = ${summary};`, ...out], '\n')}
}`;
}

/** The parameters of what is asked of the single values of a complete set. */
export const completeParameters = ({ observations, lookBacks }: ModuleInputs): Code =>
  Code.joined(
    [
      ...observations.map(({ entry }) => code`${ofObservation(entry.name)}: number`),
      ...lookBacks.map(({ name }) => code`${ofLookBack(name)}: number`),
    ],
    ',\n  ',
  );

/** `answer(b, out)`: over bounds, certain and possible apart. */
export function boundsFunction(inputs: ModuleInputs): Code {
  const { logic } = inputs;
  const { read, names } = answersOver(inputs, false);
  const rules = wordsOf(
    logic.rules.map(({ certain, possible }) => ({ certain: read(certain), possible: read(possible) })),
  );
  const { applies, levels } = logic;
  const roots = [applies.certain, applies.possible, levels.raised, levels.could, levels.floor].map(read);
  const written = writeParts(
    [...roots, ...rules.flat().flatMap((rule) => [rule.certain, rule.possible])],
    names,
  );
  const [certain, possible, raised, could, floor] = roots.map(written.of) as [Code, Code, Code, Code, Code];
  const out = [
    code`  out[0] = (${certain} ? 1 : 0) | (${possible} ? 2 : 0);`,
    code`  out[1] = ${raised};`,
    code`  out[2] = ${could};`,
    code`  out[3] = ${floor};`,
    ...rules.flatMap((word, index) => [
      code`  out[${4 + 2 * index}] = ${bits(word.map((rule) => written.of(rule.certain)))};`,
      code`  out[${5 + 2 * index}] = ${bits(word.map((rule) => written.of(rule.possible)))};`,
    ]),
  ];
  return code`function answer(b: Float64Array, out: Int32Array): void {
${Code.joined([...written.lines, ...out], '\n')}
}`;
}

/** `work(b, out)`: the measures over bounds, seven numbers each. */
export function measuresFunction(inputs: ModuleInputs): Code {
  const { read, names } = answersOver(inputs, false);
  const roots = inputs.logic.measures.map(({ low, high, bottomLow, bottomHigh, maybe }) =>
    [low, high, bottomLow, bottomHigh, maybe].map(read),
  );
  const written = writeParts(roots.flat(), names);
  const numbers = roots.flatMap((each, index) =>
    each.map((part, place) => {
      const made = written.of(part);
      return code`  out[${5 * index + place}] = ${part.type === 'truth' ? code`${made} ? 1 : 0` : made};`;
    }),
  );
  return code`function work(b: Float64Array, out: Float64Array): void {
${Code.joined([...written.lines, ...numbers], '\n')}
}`;
}

/** The answers over bounds, or over the single values of a complete set. */
export function answersOver(inputs: ModuleInputs, single: boolean): Answers {
  const { logic, observations } = inputs;
  const graph = new Graph();
  const known = new Map<string, Part>();
  const names = new Map<Part, string>();
  const rules = inputs.protocol.rules.map(({ name, path }) => [`${stepName(path)}/`, `${name}_`] as const);
  const called = (step: string): string => {
    const [path, name] = rules.find(([start]) => step.startsWith(start)) ?? ['', ''];
    return `${name}${step.slice(path.length).replace(/^when\b/, '')}`;
  };
  for (const [place, input] of logic.inputs.entries()) {
    const made = single ? completeInput(graph, input, inputs) : boundsInput(graph, input, place);
    known.set(input.name, made);
  }
  const look = (name: string): Part => {
    const part = known.get(name);
    if (!part) throw new Error(`no input and no earlier step is called ${name}`);
    return part;
  };
  const closed = new Set(single ? observations.map(({ entry }) => `${entry.name}:open`) : []);
  for (const { name, is } of logic.steps) {
    // In a complete set nothing is open: each choice is one.
    const part = closed.has(name) ? graph.constant(false) : graph.read(is, look);
    known.set(name, part);
    if (!names.has(part)) names.set(part, called(single ? name.replace(/:\w+$/, '') : name));
  }
  return { graph, read: (logical) => graph.read(logical, look), names };
}

export const ofObservation = (name: string): Code => Code.name(`o_${name}`);
export const ofLookBack = (name: string): Code => Code.name(`back_${name}`);

function completeInput(graph: Graph, { of, owner, part, choice }: Input, inputs: ModuleInputs): Part {
  if (of === 'limit') return graph.constant(inputs.protocol.limits.get(owner)?.value ?? 0);
  if (of === 'look_back') {
    if (part === 'low' || part === 'high') return graph.input(ofLookBack(owner), 'number');
    return graph.constant(part === 'count' ? 1 : part !== 'open');
  }
  if (part === 'known') return graph.constant(true);
  if (part === 'unobtainable' || part === 'missing') return graph.constant(false);
  const observation = inputs.observations[inputs.indexOf(owner)];
  const value = ofObservation(owner);
  if (!observation || choice === null) return graph.input(value, 'number');
  const place = observation.choices.indexOf(choice);
  if (observation.entry.kind === 'several')
    return graph.input(code`((${value} & ${2 ** place}) !== 0)`, 'truth');
  return graph.cases(graph.input(value, 'number'), oneOf(place, observation.choices.length));
}

/** Whether a number from 0 to below `count` is this one. */
function oneOf(place: number, count: number): { cuts: number[]; values: boolean[] } {
  const cuts = [place, place + 1].filter((cut) => cut > 0 && cut < count);
  const values = [...(place > 0 ? [false] : []), true, ...(place + 1 < count ? [false] : [])];
  return { cuts, values };
}

function boundsInput(graph: Graph, { part }: Input, place: number): Part {
  const isNumber = part === 'low' || part === 'high' || part === 'value' || part === 'count';
  return isNumber
    ? graph.input(code`(b[${place}] as number)`, 'number')
    : graph.input(code`(b[${place}] !== 0)`, 'truth');
}

interface Rail {
  readonly certain: Part;
  readonly possible: Part;
}

function wordsOf(rules: readonly Rail[]): Rail[][] {
  return Array.from({ length: Math.ceil(rules.length / rulesInWord) }, (_, word) =>
    rules.slice(word * rulesInWord, (word + 1) * rulesInWord),
  );
}

/** One bit for each truth, the first lowest. */
function bits(truths: readonly Code[]): Code {
  const open = truths.flatMap((truth, index) =>
    truth.text === 'false' ? [] : [code`(${truth} ? ${1 << index} : 0)`],
  );
  return open.length === 0 ? code`0` : Code.joined(open, ' | ');
}

function packed(
  { applies, levels, rules }: Logic,
  { graph, read, names }: Answers,
): { lines: readonly Code[]; summary: Code; words: readonly { met: Code; undecided: Code }[] } {
  const roots = [applies.certain, applies.possible, levels.raised, levels.could, levels.floor].map(read);
  const words = wordsOf(
    rules.map(({ certain, possible }) => ({ certain: read(certain), possible: read(possible) })),
  );
  const open = words.map((word) =>
    word.map(({ certain, possible }) => graph.make('and', [possible, graph.make('!', [certain])])),
  );
  const written = writeParts(
    [...roots, ...words.flat().map(({ certain }) => certain), ...open.flat()],
    names,
  );
  const [certain, possible, raised, could, floor] = roots.map(written.of) as [Code, Code, Code, Code, Code];
  return {
    lines: written.lines,
    summary: code`summary(${certain}, ${possible}, ${certain}, ${raised}, ${could}, ${floor})`,
    words: words.map((word, index) => ({
      met: bits(word.map((rule) => written.of(rule.certain))),
      undecided: bits((open[index] ?? []).map(written.of)),
    })),
  };
}
