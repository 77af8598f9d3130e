import type { PerOperator } from '../target.ts';
import { Code, code } from './code.ts';
import type { Cases, Value } from './cases.ts';
import type { Part } from './part.ts';

/** Each operator as TypeScript. Truths are 0 or 1 and are joined without branches, which a processor cannot foresee. */
const operators: PerOperator<Code> = {
  '+': (of) => code`(${Code.joined(of, ' + ')})`,
  '-': ([a, b]) => (b ? code`(${a as Code} - ${b})` : code`(-${a as Code})`),
  '*': (of) => code`(${Code.joined(of, ' * ')})`,
  min: (of) => code`Math.min(${Code.joined(of, ', ')})`,
  max: (of) => code`Math.max(${Code.joined(of, ', ')})`,
  '<': (of) => code`Number(${Code.joined(of, ' < ')})`,
  '<=': (of) => code`Number(${Code.joined(of, ' <= ')})`,
  and: (of) => code`(${Code.joined(of, ' & ')})`,
  or: (of) => code`(${Code.joined(of, ' | ')})`,
  '!': ([a]) => code`(1 - ${a as Code})`,
  if: ([when, first, second]) => code`(${when as Code} ? ${first as Code} : ${second as Code})`,
};

/** Lines that work parts out, and the code that then stands for each. */
export interface Written {
  readonly lines: readonly Code[];
  readonly of: (part: Part) => Code;
}

/** Writes parts in their order: one that is used more than once gets a line of its own, called as the step that it was. */
export function writeParts(roots: readonly Part[], names: ReadonlyMap<Part, string>): Written {
  const uses = countUses(roots);
  const done = new Map<Part, Code>();
  const named = new Set<Part>();
  const taken = new Set<string>();
  const lines: Code[] = [];
  const of = (part: Part): Code => {
    const known = done.get(part);
    if (!known) throw new Error(`part ${part.id} is read before it is written`);
    return known;
  };
  // A part is made after those that it is made of, so that the order of their numbers is one in which they can be worked out.
  for (const [part, count] of [...uses].sort(([a], [b]) => a.id - b.id)) {
    const made = expression(part, of, (condition) =>
      named.has(condition) ? code`${of(condition)} === 1` : asCondition(condition, of),
    );
    if (count < 2 || part.is.kind === 'constant' || part.is.kind === 'input' || isMultiple(part)) {
      done.set(part, made);
      continue;
    }
    const name = freeName(names.get(part) ?? 'part', taken);
    lines.push(code`  const ${name} = ${made};`);
    done.set(part, name);
    named.add(part);
  }
  return { lines, of };
}

const partsOf = ({ is }: Part): readonly Part[] =>
  is.kind === 'operation' ? is.of : is.kind === 'cases' ? [is.of, is.of] : [];

/** So many times another part: it is written wherever it stands, because a sum may turn its sign. */
const isMultiple = ({ is }: Part): boolean =>
  is.kind === 'operation' && is.operator === '*' && is.of[0]?.is.kind === 'constant';

/** How often each part is written; what is compared with numbers is written several times. */
function countUses(roots: readonly Part[]): ReadonlyMap<Part, number> {
  const uses = new Map<Part, number>();
  const open = [...roots];
  for (let part = open.pop(); part; part = open.pop()) {
    const before = uses.get(part) ?? 0;
    uses.set(part, before + 1);
    if (before === 0 || isMultiple(part)) open.push(...partsOf(part));
  }
  return uses;
}

type Write = (part: Part) => Code;

/** `condition` writes what comes before a question mark. */
function expression(part: Part, write: Write, condition: Write): Code {
  const { is } = part;
  switch (is.kind) {
    case 'constant':
      return code`${Number(is.value)}`;
    case 'input':
      return is.code;
    case 'operation':
      if (is.operator === '+') return sumOf(is.of, write);
      return operators[is.operator](
        is.of.map((each, place) => (is.operator === 'if' && place === 0 ? condition(each) : write(each))),
      );
    case 'cases':
      return part.type === 'truth' ? truthOf(write(is.of), is.cases) : numberOf(write(is.of), is.cases);
  }
}

/** `x < 40`, where that is all; else a truth that is 1. */
function asCondition(part: Part, write: Write): Code {
  const { is } = part;
  if (is.kind !== 'cases' || is.cases.cuts.length > 1) return code`${write(part)} === 1`;
  return code`${write(is.of)} ${is.cases.values[0] === true ? code`<` : code`>=`} ${is.cases.cuts[0] as number}`;
}

/** `a - 2 * b + 3`. */
function sumOf(of: readonly Part[], write: (part: Part) => Code): Code {
  const terms = of.map((part, index) => {
    const [by, rest] = factorOf(part);
    if (index === 0) return write(part);
    if (by >= 0) return code` + ${write(part)}`;
    if (!rest) return code` - ${-by}`;
    return by === -1 ? code` - ${write(rest)}` : code` - ${-by} * ${write(rest)}`;
  });
  return code`(${Code.joined(terms, '')})`;
}

/** What a term is multiplied by, and what it is then; a constant is its own factor. */
function factorOf({ is }: Part): readonly [by: number, rest: Part | null] {
  if (is.kind === 'constant') return [is.value as number, null];
  const [by, rest] = is.kind === 'operation' && is.operator === '*' ? is.of : [];
  return by?.is.kind === 'constant' && rest ? [by.is.value as number, rest] : [1, null];
}

/** `x < 8 ? 3 : x < 11 ? 1 : 0`. */
function numberOf(of: Code, { cuts, values }: Cases): Code {
  const branches = cuts.map((cut, index) => code`${of} < ${cut} ? ${values[index] as Value} : `);
  return code`(${Code.joined(branches, '')}${values.at(-1) as Value})`;
}

/** `Number(x < 40) | Number(x >= 120)`; or what is not, where that is shorter. */
function truthOf(of: Code, { cuts, values }: Cases): Code {
  const spans = (wanted: number): Code[] =>
    values.flatMap((value, index) =>
      Number(value) === wanted ? [span(of, cuts[index - 1], cuts[index])] : [],
    );
  const [holds, not] = [spans(1), spans(0)];
  if (not.length < holds.length) return code`(1 - ${either(not)})`;
  return either(holds);
}

const either = (spans: readonly Code[]): Code =>
  spans.length === 1 ? (spans[0] as Code) : code`(${Code.joined(spans, ' | ')})`;

function span(of: Code, from: number | undefined, to: number | undefined): Code {
  if (from === undefined) return code`Number(${of} < ${to as number})`;
  if (to === undefined) return code`Number(${of} >= ${from})`;
  return to === from + 1
    ? code`Number(${of} === ${from})`
    : code`(Number(${of} >= ${from}) & Number(${of} < ${to}))`;
}

/** A name that is not taken yet: letters, digits and underscores of the wanted one. */
function freeName(wanted: string, taken: Set<string>): Code {
  const base = `is_${wanted.replaceAll(/[\W_]+/g, '_')}`;
  let free = base;
  for (let count = 2; taken.has(free); count += 1) free = `${base}_${count}`;
  taken.add(free);
  return Code.name(free);
}
