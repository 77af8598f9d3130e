import type { Diagram } from '../../diagrams/diagrams.ts';
import { LogicDiagrams } from '../../diagrams/logic-to-diagrams.ts';
import type { Space } from '../../diagrams/space.ts';
import type { Requirement } from '../../../protocol/requirements/requirement.ts';
import { whereOf, type Subject } from '../subject.ts';
import { FreeLookBacks, type Free } from './free-look-backs.ts';
import { oneSpace } from './one-space.ts';

/** One rule of one protocol that calls for a level. */
export interface Calling {
  /** The highest level that it calls for. */
  readonly level: number;
  /** The level that it calls for while it is explained. */
  readonly explained: number;
  /** Whether it calls for this level or a higher one, by what counts. */
  readonly calls: (level: number) => Diagram;
  /** Whether it could, whatever is missing. */
  readonly could: (level: number) => Diagram;
}

/** What requirements ask of a subject, as functions of the set. */
export interface Whole {
  readonly space: Space;
  readonly free: () => readonly Free[];
  readonly applies: () => Diagram;
  readonly mayApply: () => readonly Diagram[];
  readonly callings: readonly Calling[];
  readonly where: (requirement: Requirement) => Diagram;
  readonly met: (rule: string) => Diagram;
  /** Each way of advising something. */
  readonly advises: () => readonly Diagram[];
}

export function wholeOf(subject: Subject, mayLack: ReadonlySet<string>): Whole {
  const space = oneSpace(subject, mayLack);
  const { store } = space;
  const all = subject.parts.map((part) => {
    const earlier = new FreeLookBacks(space, part, mayLack);
    const diagrams = new LogicDiagrams(space, part.logic, part.protocol, earlier);
    return { part, earlier, of: diagrams.of.bind(diagrams) };
  });
  const reading = all.filter(({ part }) => part.reads === 'rules');
  return {
    space,
    free: () => all.flatMap(({ earlier }) => [...earlier.found.values()]),
    applies: () => store.or(...reading.map(({ part, of }) => of(part.logic.applies.certain))),
    mayApply: () => reading.map(({ part, of }) => of(part.logic.applies.possible)),
    callings: reading.flatMap((each) => callingsOf(each, space)),
    where: (requirement) => {
      const found = all.flatMap(({ part, of }) =>
        part.logic.partitions
          .filter(({ name }) => name === whereOf(requirement))
          .flatMap(({ of: parts }) => parts.map(({ certain }) => of(certain))),
      );
      return store.and(...found);
    },
    met: (rule) =>
      store.or(
        ...reading.flatMap(({ part, of }) =>
          part.logic.rules.filter((each) => each.rule === rule).map(({ certain }) => of(certain)),
        ),
      ),
    advises: () => reading.flatMap((each) => advising(each, space)),
  };
}

interface Reading {
  readonly part: Subject['parts'][number];
  readonly of: LogicDiagrams['of'];
}

function callingsOf({ part: { protocol, logic }, of }: Reading, { store }: Space): Calling[] {
  return protocol.rules.flatMap((rule, index): Calling[] => {
    const found = logic.rules[index];
    const level = rule.level;
    if (!found || level === null) return [];
    const explained = rule.explainedBy?.level ?? level;
    const high = (least: number): Diagram => {
      if (level >= least && explained >= least) return store.yes;
      const isExplained = of(found.explained.certain);
      return level >= least ? store.not(isExplained) : explained >= least ? isExplained : store.no;
    };
    const mayApply = (): Diagram => of(logic.applies.possible);
    return [
      {
        level: Math.max(level, explained),
        explained,
        calls: (least) => store.and(of(found.counts), high(least), mayApply()),
        could: (least) => store.and(store.or(of(found.could), of(found.counts)), high(least), mayApply()),
      },
    ];
  });
}

function advising({ part: { protocol, logic }, of }: Reading, { store }: Space): Diagram[] {
  return protocol.rules.flatMap(({ says, ask, do: actions }, index) => {
    const found = logic.rules[index];
    if (!found || (says === null && ask.length === 0 && actions.length === 0)) return [];
    return [store.and(store.or(of(found.certain), of(found.counts)), of(logic.applies.possible))];
  });
}
