import type * as File from '../shape/generated/types.ts';
import type { Path } from '../problems/place.ts';
import type { Action, Rule } from './protocol.ts';
import { readCondition } from './read-condition.ts';
import type { Reading } from './reading.ts';
import { nearestOf } from './names.ts';
import { plainWords } from './words.ts';

/** Reads one rule; null when its `when` could not be read. */
export function readRule(file: File.Rule, path: Path, reading: Reading): Rule | null {
  const when = readCondition(file.when, [...path, 'when'], reading);
  const level = readLevel(file.level, [...path, 'level'], reading);
  const unless = readException(file.unless, [...path, 'unless'], reading);
  const explainedBy = readExplanation(file.explained_by, [...path, 'explained_by'], reading);
  const blind = file.not_reliable_when;
  const notReliableWhen = blind ? readCondition(blind, [...path, 'not_reliable_when'], reading) : null;
  checkSources(file.source ?? [], [...path, 'source'], reading);
  if (!when) return null;
  return {
    name: file.rule,
    title: file.title ?? plainWords(file.rule),
    from: reading.names.basis?.from.get(file.rule) ?? null,
    when,
    unless,
    explainedBy,
    notReliableWhen,
    level,
    says: file.says ?? null,
    because: file.because ?? null,
    ask: file.ask ?? [],
    do: (file.do ?? []).map(readAction),
    sources: file.source ?? [],
    path,
  };
}

/** Something to do, as it is written. */
export const readAction = ({ id, text, under, excludes }: File.Action): Action => ({
  id,
  text,
  under: under ?? null,
  excludes: excludes ?? [],
});

function readException(file: File.Exception | undefined, path: Path, reading: Reading): Rule['unless'] {
  const when = file && readCondition(file.when, [...path, 'when'], reading);
  return when ? { when, says: file.says ?? null } : null;
}

function readExplanation(
  file: File.Explanation | undefined,
  path: Path,
  reading: Reading,
): Rule['explainedBy'] {
  const when = file && readCondition(file.when, [...path, 'when'], reading);
  const level = readLevel(file?.level, [...path, 'level'], reading);
  return when ? { when, says: file.says, level } : null;
}

/** A level's place on the ladder; null, and reported, when there is no such level. */
export function readLevel(
  written: string | undefined,
  path: Path,
  { names, report }: Reading,
): number | null {
  const { ladder } = names;
  if (written === undefined || !ladder) return null;
  const index = ladder.levels.findIndex((level) => level.name === written);
  if (index >= 0) return index;
  const known = ladder.levels.map((level) => level.name);
  report(
    'unknown_level',
    path,
    { name: written, levels: known },
    { nearMiss: () => nearestOf(written, known) },
  );
  return null;
}

/** Reports each source that the file does not declare. */
export function checkSources(written: readonly string[], path: Path, { names, report }: Reading): void {
  written.forEach((name, index) => {
    if (names.sources.has(name)) return;
    report('unknown_source', [...path, index], { name }, { nearMiss: () => nearestOf(name, names.sources) });
  });
}
