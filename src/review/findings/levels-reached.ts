import type { Rule } from '../../protocol/protocol.ts';
import { calledFor } from './answered.ts';
import type { Asking, Question } from './asking.ts';
import type { Found } from './finding.ts';
import { sentences } from './wording.ts';

/** Levels of the ladder that no set calls for. One that no rule names is told, and needs no answer: the file shows it. */
export function* levelsReached(asking: Asking): Generator<Found> {
  const { rules, ladder } = asking.compiled.protocol;
  for (const [level, { name }] of ladder.levels.entries()) {
    const calling = rules.filter((rule) => rule.level === level || rule.explainedBy?.level === level);
    const head = {
      kind: 'level_never_reached',
      name: `level ${name} is never reached`,
      path: ['ladder'],
    } as const;
    const sentence = sentences.level_never_reached(ladder.levels, level, calling);
    if (level > 0 && calling.length === 0) {
      yield { ...head, is: 'found', sentence, witnesses: [], needsAnswer: false };
      continue;
    }
    const is = firstThatHappens(
      level === 0 ? [settledLowest(rules)] : calling.map((rule) => calls(rule, level, rules)),
      asking,
    );
    if (is === 'no') yield { ...head, is: 'found', sentence, witnesses: [], needsAnswer: true };
    else if (is !== 'yes') yield { ...head, is: 'not_settled', because: is };
  }
}

function firstThatHappens(questions: readonly Question[], asking: Asking): ReturnType<Asking['happens']> {
  let all: ReturnType<Asking['happens']> = 'no';
  for (const question of questions) {
    const is = asking.happens(question);
    if (is === 'yes') return is;
    if (is !== 'no') all = is;
  }
  return all;
}

const calls = (rule: Rule, level: number, rules: readonly Rule[]): Question => ({
  holds: (of) => [of.mayApply(), of.calls(rule, level), ...of.noneAbove(level, rules)],
  confirms: (answers) => calledFor(answers) === level,
});

const settledLowest = (rules: readonly Rule[]): Question => ({
  holds: (of) => [of.surelyApplies(), ...of.noneAbove(0, rules), ...of.noneAbove(0, rules, 'could')],
  confirms: ({ level }) => level?.settled === true && level.atLeast === 0,
});
