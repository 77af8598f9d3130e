import { cutPoints } from '../logic/cut-points.ts';
import type { Compiled } from '../outcome/compile.ts';
import type { Rule } from '../protocol/protocol.ts';
import { asOneProtocol } from './as-one-protocol.ts';
import { boxToInputs, everySet, type Box } from './box.ts';
import { observationsBehind } from './observations-behind.ts';
import { searchBoxes, type Asked } from './search-boxes.ts';
import { setInWords } from './set-in-words.ts';

/** A rule of one protocol. */
export interface RuleOf {
  readonly compiled: Compiled;
  readonly rule: Rule;
}

/** Whether two rules can be met at once: a set that meets both, in words; never; or more than a search can settle. */
export type Together =
  | { readonly kind: 'found'; readonly set: string }
  | { readonly kind: 'never' }
  | { readonly kind: 'not_settled' };

/** The most boxes that one search looks into. */
const mostBoxes = 20_000;

/** Looks for a set that meets two rules, of one protocol or of two that are read together, each for its own patients. */
export function advisedTogether(first: RuleOf, second: RuleOf): Together {
  if (first.rule === second.rule) return { kind: 'found', set: '' };
  const both = [first, second];
  const union = asOneProtocol(both.map(({ compiled }) => compiled.protocol));
  const reads = both.flatMap(readsOf);
  const answers = both.map(answerOf);
  const searched = searchBoxes({
    protocol: union,
    start: everySet(union),
    cuts: cutsOf(both),
    reads: [new Set(reads)],
    ask: (box) => every(answers.map((answer) => answer(box))),
    most: mostBoxes,
  });
  if (searched.kind === 'found') {
    return { kind: 'found', set: setInWords(searched.set, new Set(reads), union) };
  }
  return { kind: searched.kind === 'none' ? 'never' : 'not_settled' };
}

function readsOf({ compiled: { logic }, rule }: RuleOf): readonly string[] {
  const found = logic.rules.find((each) => each.rule === rule.name);
  const { certain, possible } = logic.applies;
  return observationsBehind(logic, [certain, possible, ...(found ? [found.certain, found.possible] : [])]);
}

function answerOf({ compiled, rule }: RuleOf): (box: Box) => Asked {
  const { protocol, logic, evaluator, applies } = compiled;
  const readers = compiled.rules.get(rule.name);
  return (box) => {
    const result = evaluator.run(boxToInputs(box, protocol, logic.inputs));
    if (!readers || readers.possible(result) === 0 || applies.possible(result) === 0) return 'no';
    return readers.certain(result) !== 0 && applies.certain(result) !== 0 ? 'yes' : 'open';
  };
}

const every = (answers: readonly Asked[]): Asked =>
  answers.includes('no') ? 'no' : answers.includes('open') ? 'open' : 'yes';

function cutsOf(both: readonly RuleOf[]): ReadonlyMap<string, readonly number[]> {
  const all = new Map<string, number[]>();
  for (const { compiled } of both)
    for (const [name, cuts] of cutPoints(compiled.protocol))
      all.set(name, [...(all.get(name) ?? []), ...cuts]);
  return new Map(
    [...all].map(([name, cuts]) => [name, [...new Set(cuts)].sort((left, right) => left - right)]),
  );
}
