import { TooManyPieces, type Diagram } from '../../diagrams/diagrams.ts';
import type { Asks } from '../../../protocol/requirements/requirement.ts';
import type { Setting } from '../question.ts';
import { blankOf, lackingWhere } from '../questions-of.ts';
import type { Subject } from '../subject.ts';
import { wholeOf, type Whole } from './calls.ts';
import { holdsNowhere } from './holds-nowhere.ts';
import { nothingHides } from './nothing-hides.ts';
import { secondSet } from './second-set.ts';

/** What was made for a subject, by what may lack. */
const made = new WeakMap<Subject, Map<string, Whole>>();

function wholeFor(subject: Subject, mayLack: ReadonlySet<string>): Whole {
  const all = made.get(subject) ?? new Map<string, Whole>();
  made.set(subject, all);
  const key = [...mayLack].sort().join();
  const known = all.get(key) ?? wholeOf(subject, mayLack);
  all.set(key, known);
  return known;
}

/**
 * Whether it is sure that no set, or no pair of sets, breaks a requirement: asked of all sets at once. Earlier sets may say whatever they
 * like. False where that does not show it, or where the question is too large to be held.
 */
export function noneBreaks(setting: Setting): boolean {
  try {
    return asked(setting);
  } catch (error) {
    if (error instanceof TooManyPieces) return false;
    throw error;
  }
}

function asked({ subject, requirement }: Setting): boolean {
  const { asks } = requirement;
  const mayLack = asks.kind === 'nothing_hides' ? blankOf(subject, asks) : lackingWhere(requirement);
  if (asks.kind === 'fault_never_lowers') return false;
  const whole = wholeFor(subject, mayLack);
  const about = whole.space.store.and(whole.applies(), whole.where(requirement));
  switch (asks.kind) {
    case 'nothing_hides':
      return nothingHides(whole, about, mayLack);
    case 'getting_worse_never_lowers':
      return !mayLack.has(asks.observation) && neverLower(whole, about, asks);
    case 'no_level': {
      const where = whole.where(requirement);
      return whole.mayApply().every((each) => holdsNowhere(whole, [where, each]));
    }
    default:
      return ofSets(whole, about, asks);
  }
}

type OfSets = Exclude<
  Asks,
  { kind: 'getting_worse_never_lowers' | 'fault_never_lowers' | 'nothing_hides' | 'no_level' }
>;

/** Each truth that has to hold somewhere for a set to break it is asked by itself, with all that must hold beside it. */
function ofSets(whole: Whole, about: Diagram, asks: OfSets): boolean {
  const { store } = whole.space;
  const none = (...truths: readonly Diagram[]): boolean => holdsNowhere(whole, [about, ...truths]);
  const calling = (level: number): Whole['callings'] => whole.callings.filter((each) => each.level >= level);
  switch (asks.kind) {
    case 'level_at_least':
      return (
        asks.level === 0 || none(...calling(asks.level).map(({ calls }) => store.not(calls(asks.level))))
      );
    case 'level_at_most':
      return calling(asks.level + 1).every(({ could }) => none(could(asks.level + 1)));
    case 'rule_met':
      return none(store.not(whole.met(asks.rule)));
    case 'never_together':
      return none(...asks.rules.map(whole.met));
    case 'always_some_advice':
      return none(...whole.advises().map((each) => store.not(each)));
  }
}

/** For each rule that calls for a level in the first set: some rule does in the second. Its own is asked first. */
function neverLower(
  whole: Whole,
  about: Diagram,
  asks: Extract<Asks, { kind: 'getting_worse_never_lowers' }>,
): boolean {
  const { store } = whole.space;
  const both = [about, ...whole.callings.flatMap(({ calls, level }) => [calls(level)])];
  // What looks back must be known before it is put in: so everything is made first.
  if (both.length === 0) return true;
  const second = secondSet(whole, asks);
  if (!second) return false;
  const valid = whole.space.valid.map(second.of);
  return whole.callings.every((calling) => {
    const levels = [...new Set([calling.level, calling.explained])].filter((level) => level > 0);
    return levels.every((level) => {
      const others = whole.callings.filter((each) => each !== calling && each.level >= level);
      const calls = [calling, ...others].map((each) => each.calls(level));
      const first = calls[0] as Diagram;
      return holdsNowhere(
        whole,
        [second.pairs, about, second.of(about), first, ...calls.map((each) => store.not(second.of(each)))],
        valid,
      );
    });
  });
}
