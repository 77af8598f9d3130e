import { stepName, type Logic } from '../../logic/logic.ts';
import type { Input } from '../../logic/inputs.ts';
import { mergeCases, type Value } from './cases.ts';
import { code } from './code.ts';
import { Graph } from './graph.ts';
import type { ModuleInputs } from './module-inputs.ts';
import { has, lookedBack, nothingIn, ofEnd, ofLookBack, ofObservation } from './names.ts';
import type { Part } from './part.ts';

/** The answers of logic as parts of one graph. */
export interface Answers {
  readonly graph: Graph;
  readonly read: (logical: Logic['levels']['raised']) => Part;
  readonly names: ReadonlyMap<Part, string>;
}

/**
 * What the answers are worked out from: a row in which everything is one value; a row of which some values are missing; or bounds, where
 * each number has two ends.
 */
export type From = 'complete_row' | 'open_row' | 'bounds';

/** The answers to a row, or over bounds. */
export function answersOver(inputs: ModuleInputs, from: From): Answers {
  const { logic, observations } = inputs;
  const single = from === 'complete_row';
  const graph = new Graph();
  const known = new Map<string, Part>();
  const names = new Map<Part, string>();
  const rules = inputs.protocol.rules.map(({ name, path }) => [`${stepName(path)}/`, `${name}_`] as const);
  const called = (step: string): string => {
    const [path, name] = rules.find(([start]) => step.startsWith(start)) ?? ['', ''];
    return `${name}${step.slice(path.length).replace(/^when\b/, '')}`;
  };
  for (const [place, input] of logic.inputs.entries()) {
    const made =
      from === 'bounds'
        ? boundsInput(graph, input, place)
        : rowInput(graph, input, inputs, from === 'open_row');
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

function rowInput(graph: Graph, input: Input, inputs: ModuleInputs, isOpen: boolean): Part {
  const { of, owner, part, choice } = input;
  if (of === 'limit') return graph.constant(inputs.protocol.limits.get(owner)?.value ?? 0);
  if (of === 'look_back') return lookBackInput(graph, input, isOpen);
  const observation = inputs.observations[inputs.indexOf(owner)];
  if (!observation) throw new Error(`${owner} is no observation of this protocol`);
  const { assumed, choices, entry } = observation;
  const given = isOpen ? graph.input(has(owner), 'truth') : graph.constant(true);
  const value = ofObservation(owner);
  if (part === 'known') return given;
  if (part === 'missing') return assumed === null ? graph.make('!', [given]) : graph.constant(false);
  if (part === 'unobtainable')
    return isOpen
      ? graph.input(code`Number(${value} === ${nothingIn(observation) + 1})`, 'truth')
      : graph.constant(false);
  if (choice === null)
    return graph.input(isOpen && (part === 'low' || part === 'high') ? ofEnd(part, owner) : value, 'number');
  const place = choices.indexOf(choice);
  if (entry.kind === 'several') {
    const isIn = graph.input(code`((${value} >> ${place}) & 1)`, 'truth');
    return part === 'sure'
      ? graph.make('and', [given, isIn])
      : graph.make('or', [graph.make('!', [given]), isIn]);
  }
  const one = oneOf(place, choices.length);
  if (!isOpen) return graph.cases(graph.input(value, 'number'), one);
  // Below 0 nothing is known: every choice may be, or the one that is taken for granted.
  const cases = { cuts: [0, ...one.cuts], values: [assumed === null || assumed === place, ...one.values] };
  return graph.cases(
    graph.input(value, 'number'),
    mergeCases([cases], ([only]) => only as Value),
  );
}

function lookBackInput(graph: Graph, { owner, part }: Input, isOpen: boolean): Part {
  if (part === 'low' || part === 'high')
    return graph.input(isOpen ? lookedBack(owner) : ofLookBack(owner), 'number');
  if (part === 'count') return graph.constant(1);
  if (part === 'open') return graph.constant(false);
  return isOpen ? graph.input(has(owner), 'truth') : graph.constant(true);
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
    : graph.input(code`Number(b[${place}] !== 0)`, 'truth');
}
