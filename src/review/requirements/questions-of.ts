import { comparisonsIn, observationsOfCondition } from '../../protocol/walk.ts';
import type { Asks, Requirement, Way } from '../../protocol/requirements/requirement.ts';
import type { Lacks } from './bind.ts';
import { observationsBehindLookBack } from './bind.ts';
import { narrowed, wholeBox } from './box.ts';
import type { Second } from './enter.ts';
import { exceptionsAlone } from './exceptions-alone.ts';
import { neverBelow } from './never-below.ts';
import { aboutPairs, aboutSets, drawn, freshSpace, type Question, type Setting } from './question.ts';
import { hasValueName, lackName, lookBackName, type Space, type Variable } from './space.ts';
import type { Subject } from './subject.ts';

/** The question that a requirement asks. */
export function questionOf(setting: Setting): Question {
  const { asks } = setting.requirement;
  switch (asks.kind) {
    case 'getting_worse_never_lowers':
      return gettingWorse(setting, asks);
    case 'fault_never_lowers':
      return faults(setting);
    case 'nothing_hides':
      return hiding(setting, blankOf(setting.subject, asks));
    default:
      return ofSets(setting, asks);
  }
}

type OfSets = Exclude<Asks, { kind: 'getting_worse_never_lowers' | 'fault_never_lowers' | 'nothing_hides' }>;

function ofSets(setting: Setting, asks: OfSets): Question {
  const space = freshSpace(setting);
  const both = lackingWhere(setting.requirement);
  const lacks: Lacks = { both, second: new Set() };
  for (const name of both) space.add(lackOf(name, 2));
  const made = drawn(setting.subject, space, lacks);
  const { program, terms } = made;
  const below = (left: number, right: number): number =>
    program.write({ '<': [{ var: 'l' }, { var: 'r' }] }, (name) => (name === 'l' ? left : right));
  const broken = (): number => {
    switch (asks.kind) {
      case 'level_at_least':
        return below(terms.raised, program.constant(asks.level));
      case 'level_at_most':
        return below(program.constant(asks.level), terms.could);
      case 'rule_met':
        return program.not(terms.met(asks.rule));
      case 'never_together':
        return program.min(asks.rules.map(terms.met));
      case 'no_level':
        return terms.mayApply;
      case 'always_some_advice':
        return program.not(terms.advises());
    }
  };
  return aboutSets(made, setting, broken());
}

/** The observations of which a condition asks whether they are known, or could not be obtained: of these sets may lack them. */
export function lackingWhere({ where }: Requirement): Set<string> {
  if (!where) return new Set();
  const facts = [...comparisonsIn(where)].filter(({ kind }) => kind === 'known' || kind === 'unobtainable');
  return new Set(facts.flatMap((each) => ('observation' in each ? [each.observation] : [])));
}

/** Zero: it has a value. One: it was not taken. Two: it was tried and not obtained. */
const lackOf = (name: string, high: number): Variable => ({
  name: lackName(name),
  of: 'lack',
  owner: name,
  choices: [],
  low: 0,
  high,
  ordinary: 0,
  cuts: [],
});

function gettingWorse(
  setting: Setting,
  { observation, way }: Extract<Asks, { kind: 'getting_worse_never_lowers' }>,
): Question {
  const space = freshSpace(setting);
  const moved = space.at(observation);
  if ('through' in way) reorder(space, moved, way.through);
  const both = lackingWhere(setting.requirement);
  both.delete(observation);
  for (const name of both) space.add(lackOf(name, 2));
  const made = drawn(setting.subject, space, { both, second: new Set() });
  const by = 'going' in way && way.going === 'down' ? -1 : 1;
  const seconds = new Map<number, Second>([[moved, { kind: 'moved', by }]]);
  followed(setting.subject, space, observation, by, seconds);
  const question = aboutPairs(made, setting, seconds);
  const [low, high] = firstValues(way, space.variables[moved] as Variable);
  return { ...question, start: narrowed(question.start, moved, low, high) };
}

/** The values from which there is a worse one next to it. */
function firstValues(way: Way, { low }: Variable): readonly [number, number] {
  if ('through' in way) return [0, way.through.length - 2];
  return way.going === 'up' ? [way.low, way.high - 1] : [Math.max(low, way.low) + 1, way.high];
}

