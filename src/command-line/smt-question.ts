import type { Compiled } from '../outcome/compile.ts';
import type { Logical } from '../logic/operators.ts';
import { nearMiss } from '../vocabulary/near-miss.ts';
import {
  levelCouldBe,
  levelIsAtLeast,
  metTogether,
  ruleIs,
  statesDiffer,
  type RuleState,
} from '../targets/smt-lib/answers.ts';

/** What `--ask` asks: a truth over the steps of the protocol, and the same in words. */
export interface AskedTruth {
  readonly holds: Logical;
  readonly says: string;
}

/** Why an option cannot be read, as a sentence without its full stop. */
export interface Unreadable {
  readonly why: string;
}

const forms =
  'set, rule:NAME, rule:NAME=STATE, level:NAME, level:NAME=could_be, together:NAME,NAME or differs:NAME,NAME';

/** Reads one of the forms; what is named must be there. */
export function readAsk(text: string, { logic, protocol }: Compiled): AskedTruth | Unreadable {
  if (text === 'set') return { holds: true, says: 'there is such a set at all' };
  const [, kind = '', rest = ''] = /^([a-z]+):(.*)$/s.exec(text) ?? [];
  const rules = protocol.rules.map(({ name }) => name);
  if (kind === 'rule') {
    const [name = '', state = 'met', ...more] = rest.split('=');
    if (!isState(state) || more.length > 0)
      return { why: `a rule is met, not_met or undecided, not "${[state, ...more].join('=')}"` };
    return (
      unnamed('rule', name, rules) ?? { holds: ruleIs(logic, name, state), says: `rule ${name} is ${state}` }
    );
  }
  if (kind === 'level') return readLevel(rest, { logic, protocol });
  if (kind === 'together' || kind === 'differs') {
    const [first = '', second = '', ...more] = rest.split(',');
    if (second === '' || more.length > 0) return { why: `${kind}: takes two rules, as in ${kind}:NAME,NAME` };
    const wrong = unnamed('rule', first, rules) ?? unnamed('rule', second, rules);
    if (wrong) return wrong;
    return kind === 'together'
      ? { holds: metTogether(logic, first, second), says: `rules ${first} and ${second} are both met` }
      : {
          holds: statesDiffer(logic, first, second),
          says: `rules ${first} and ${second} differ in their state`,
        };
  }
  return { why: `--ask takes ${forms}, not "${text}"` };
}

function readLevel(
  rest: string,
  { logic, protocol }: Pick<Compiled, 'logic' | 'protocol'>,
): AskedTruth | Unreadable {
  const [name = '', which = 'at_least', ...more] = rest.split('=');
  const levels = protocol.ladder.levels.map((level) => level.name);
  if (!['at_least', 'could_be'].includes(which) || more.length > 0)
    return { why: `of a level at_least or could_be can be asked, not "${[which, ...more].join('=')}"` };
  const wrong = unnamed('level', name, levels);
  if (wrong) return wrong;
  const ask = which === 'at_least' ? levelIsAtLeast : levelCouldBe;
  return {
    holds: ask(logic, levels.indexOf(name)),
    says: `the outcome says that ${which} is ${name} or higher`,
  };
}

const isState = (word: string): word is RuleState => ['met', 'not_met', 'undecided'].includes(word);

/** That a name is not there, with the near miss; null when it is. */
export function unnamed(what: string, name: string, names: readonly string[]): Unreadable | null {
  if (names.includes(name)) return null;
  const near = nearMiss(
    name,
    names.map((each) => ({ name: each })),
  );
  return { why: `there is no ${what} "${name}"${near === null ? '' : `; did you mean "${near}"?`}` };
}
