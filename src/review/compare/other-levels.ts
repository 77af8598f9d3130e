import Fraction from 'fraction.js';
import { hasErrors } from '../../problems/problem.ts';
import type { Observation, Protocol } from '../../protocol/protocol.ts';
import { listed } from '../../protocol/words.ts';
import { documentToSeries } from '../../series/document-to-series.ts';
import { setVocabularyOf } from '../../series/set-reading.ts';
import { asOneProtocol } from '../as-one-protocol.ts';
import type { Box } from '../box.ts';
import { boxToGiven } from '../examples/box-to-given.ts';
import { setInWords } from '../set-in-words.ts';
import { answerOf } from './case-changes.ts';
import { directionOf, inOrder } from './changed-levels.ts';
import type { ChangedLevel, LevelByExample, OtherLevels, Witness } from './comparison.ts';
import type { ChangeWithSet } from './every-set.ts';
import { levelInWords } from './levels-in-words.ts';
import type { Working } from './working.ts';

/**
 * The changes of level that no region tells: of complete sets where the search for regions grew too large, and of sets in which something is
 * missing. Each with a set that the evaluator confirms. Null where that is too much to work out.
 */
export function otherLevels(working: Working, regions: readonly ChangedLevel[]): OtherLevels | null {
  const found = working.every?.levelChanges() ?? null;
  if (!found) return null;
  const protocol = asOneProtocol(
    working.sides.flatMap(({ members }) => members.map((member) => member.protocol)),
  );
  const told = new Set(regions.map(({ before, after }) => keyOf(before, after)));
  const [complete, incomplete] = [found.complete, found.incomplete].map((changes) =>
    changes.map((change) => byExample(change, working, protocol)),
  ) as [(LevelByExample | null)[], (LevelByExample | null)[]];
  const isThere = (each: LevelByExample | null): each is LevelByExample => each !== null;
  return {
    complete: complete
      .filter(isThere)
      .filter(({ before, after }) => !told.has(keyOf(before, after)))
      .sort(inOrder),
    incomplete: incomplete.filter(isThere).sort(inOrder),
    whole: found.open.length === 0 && [...complete, ...incomplete].every(isThere),
  };
}

const keyOf = (before: string, after: string): string => `${before} > ${after}`;

/** Null where the evaluator does not say the same of the set: then it is no example. */
function byExample(
  { from, to, box }: ChangeWithSet,
  { sides }: Working,
  protocol: Protocol,
): LevelByExample | null {
  const [before, after] = [levelInWords(from, sides[0].ladder), levelInWords(to, sides[1].ladder)];
  const witness = witnessIn(box, sides, protocol);
  if (witness?.before !== before || witness.after !== after) return null;
  return { before, after, direction: directionOf({ from, to }, sides), witness };
}

function witnessIn(box: Box, sides: Working['sides'], protocol: Protocol): Witness | null {
  const root = boxToGiven(box, protocol);
  const { series, problems } = documentToSeries({ file: '', text: '', root }, setVocabularyOf(protocol), {
    units: 'trade',
  });
  if (!series || hasErrors(problems)) return null;
  const [before, after] = sides.map((side) => levelInWords(answerOf(side, series).level, side.ladder));
  return {
    set: boxToJson(box, protocol),
    in_words: inWords(box, protocol),
    before: before ?? '',
    after: after ?? '',
    confirmed: true,
  };
}

/** As a set in JSON; what is missing is left out. */
function boxToJson({ ranges, choices, absent }: Box, { observations }: Protocol): Record<string, unknown> {
  const valueOf = ({ name, kind, stepsPerUnit, choices: all }: Observation): unknown => {
    if (kind === 'number') return new Fraction(ranges.get(name)?.[0] ?? 0).div(stepsPerUnit).valueOf();
    if (kind !== 'several') return choices.get(name)?.[0];
    return all.flatMap(({ choice }) => (choices.get(`${name}:${choice}`)?.[0] === 'yes' ? [choice] : []));
  };
  return Object.fromEntries(
    [...observations.values()].flatMap((observation) => {
      const how = absent?.get(observation.name);
      if (how === 'unobtainable') return [[observation.name, { unobtainable: true }]];
      return how ? [] : [[observation.name, valueOf(observation)]];
    }),
  );
}

/** The values, and what has none. */
function inWords(box: Box, protocol: Protocol): string {
  const lacks = (how: 'missing' | 'unobtainable'): string[] =>
    [...protocol.observations.values()].flatMap(({ name, title }) =>
      box.absent?.get(name) === how ? [title] : [],
    );
  const [missing, unobtainable] = [lacks('missing'), lacks('unobtainable')];
  const known = [...protocol.observations.keys()].filter((name) => !box.absent?.has(name));
  return [
    setInWords(box, known, protocol),
    ...(missing.length > 0 ? [`missing: ${listed(missing)}`] : []),
    ...(unobtainable.length > 0 ? [`could not be obtained: ${listed(unobtainable)}`] : []),
  ].join('; ');
}
