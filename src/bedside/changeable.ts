import { answersOf, levelOf, type LevelAnswer } from '../outcome/answers.ts';
import type { Compiled } from '../outcome/compile.ts';
import { cutsOf } from '../outcome/pieces.ts';
import type { Operand, Protocol } from '../protocol/protocol.ts';
import { comparisonsIn, conditionsOf, operandsOfMeasure } from '../protocol/walk.ts';
import { seriesToBounds } from '../series/series-to-bounds.ts';
import type { Series } from '../series/series.ts';
import { mergeLevels } from '../ward/merge-levels.ts';
import type { Ward } from '../ward/ward.ts';
import type { Changeable } from './would-change.ts';

/** What is asked, with its level as it is; the level is null where it is not for this patient. */
export interface Standing {
  readonly now: LevelAnswer | null;
  readonly asked: Changeable;
}

/** A protocol and a series, to be asked what would change. */
export function changeableBy(compiled: Compiled, series: Series): Standing {
  const { protocol } = compiled;
  const bounds = seriesToBounds(protocol, series);
  const apart = readApart(protocol);
  const situation = { compiled, bounds, answers: answersOf(compiled, bounds) };
  return {
    now: levelOf(compiled, bounds),
    asked: {
      series,
      observations: [...protocol.observations.values()],
      present: (name) => bounds.facts.present.get(name),
      cuts: (observation) => (apart.has(observation.name) ? null : cutsOf(observation, situation)),
      levelWith: (other, name) => {
        const found = seriesToBounds(protocol, other);
        return found.facts.present.get(name)?.state === 'given' ? levelOf(compiled, found) : 'refused';
      },
    },
  };
}

/** All protocols of a ward as one: the level is the one of all of them together. */
export function changeableByWard({ members }: Ward, series: Series): Standing {
  const each = members.map((compiled) => ({ compiled, ...changeableBy(compiled, series) }));
  const reading = (name: string): typeof each =>
    each.filter(({ compiled }) => compiled.protocol.observations.has(name));
  return {
    now: mergeLevels(each.map(({ now }) => now)),
    asked: {
      series,
      observations: [
        ...new Map(each.flatMap(({ compiled }) => [...compiled.protocol.observations])).values(),
      ],
      present: (name) => reading(name)[0]?.asked.present(name),
      cuts: (observation) => {
        const cuts = reading(observation.name).map(({ asked }) => asked.cuts(observation));
        return cuts.includes(null) ? null : [...new Set(cuts.flatMap((some) => some ?? []))];
      },
      levelWith: (other, name) => {
        const levels = reading(name).map(({ asked }) => asked.levelWith(other, name));
        if (levels.includes('refused')) return 'refused';
        const others = each
          .filter(({ compiled }) => !compiled.protocol.observations.has(name))
          .map(({ now }) => now);
        return mergeLevels([...levels.filter((level) => level !== 'refused'), ...others]);
      },
    },
  };
}

/** Observations that are read otherwise than by comparing them with numbers and limits: their answers may change at any step. */
function readApart(protocol: Protocol): ReadonlySet<string> {
  const measures = [...protocol.measures.values()]
    .map(({ how }) => how)
    .filter(({ kind }) => kind !== 'score');
  const compared = conditionsOf(protocol).flatMap((condition) =>
    [...comparisonsIn(condition)].flatMap((each): readonly Operand[] =>
      each.kind === 'compare' && each.to.kind !== 'number' && each.to.kind !== 'limit'
        ? [each.subject, each.to]
        : [],
    ),
  );
  const operands = [...measures.flatMap(operandsOfMeasure), ...compared];
  return new Set([
    ...protocol.contradictions.flatMap(({ lower, higher }) => [lower, higher]),
    ...operands.flatMap((each) => (each.kind === 'observation' ? [each.name] : [])),
    ...measures.flatMap((how) => ('over' in how && how.observation !== null ? [how.observation] : [])),
  ]);
}
