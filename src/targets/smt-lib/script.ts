import type { Input } from '../../logic/inputs.ts';
import type { Logic } from '../../logic/logic.ts';
import { operation, type Logical } from '../../logic/operators.ts';
import { stepsFor } from '../../logic/used-steps.ts';
import type { Protocol } from '../../protocol/protocol.ts';
import {
  lookBackFacts,
  lookBackPairFacts,
  lookBacksOf,
  multiplies,
  type NamedLookBack,
} from './look-back-facts.ts';
import { contradictionFacts } from './contradiction-facts.ts';
import { observationFacts } from './observation-facts.ts';
import { expression, helpers, sortOf, type Sort } from './operators.ts';
import { checkNames, type AskedSets } from './sets.ts';
import { Smt, smt } from './smt.ts';

type Read = Pick<Logic, 'inputs' | 'steps'>;

/** What a script says of itself before all else. */
export const head = ({ title, name, edition, digest, faults, measures }: Protocol): Smt =>
  Smt.comment(
    `${title}: protocol ${name}, edition ${edition}, as SMT-LIB 2. Generated; do not edit.`,
    digest,
    'What is proven here is true of the rules as written, not of patients. It supports licensed judgement and local policy. It is not a',
    'medical device, and the paper policy wins.',
    ...(faults.length === 0
      ? []
      : [
          'Values count as they were read: what a fault of technique may hide is asked only where ranges are.',
        ]),
    ...([...measures.values()].some(({ how }) => 'over' in how)
      ? ['Look backs may have any value that no earlier sets could contradict.']
      : []),
  );

/** Inputs, what holds of them, and the steps that `asked` reads. */
export function scriptOf(logic: Read, asked: readonly Logical[], protocol: Protocol, sets: AskedSets): Smt {
  checkNames(sets, protocol);
  const read = { inputs: logic.inputs, steps: stepsFor(logic.steps, asked) };
  // What is said of two look backs at once can cost a solver long: only of those that the answer can depend on.
  const names = namesIn([...asked, ...read.steps.map(({ is }) => is)]);
  const backs = lookBacksOf(protocol).filter(({ name }) =>
    read.inputs.some((input) => input.owner === name && names.has(input.name)),
  );
  return Smt.joined(
    [
      smt`(set-logic ${theory(read, backs)})`,
      smt`(set-option :produce-models true)`,
      helpers,
      Smt.comment(
        `Inputs: whole steps, and what is known. Sets: ${inWords[sets.given]}; limits ${limitsInWords[sets.limits]}.`,
      ),
      ...read.inputs.map((input) => declared(input, protocol, sets)),
      Smt.comment('What holds of every set'),
      ...[...facts(protocol, sets), ...lookBackPairFacts(backs)].map((fact) => smt`(assert ${fact})`),
      Smt.comment('Steps'),
      ...definitions(read),
    ],
    '\n',
  );
}

const inWords: Readonly<Record<AskedSets['given'], string>> = {
  complete: 'each observation has one value',
  partial: 'each observation has one value or none',
  any: 'each observation has one value, a range, an earlier value or none',
};
const limitsInWords: Readonly<Record<AskedSets['limits'], string>> = {
  as_written: 'as they are written',
  within_bounds: 'anywhere inside what may be changed',
};

/** The inputs and steps that expressions name. */
function namesIn(expressions: readonly Logical[]): ReadonlySet<string> {
  const names = new Set<string>();
  const open = [...expressions];
  for (let next = open.pop(); next !== undefined; next = open.pop()) {
    const inner = operation(next);
    if (inner) open.push(...inner[1]);
    else if (typeof next === 'object') names.add((next as { readonly var: string }).var);
  }
  return names;
}

/** Linear arithmetic, unless two numbers that are both not known are multiplied. */
function theory({ steps }: Read, backs: readonly NamedLookBack[]): Smt {
  const products = steps.some(({ is }) => hasProduct(is)) || multiplies(backs);
  return products ? smt`QF_NIA` : smt`QF_LIA`;
}

function hasProduct(logical: Logical): boolean {
  const [operator, parts] = operation(logical) ?? [null, []];
  const open = parts.filter((part) => typeof part !== 'number');
  return (operator === '*' && open.length > 1) || parts.some(hasProduct);
}

const numbers: ReadonlySet<Input['part']> = new Set(['low', 'high', 'value', 'count']);
const sortOfInput = ({ part }: Input): Sort => (numbers.has(part) ? 'Int' : 'Bool');
const sortText: Readonly<Record<Sort, Smt>> = { Int: smt`Int`, Bool: smt`Bool` };

/** An input that may be anything; a limit that is not changed is what is written. */
function declared(input: Input, { limits }: Protocol, sets: AskedSets): Smt {
  const limit = input.of === 'limit' ? limits.get(input.owner) : undefined;
  return limit && (limit.between === null || sets.limits === 'as_written')
    ? smt`(define-fun ${input.name} () Int ${limit.value})`
    : smt`(declare-fun ${input.name} () ${sortText[sortOfInput(input)]})`;
}

function facts(protocol: Protocol, sets: AskedSets): Smt[] {
  const backs = lookBacksOf(protocol);
  const changeable = sets.limits === 'within_bounds' ? [...protocol.limits.values()] : [];
  return [
    ...[...protocol.observations.values()].flatMap((each) => observationFacts(each, protocol, sets)),
    ...contradictionFacts(protocol),
    ...changeable.flatMap(({ name, between }) =>
      between ? [smt`(<= ${between[0]} ${`${name}:value`} ${between[1]})`] : [],
    ),
    ...backs.flatMap((back) => lookBackFacts(back, protocol, sets)),
  ];
}

/** Each step as a name for its expression. */
function definitions({ inputs, steps }: Read): Smt[] {
  const sorts = new Map<string, Sort>(inputs.map((input) => [input.name, sortOfInput(input)]));
  return steps.map(({ name, is }) => {
    const sort = sortOf(is, sorts);
    sorts.set(name, sort);
    return smt`(define-fun ${name} () ${sortText[sort]} ${expression(is)})`;
  });
}
