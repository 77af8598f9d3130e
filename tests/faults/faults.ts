/** A fault that is put into the evaluator on purpose, to see that a test notices. */
export interface Fault {
  /** What would be wrong, in a few words. */
  readonly name: string;
  /** Below src/. */
  readonly file: string;
  /** Stands exactly once in the file. */
  readonly find: string;
  readonly put: string;
}

const logic = (file: string, name: string, find: string, put: string): Fault => ({
  name,
  file: `logic/${file}`,
  find,
  put,
});
const series = (file: string, name: string, find: string, put: string): Fault => ({
  name,
  file: `series/${file}`,
  find,
  put,
});
const other = (file: string, name: string, find: string, put: string): Fault => ({ name, file, find, put });

/** Every fault. Each must turn a test red. */
export const faults: readonly Fault[] = [
  // Comparisons
  logic(
    'conditions.ts',
    'below counts the value itself',
    "comparison.how === 'above' || comparison.how === 'below'",
    "comparison.how === 'above'",
  ),
  logic(
    'conditions.ts',
    'above counts the value itself',
    "comparison.how === 'above' || comparison.how === 'below'",
    "comparison.how === 'below'",
  ),
  logic(
    'conditions.ts',
    'at least is read as at most',
    "comparison.how === 'above' || comparison.how === 'at_least'",
    "comparison.how === 'above'",
  ),
  logic(
    'arithmetic.ts',
    'a threshold is one step too low',
    'const least = strict ? floor(edge) + 1n : -floor(edge.neg());',
    'const least = strict ? floor(edge) : -floor(edge.neg());',
  ),
  logic(
    'arithmetic.ts',
    'certain is read at the high end',
    'certain: lessOrSame(Number(least), node.low)',
    'certain: lessOrSame(Number(least), node.high)',
  ),
  logic(
    'arithmetic.ts',
    'possible is read at the low end',
    'possible: lessOrSame(Number(least), node.high)',
    'possible: lessOrSame(Number(least), node.low)',
  ),
  logic(
    'literal.ts',
    'a number in another unit is not converted',
    "if (!unit || quantity === 'plain') return constant(value);",
    'if (value) return constant(value);',
  ),

  // Conditions
  logic(
    'conditions.ts',
    'all is read as any',
    'return named(condition, eachRail(of(condition.of), and), context);',
    'return named(condition, eachRail(of(condition.of), or), context);',
  ),
  logic(
    'conditions.ts',
    'none swaps certain and possible',
    '    certain: not(rails.possible),',
    '    certain: not(rails.certain),',
  ),
  logic(
    'conditions.ts',
    'at least of asks for one more',
    'lessOrSame(condition.count, sum(',
    'lessOrSame(condition.count + 1, sum(',
  ),
  logic(
    'conditions.ts',
    'a choice that is still open counts as certain',
    ': not(or(...others.map(may)));',
    ': possible;',
  ),
  logic(
    'conditions.ts',
    'a number without a value counts as not there',
    '    possible: or(not(sure), some),',
    '    possible: and(sure, some),',
  ),
  logic(
    'conditions.ts',
    'a number without a value counts as certain',
    '  const certain = and(sure, all);',
    '  const certain = all;',
  ),
  logic(
    'conditions.ts',
    'what only helps raises what it could be',
    '    could: and(maybe, some, or(not(stuck), certain)),',
    '    could: and(maybe, some),',
  ),
  logic(
    'conditions.ts',
    'what is needed never raises what it could be',
    '    could: and(maybe, some, or(not(stuck), certain)),',
    '    could: certain,',
  ),
  logic(
    'conditions.ts',
    'known is read the wrong way round',
    'comparison.is ? flag : not(flag)',
    'comparison.is ? not(flag) : flag',
  ),

  // Rules and levels
  logic(
    'rules.ts',
    'an exception is taken when nobody has answered it',
    "define('counts', and(when.counts, not(takenBack)))",
    "define('counts', and(when.counts, not(mayBeTakenBack)))",
  ),
  logic(
    'rules.ts',
    'an open exception does not hold a rule back',
    "define('certain', and(when.certain, not(mayBeTakenBack)))",
    "define('certain', and(when.certain, not(takenBack)))",
  ),
  logic(
    'rules.ts',
    'a certain exception is ignored',
    "const possible = define('possible', and(when.possible, not(takenBack)));",
    "const possible = define('possible', when.possible);",
  ),
  logic(
    'rules.ts',
    'a blind rule reassures',
    'and(or(own, blind(rule.when)), not(possible))',
    'and(own, not(possible))',
  ),
  logic(
    'levels.ts',
    'an explanation lowers a level when it is merely possible',
    'either(rule.logic.counts, level(rule, rule.logic.explained.certain), none),',
    'either(rule.logic.counts, level(rule, rule.logic.explained.possible), none),',
  ),
  logic(
    'levels.ts',
    'the lowest level is taken instead of the highest',
    'writer.define(`level:${name}`, highest([none, ...calling.map(of)]))',
    'writer.define(`level:${name}`, calling.length > 1 ? { min: calling.map(of) } : highest([none, ...calling.map(of)]))',
  ),
  other(
    'outcome/answers.ts',
    'the lowest level is an answer before it is settled',
    'settled ? 0 : null',
    '0',
  ),
  other(
    'outcome/answers.ts',
    'settled although something could raise it',
    '&& floor === couldBe;',
    '&& floor <= couldBe;',
  ),
  other(
    'outcome/answers.ts',
    'settled although nobody knows whether it applies',
    'const settled = applies.certain(wide) !== 0 && floor',
    'const settled = floor',
  ),
  other(
    'outcome/answers.ts',
    'a level for a patient whom the protocol is not for',
    "if (applies.possible(wide) === 0) return 'no';",
    '',
  ),

  // Measures
  logic('measures/formula.ts', 'minus is plus', "const sign = kind === 'minus' ? -1 : 1;", 'const sign = 1;'),
  logic(
    'linear.ts',
    'what is shared does not cancel',
    'const total = (terms.get(node) ?? new Fraction(0)).add(factor);',
    'const total = factor;',
  ),
  logic(
    'arithmetic.ts',
    'a factor below zero does not swap the ends',
    'sum(terms.map(([node, by]) => times(Number(by), by > 0n === low ? node.low : node.high)));',
    'sum(terms.map(([node, by]) => times(Number(by), low ? node.low : node.high)));',
  ),
  logic(
    'measures/curve.ts',
    'a curve runs on beyond its points',
    'sure = and(of.presence.sure, inside(at.low, at.high));',
    'sure = of.presence.sure;',
  ),
  logic(
    'measures/curve.ts',
    'a curve is read with the wrong slope',
    'slope: wholeOf(slope, scale),',
    'slope: wholeOf(slope, scale) + 1n,',
  ),
  logic(
    'measures/score.ts',
    'only the ends of a band are read',
    'return and(reached.possible, here.possible);',
    'return and(reached.possible, here.certain);',
  ),
  logic(
    'measures/score.ts',
    'a band without its edge',
    'context.arithmetic.atLeastZero(gap, !band.included,',
    'context.arithmetic.atLeastZero(gap, band.included,',
  ),
  logic(
    'measures/score.ts',
    'several: low and high swapped',
    "worth(choice) > 0 === low ? 'sure' : 'may'",
    "worth(choice) > 0 === low ? 'may' : 'sure'",
  ),
  logic(
    'measures/choose.ts',
    'a later entry is taken before an earlier one',
    'and(free, rails.possible));',
    'rails.possible);',
  ),
  logic(
    'measures/choose.ts',
    'first known takes the last',
    'const chosen = and(free, form.presence.known);',
    'const chosen = form.presence.known;',
  ),
  other(
    'targets/evaluator/operations.ts',
    'the lowest of several is the highest',
    'if (value < least) least = value;',
    'if (value > least) least = value;',
  ),

  // Time
  series(
    'resolve.ts',
    'a stale value is used',
    'if (!source || !present || time - source.time > read.goodFor) return null;',
    'if (!source || !present) return null;',
  ),
  series(
    'resolve.ts',
    'a value exactly as old as it may be is not used',
    'time - source.time > read.goodFor) return null;',
    'time - source.time >= read.goodFor) return null;',
  ),
  series(
    'resolve.ts',
    'a diastolic of an earlier set beside a systolic of this one',
    'if (read.group !== -1 && saysAnything(present, read.group, reader)) return null;',
    '',
  ),
  series(
    'write-inputs.ts',
    'an earlier value settles as a new one does',
    "state === 'earlier' ? null : value",
    'value',
  ),
  series(
    'look-back-members.ts',
    'a set exactly as old as the window is in it',
    'if (set.time <= after ||',
    'if (set.time < after ||',
  ),
  series(
    'look-back-members.ts',
    'the present set is never left out',
    '(lookBack.leftOut && set === asked.present)',
    'false',
  ),
  series(
    'look-backs.ts',
    'what never happened was just now',
    'low: latest === null ? never : time - latest,',
    'low: latest === null ? 0 : time - latest,',
  ),
  series(
    'look-backs.ts',
    'a look back does not wait for a need that its condition reads',
    'inputs[places.open] = isOpenNow(lookBack, asked) ? 1 : 0;',
    'inputs[places.open] = 0;',
  ),
  series(
    'look-backs.ts',
    'one value is enough for a change',
    "const needed = kind === 'change' ? 2 : 1;",
    'const needed = 1;',
  ),
  series(
    'held.ts',
    'a gap does not break a run',
    'if (longestGap !== null && next - set.time > longestGap) break;',
    '',
  ),
  series(
    'standing.ts',
    'a fact holds at its end',
    '(until === null || time < until)',
    '(until === null || time <= until)',
  ),
  series(
    'check-set.ts',
    'a diastolic as high as the systolic is believed',
    'mayBeEqual ? left > right : left >= right',
    'left > right',
  ),
  series(
    'outside.ts',
    'the last possible value is refused',
    'end.steps <= span.high',
    'end.steps < span.high',
  ),
  series(
    'check-slot.ts',
    'beyond the device is at its bound',
    "kind === 'above_device' ? bound + 1 : null",
    "kind === 'above_device' ? bound : null",
  ),
  // Built targets
  other(
    'targets/typescript/graph.ts',
    'module: at most does not count the value itself',
    "(operator === '<=' ? 1 : 0)",
    '0',
  ),
  other(
    'targets/typescript/cases.ts',
    'module: a sum turned round keeps its cut',
    'Math.floor((cut - constant) / by) + 1',
    'Math.floor((cut - constant) / by)',
  ),
  other(
    'targets/typescript/row-conditions.ts',
    'module: a complete set never contradicts itself',
    'shift - (mayBeEqual ? 0 : 1)',
    'shift',
  ),
  other(
    'targets/typescript/write-calls.ts',
    'module: what is undecided is not met',
    '(wide[word + 4] as number) & ~met;',
    '0;',
  ),
  other(
    'targets/typescript/runtime.ts',
    'module: an exact middle between two steps is rounded as it falls',
    'whole : exactSteps(value, by, over);',
    'whole : whole;',
  ),
  other('targets/typescript/code.ts', 'module: a text may end its comment', ".replaceAll('*/', '* /')", ''),
  other(
    'targets/json-logic/reading.ts',
    'JSON Logic: a refused value counts as not taken of a fact that is assumed',
    "isAssumed ? either(given(name, 'refused'), open, missing) : open",
    'isAssumed ? missing : open',
  ),
  other(
    'targets/json-logic/reading.ts',
    'JSON Logic: age bands begin one step late',
    'lessOrSame(begins, age.high)',
    'less(begins, age.high)',
  ),
  other(
    'targets/json-logic/reader.mjs',
    'JSON Logic: a fault of technique leaves nothing open',
    '...Object.fromEntries(doubted) }',
    '}',
  ),
  other(
    'targets/typescript/write-rows.ts',
    'module: a complete set with a fault of technique goes straight through',
    'also.length === 0',
    'also.length >= 0',
  ),
  other(
    'targets/typescript/write-rows.ts',
    'module: what is missing in a row lies at its lowest',
    'const atAnyAge = { low, high }[end];',
    'const atAnyAge = { low, high: low }[end];',
  ),
  other(
    'targets/typescript/answers-over.ts',
    'module: a choice that is missing in a row is none of them',
    'assumed === null || assumed === place',
    'assumed === place',
  ),
  other(
    'targets/typescript/write-faults.ts',
    'module: a fault of technique is told of and makes nothing wider',
    'writeBounds(bounds, limits);',
    'void limits;',
  ),
  other(
    'targets/smt-lib/smt.ts',
    'SMT-LIB: a name may end its symbol',
    '? letter : escaped(letter),',
    '? letter : letter,',
  ),
  other(
    'targets/smt-lib/operators.ts',
    'SMT-LIB: the highest is the lowest',
    '(ite (<= a b) b a))`;',
    '(ite (<= a b) a b))`;',
  ),
  other(
    'targets/smt-lib/contradiction-facts.ts',
    'SMT-LIB: a contradictory set is a set',
    '? smt`(<= ${left} ${apart})` : smt`(< ${left} ${apart})`;',
    '? smt`(<= ${left} ${apart})` : smt`(<= ${left} ${apart})`;',
  ),
  other(
    'targets/smt-lib/observation-facts.ts',
    'SMT-LIB: what is missing has one value',
    'const isNothing = [...whole, ...isLacking(observation, true)];',
    'const isNothing = [...given(observation, protocol, sets), ...isLacking(observation, true)];',
  ),
  other(
    'targets/smt-lib/age-spans.ts',
    'SMT-LIB: an age band takes in the age at which it ends',
    '[smt`(< ${end} ${to})`]',
    '[smt`(<= ${end} ${to})`]',
  ),
  other(
    'targets/smt-lib/look-back-facts.ts',
    'SMT-LIB: what happened at the beginning of a window counts',
    '(< ${name} ${how.over})) (= ${name} ${never}))`;',
    '(<= ${name} ${how.over})) (= ${name} ${never}))`;',
  ),
  other(
    'targets/smt-lib/spread.ts',
    'SMT-LIB: the highest is at least a number when all are',
    '{ holds: (value) => compare(left, value), highest: or, lowest: and }',
    '{ holds: (value) => compare(left, value), highest: and, lowest: or }',
  ),

  // Technique
  series(
    'write-inputs.ts',
    'a fault of technique lowers a level',
    'return value && asRead(value);',
    'return value;',
  ),
  series(
    'write-inputs.ts',
    'a fault of technique makes no range',
    "if (wide) return state === 'earlier' ? null : value;",
    "if (wide && state === 'earlier') return null;",
  ),
];
