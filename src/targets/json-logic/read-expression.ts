import { operators, variable, type Logical, type Operator } from '../../logic/operators.ts';

/** Why an expression of JSON Logic is none of ours. */
export type Refusal =
  | 'an operator that logic does not have'
  | 'a text, a list or nothing'
  | 'not a whole number'
  | 'too few or too many parts'
  | 'a number where a truth belongs'
  | 'a truth where a number belongs'
  | 'a variable by path, by place or with a default'
  | 'a variable that is no whole number'
  | 'not one operator by itself';

/** An expression and what it comes to; a variable can be either. */
export interface ReadExpression {
  readonly is: Logical;
  readonly gives: 'number' | 'truth' | 'either';
}

/**
 * Reads an expression of logic from plain JSON, or says why it is none. Nothing is guessed: `"1"` is no number, 1 no truth. `given`
 * holds the names that have a value, each a whole number of steps or a flag; no other variable is read.
 */
export function readExpression(plain: unknown, given: ReadonlySet<string>): ReadExpression | Refusal {
  if (typeof plain === 'boolean') return { is: plain, gives: 'truth' };
  if (typeof plain === 'number') {
    return Number.isSafeInteger(plain) ? { is: plain, gives: 'number' } : 'not a whole number';
  }
  if (typeof plain !== 'object' || plain === null || Array.isArray(plain)) return 'a text, a list or nothing';
  const entries = Object.entries(plain);
  const [entry] = entries;
  if (!entry || entries.length > 1) return 'not one operator by itself';
  const [name, parts] = entry as [string, unknown];
  if (name === 'var') return readVariable(parts, given);
  if (!isOperator(name)) return 'an operator that logic does not have';
  return readOperation(name, parts, given);
}

const isOperator = (name: string): name is Operator => Object.hasOwn(operators, name);

function readVariable(name: unknown, given: ReadonlySet<string>): ReadExpression | Refusal {
  if (typeof name !== 'string' || name === '' || name.includes('.'))
    return 'a variable by path, by place or with a default';
  if (!given.has(name)) return 'a variable that is no whole number';
  return { is: variable(name), gives: 'either' };
}

function readOperation(name: Operator, parts: unknown, given: ReadonlySet<string>): ReadExpression | Refusal {
  const { least, most, gives } = operators[name];
  if (!Array.isArray(parts)) return 'a text, a list or nothing';
  if (parts.length < least || parts.length > (most ?? Infinity)) return 'too few or too many parts';
  if (name === 'if' && parts.length % 2 === 0) return 'too few or too many parts';
  const read: Logical[] = [];
  for (const [index, part] of parts.entries()) {
    const inner = readExpression(part, given);
    if (typeof inner === 'string') return inner;
    const wanted = wantedAt(name, index, parts.length);
    if (inner.gives !== 'either' && inner.gives !== wanted) {
      return wanted === 'truth' ? 'a number where a truth belongs' : 'a truth where a number belongs';
    }
    read.push(inner.is);
  }
  return { is: { [name]: read }, gives };
}

function wantedAt(name: Operator, index: number, count: number): 'number' | 'truth' {
  const { takes } = operators[name];
  if (name === 'if') return index % 2 === 0 && index < count - 1 ? 'truth' : 'number';
  return takes === 'truths' ? 'truth' : 'number';
}
