import { operation, type Logical, type Operator } from '../../logic/operators.ts';
import type { PerOperator } from '../target.ts';
import type { Code } from './code.ts';
import { commonFactor, termsOf, type Term } from './terms.ts';
import { mergeCases, scaledCases, type Cases, type Value } from './cases.ts';
import type { Part } from './part.ts';

/** Builds parts, each once, and folds what is known. */
export class Graph {
  readonly #known = new Map<string, Part>();
  /** What each highest was made of. */
  readonly #highestOf = new Map<Part, readonly (readonly [Part, number])[]>();
  readonly #operators: PerOperator<Part> = {
    '+': (of) => this.#sum(of.map((part) => [part, 1])),
    '-': (of) => this.#sum(of.map((part, index) => [part, index === of.length - 1 ? -1 : 1])),
    '*': ([a, b]) => this.#product(a as Part, b as Part),
    min: (of) => this.#joined('min', of, (values) => Math.min(...values)),
    max: (of) => this.#highest(of) ?? this.#joined('max', of, (values) => Math.max(...values)),
    '<': (of) => this.#compared('<', of),
    '<=': (of) => this.#compared('<=', of),
    and: (of) => this.#truths('and', of, false),
    or: (of) => this.#truths('or', of, true),
    '!': ([part]) => this.#not(part as Part),
    if: (of) => this.#choice(of),
  };

  constant(value: Value): Part {
    const type = typeof value === 'number' ? 'number' : 'truth';
    return this.#once(`${value}`, { type, is: { kind: 'constant', value } });
  }

  input(code: Code, type: Part['type']): Part {
    return this.#once(`input ${code.text}`, { type, is: { kind: 'input', code } });
  }

  /** An answer by where a whole number lies: that of the number without what it is multiplied by, and without what is added. */
  cases(of: Part, cases: Cases): Part {
    const [first] = cases.values;
    if (cases.cuts.length === 0) return this.constant(first as Value);
    // 0 and 1 are truths, so that a truth that is counted is one part with the truth itself.
    if (cases.values.every((value) => value === 0 || value === 1))
      return this.cases(of, { cuts: cases.cuts, values: cases.values.map(Boolean) });
    const { terms, constant } = termsOf([[of, 1]]);
    const by = commonFactor(terms);
    if (by !== 1 || constant !== 0) {
      const bare = this.#sum([...terms].map(([part, each]) => [part, each / by]));
      return this.cases(bare, scaledCases(cases, by, constant));
    }
    const type = typeof first === 'number' ? 'number' : 'truth';
    const key = `cases ${of.id} ${cases.cuts.join(' ')} ${cases.values.join(' ')}`;
    return this.#once(key, { type, is: { kind: 'cases', of, cases } });
  }

  /** An expression, with each name looked up. */
  read(logical: Logical, look: (name: string) => Part): Part {
    if (typeof logical !== 'object') return this.constant(logical);
    const inner = operation(logical);
    if (!inner) return look((logical as { readonly var: string }).var);
    return this.#operators[inner[0]](inner[1].map((part) => this.read(part, look)));
  }

  make(operator: Operator, of: readonly Part[]): Part {
    return this.#operators[operator](of);
  }

  #once(key: string, made: Omit<Part, 'id'>): Part {
    const known = this.#known.get(key) ?? { id: this.#known.size, ...made };
    this.#known.set(key, known);
    return known;
  }

  #plain(operator: Operator, of: readonly Part[], type: Part['type']): Part {
    const key = `${operator} ${of.map(({ id }) => id).join(' ')}`;
    return this.#once(key, { type, is: { kind: 'operation', operator, of } });
  }

  /** Cases of one number and constants become cases of that number. */
  #merged(of: readonly Part[], answer: (values: readonly Value[]) => Value): Part | null {
    const subjects = new Set(of.flatMap(({ is }) => (is.kind === 'cases' ? [is.of] : [])));
    const whole = of.every(({ is }) => is.kind === 'cases' || is.kind === 'constant');
    const [subject] = subjects;
    if (!whole || subjects.size > 1) return null;
    const each = of.map(({ is }): Cases =>
      is.kind === 'cases' ? is.cases : { cuts: [], values: [(is as { value: Value }).value] },
    );
    const cases = mergeCases(each, answer);
    return subject ? this.cases(subject, cases) : this.constant(cases.values[0] as Value);
  }

  /** Like terms are one term, in one order; cases of one number are added up. */
  #sum(of: readonly Term[]): Part {
    const { terms, constant } = termsOf(of);
    const stepped = [...terms].filter(([{ is }]) => is.kind === 'cases');
    const merged = this.#bySubject(
      stepped.map(([part, by]) => this.#scaled(part, by)),
      (values) => values.map(Number).reduce((a, b) => a + b, 0),
    );
    // In the order of the parts themselves, so that a sum and its negative begin with the same part.
    const smooth = [...terms]
      .filter(([{ is }]) => is.kind !== 'cases')
      .sort(([one], [other]) => one.id - other.id)
      .map(([part, by]) => this.#scaled(part, by));
    const [only] = merged;
    if (smooth.length === 0 && merged.length === 1 && only && constant !== 0) {
      return this.#merged([only], ([value]) => Number(value) + constant) ?? only;
    }
    const all = [...smooth, ...merged.sort((a, b) => a.id - b.id)];
    if (constant !== 0 || all.length === 0) all.push(this.constant(constant));
    return all.length === 1 ? (all[0] as Part) : this.#plain('+', all, 'number');
  }

  #product(left: Part, right: Part): Part {
    if (left.is.kind === 'constant') return this.#sum([[right, left.is.value as number]]);
    if (right.is.kind === 'constant') return this.#sum([[left, right.is.value as number]]);
    return this.#plain('*', left.id < right.id ? [left, right] : [right, left], 'number');
  }

  #scaled(part: Part, by: number): Part {
    if (by === 1) return part;
    const scaled = part.is.kind === 'cases' ? this.#merged([part], ([value]) => Number(value) * by) : null;
    return scaled ?? this.#plain('*', [this.constant(by), part], 'number');
  }

  /**
   * The highest of numbers that are all known, each under a condition: the lowest, and at each next one, where it or one above holds, so much more.
   */
  #highest(of: readonly Part[]): Part | null {
    const guarded = of.map((part) => this.#guarded(part));
    const known = guarded.flatMap((each) => each ?? []);
    if (guarded.includes(null) || known.length > 200) return null;
    const values = [...new Set(known.map(([, value]) => value))].sort((a, b) => a - b);
    let reached: Part = this.constant(false);
    const terms: Term[] = [[this.constant(values[0] ?? 0), 1]];
    for (let place = values.length - 1; place > 0; place -= 1) {
      const when = known.filter(([, each]) => each === values[place]).map(([condition]) => condition);
      reached = this.make('or', [reached, ...when]);
      const more = (values[place] as number) - (values[place - 1] as number);
      terms.push([this.#choice([reached, this.constant(1), this.constant(0)]), more]);
    }
    const made = this.#sum(terms);
    this.#highestOf.set(made, known);
    return made;
  }

  /** Every value that a number can have, with its condition; null where they are not all known. */
  #guarded(part: Part): (readonly [Part, number])[] | null {
    const { is } = part;
    const known = this.#highestOf.get(part);
    if (known) return [...known];
    if (is.kind === 'constant') return [[this.constant(true), Number(is.value)]];
    if (is.kind === 'cases') {
      const { cuts, values } = is.cases;
      return [...new Set(values.map(Number))].map((value) => {
        const here = mergeCases([{ cuts, values }], ([each]) => Number(each) === value);
        return [this.cases(is.of, here), value] as const;
      });
    }
    if (is.kind !== 'operation' || is.operator !== 'if') return null;
    const [when, first, second] = is.of as [Part, Part, Part];
    const [yes, no] = [this.#guarded(first), this.#guarded(second)];
    if (!yes || !no) return null;
    return [
      ...yes.map(([each, value]) => [this.make('and', [when, each]), value] as const),
      ...no.map(([each, value]) => [this.make('and', [this.#not(when), each]), value] as const),
    ];
  }

  /** An operator that takes its parts in any order: those of one number are joined first. */
  #joined(operator: 'min' | 'max', of: readonly Part[], work: (values: readonly number[]) => number): Part {
    const joined = this.#bySubject([...new Set(of)], (values) => work(values.map(Number)));
    return joined.length === 1 ? (joined[0] as Part) : this.#plain(operator, joined, 'number');
  }

  /** Parts that are cases of one number, or constants, as one part each; the rest as they are. */
  #bySubject(of: readonly Part[], work: (values: readonly Value[]) => Value): Part[] {
    const groups = new Map<Part | null, Part[]>();
    const rest: Part[] = [];
    for (const part of of) {
      if (part.is.kind !== 'cases' && part.is.kind !== 'constant') rest.push(part);
      else {
        const subject = part.is.kind === 'cases' ? part.is.of : null;
        groups.set(subject, [...(groups.get(subject) ?? []), part]);
      }
    }
    return [...[...groups.values()].map((group) => this.#merged(group, work) as Part), ...rest];
  }

  #compared(operator: '<' | '<=', of: readonly Part[]): Part {
    const [left, right] = of as [Part, Part];
    const holds = (a: number, b: number): boolean => (operator === '<' ? a < b : a <= b);
    if (left === right) return this.constant(operator === '<=');
    const merged = this.#merged(of, ([a, b]) => holds(Number(a), Number(b)));
    if (merged) return merged;
    // Whole numbers: below or at c is below c + 1, above c is from c + 1.
    if (right.is.kind === 'constant') {
      const cut = (right.is.value as number) + (operator === '<=' ? 1 : 0);
      return this.cases(left, { cuts: [cut], values: [true, false] });
    }
    if (left.is.kind === 'constant') {
      const cut = (left.is.value as number) + (operator === '<' ? 1 : 0);
      return this.cases(right, { cuts: [cut], values: [false, true] });
    }
    return this.#plain(operator, of, 'truth');
  }

  /** `whole` is what one part alone settles: true for or, false for and. */
  #truths(operator: 'and' | 'or', of: readonly Part[], whole: boolean): Part {
    const isWhole = (value: Value): boolean => value === whole;
    const joined = this.#bySubject([...new Set(of)], (values) => (values.some(isWhole) ? whole : !whole));
    const open = [...new Set(joined.filter((part) => !isConstant(part, !whole)))];
    if (open.some((part) => isConstant(part, whole)) || open.some((part) => open.includes(this.#not(part))))
      return this.constant(whole);
    if (open.length === 0) return this.constant(!whole);
    return open.length === 1 ? (open[0] as Part) : this.#plain(operator, open, 'truth');
  }

  #not(part: Part): Part {
    if (part.is.kind === 'operation' && part.is.operator === '!') return part.is.of[0] as Part;
    return this.#merged([part], ([value]) => !value) ?? this.#plain('!', [part], 'truth');
  }

  #choice(of: readonly Part[]): Part {
    const [condition, first, ...rest] = of as [Part, Part, ...Part[]];
    const second = rest.length === 1 ? (rest[0] as Part) : this.#choice(rest);
    if (condition.is.kind === 'constant') return condition.is.value ? first : second;
    if (first === second) return first;
    const merged = this.#merged([condition, first, second], ([when, a, b]) => (when ? a : b) as Value);
    if (merged) return merged;
    if (isConstant(first, 1) && isConstant(second, 0)) return condition;
    return this.#plain('if', [condition, first, second], first.type);
  }
}

const isConstant = ({ is }: Part, value: Value): boolean => is.kind === 'constant' && is.value === value;