/** The choices in the order in which they get worse; those that are not named come after, and are left out. */
function reorder(space: Space, place: number, through: readonly string[]): void {
  const variable = space.variables[place] as Variable;
  const rest = variable.choices.filter((each) => !through.includes(each));
  const usual = variable.ordinary === null ? null : (variable.choices[variable.ordinary] as string);
  const choices = [...through, ...rest];
  space.variables[place] = { ...variable, choices, ordinary: usual === null ? null : choices.indexOf(usual) };
}

/** Look backs that read what moves move with it, or become whatever they can be. */
function followed(
  subject: Subject,
  space: Space,
  observation: string,
  by: number,
  seconds: Map<number, Second>,
): void {
  for (const { protocol } of subject.parts) {
    for (const { name, how } of protocol.measures.values()) {
      if (!('over' in how) || !observationsBehindLookBack(how).includes(observation)) continue;
      const [value, has] = [space.at(lookBackName(name)), space.find(hasValueName(name))];
      const simple = how.observation === observation && how.where === null && how.kind !== 'held';
      const counts = how.kind === 'count' || how.kind === 'minutes_since';
      const isNumber = subject.observations.get(observation)?.kind === 'number';
      if (simple && isNumber && (counts || how.presentSet === 'left_out')) continue;
      seconds.set(value, simple && isNumber ? { kind: 'drifts', by } : { kind: 'any' });
      if (has !== null && !simple) seconds.set(has, { kind: 'any' });
    }
  }
}

/** Of two sets that differ in what tells of faults, one without any and one with some. */
function faults(setting: Setting): Question {
  const space = freshSpace(setting);
  const { parts } = setting.subject;
  const told = new Set(
    parts.flatMap(({ protocol }) => protocol.faults.flatMap(({ when }) => observationsOfCondition(when))),
  );
  const seconds = new Map<number, Second>();
  for (const [place, variable] of Array.from(space.variables.entries())) {
    if (variable.of === 'look_back' || variable.of === 'has_value' || !told.has(variable.owner)) continue;
    seconds.set(place, { kind: 'as', variable: space.add({ ...variable, name: `second ${variable.name}` }) });
  }
  for (const name of told) followed(setting.subject, space, name, 0, seconds);
  const made = drawn(setting.subject, space, { both: new Set(), second: new Set() });
  const question = aboutPairs(made, setting, seconds);
  const { program, terms } = made;
  const fault = terms.anyFault();
  return {
    ...question,
    about: {
      first: program.min([question.about.first, program.not(fault)]),
      second: program.min([question.about.second, fault]),
    },
  };
}

/** The observations that may be left blank. */
export function blankOf(
  { parts, openLimits }: Subject,
  { blank, except }: Extract<Asks, { kind: 'nothing_hides' }>,
): ReadonlySet<string> {
  const all = parts.filter(({ reads }) => reads === 'rules').map(({ protocol }) => protocol);
  const needed = all.flatMap(({ observations }) =>
    [...observations.values()].filter(({ role, name }) => role !== 'helps' && !openLimits.has(name)),
  );
  const usual = [...needed.map(({ name }) => name), ...exceptionsAlone(all)];
  return new Set((blank ?? usual).filter((name) => !except.includes(name)));
}

/** Of two sets of which the second lacks some of these. */
export function hiding(setting: Setting, blank: ReadonlySet<string>): Question {
  const { subject, requirement } = setting;
  const space = freshSpace(setting);
  const seconds = new Map<number, Second>();
  for (const name of blank) seconds.set(space.add(lackOf(name, 1)), { kind: 'only_here' });
  const made = drawn(subject, space, { both: new Set(), second: blank });
  const { program, terms } = made;
  return {
    space,
    program,
    start: wholeBox(space),
    seconds,
    whom: terms.applies,
    about: { first: program.min([terms.applies, terms.where(requirement)]), second: program.constant(1) },
    breaks: {
      kind: 'hides',
      raised: terms.raised,
      could: terms.could,
      alone: neverBelow(subject) ? terms.couldAlone : null,
      by: 1,
    },
  };
}
