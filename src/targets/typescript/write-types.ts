import { decimalOf } from './decimal-of.ts';
import { Code, code } from './code.ts';
import type { ModuleInputs, ModuleObservation } from './module-inputs.ts';

/** The types of a module: the set with units and ranges, and every id as a union. */
export function writeTypes({ protocol, observations, lookBacks }: ModuleInputs): Code {
  const union = (names: Iterable<string>): Code => {
    const all = [...names].map((name) => code`${name}`);
    return all.length === 0 ? code`never` : Code.joined(all, ' | ');
  };
  const changeable = [...protocol.limits.values()].filter(({ between }) => between !== null);
  return code`export type RuleId = ${union(protocol.rules.map(({ name }) => name))};
export type LevelId = ${union(protocol.ladder.levels.map(({ name }) => name))};
export type MeasureId = ${union(protocol.measures.keys())};
export type ObservationId = ${union(observations.map(({ entry }) => entry.name))};
export type State = 'met' | 'not_met' | 'undecided';

/** A number that is known only roughly; both ends may be the value. */
export interface Range {
  readonly low: number;
  readonly high: number;
}

/** Tried and not obtained, or declined: no value, and not the same as not taken. */
export type NoValue = { readonly unobtainable: true | string } | { readonly declined: true | string };

/** One set. Each observation is named, so that none is forgotten by a slip of the pen; what was not taken is null. */
export interface GivenSet {
${Code.joined(observations.map(property), '\n')}${
    lookBacks.length === 0
      ? code``
      : code`
  /** What the earlier sets say; null where they have no value. */
  readonly look_backs: LookBacks;`
  }
}
${Code.joined(
  [
    ...(lookBacks.length === 0 ? [] : [lookBackTypes({ protocol, lookBacks })]),
    code`
/** Limits that somebody has changed for this patient; each must lie inside what the protocol allows. */
export interface Limits {
${Code.joined(
  changeable.map(
    ({ name, title, unit, between, stepsPerUnit }) => code`  ${Code.comment(
      `${title}, in ${unit?.word ?? 'plain numbers'}, ${decimalOf(between?.[0] ?? 0, stepsPerUnit)} to ${decimalOf(between?.[1] ?? 0, stepsPerUnit)}.`,
    )}
  readonly ${Code.name(name)}?: number;`,
  ),
  '\n',
)}
}`,
  ],
  '\n',
)}`;
}

function property({ entry, choices, low, high }: ModuleObservation): Code {
  const about = entry.meaning === null ? [] : [entry.meaning];
  if (entry.kind === 'number') {
    const range = `${decimalOf(low, entry.stepsPerUnit)} to ${decimalOf(high, entry.stepsPerUnit)}`;
    const unit = entry.unit ? ` ${entry.unit.word}` : '';
    const step = `a step is ${decimalOf(1, entry.stepsPerUnit)}`;
    return code`  ${Code.comment(`${entry.title}: ${range}${unit}; ${step}.`, ...about)}
  readonly ${Code.name(entry.name)}: number | Range | NoValue | null;`;
  }
  const union = Code.joined(
    choices.map((choice) => code`${choice}`),
    ' | ',
  );
  const type = entry.kind === 'several' ? code`readonly (${union})[]` : union;
  return code`  ${Code.comment(`${entry.title}.`, ...about)}
  readonly ${Code.name(entry.name)}: ${type} | NoValue | null;`;
}

function lookBackTypes({ protocol, lookBacks }: Pick<ModuleInputs, 'protocol' | 'lookBacks'>): Code {
  const each = lookBacks.map(({ name, how }) => {
    const observation = protocol.observations.get(how.observation ?? '');
    const steps =
      how.kind === 'count'
        ? 'a count'
        : how.kind === 'minutes_since' || how.kind === 'held'
          ? 'milliseconds; 1e12 is never'
          : `steps of ${decimalOf(1, observation?.stepsPerUnit ?? null)} ${observation?.unit?.word ?? ''}`.trim();
    const title = protocol.measures.get(name)?.title ?? name;
    return code`  ${Code.comment(`${title}: ${steps}.`)}
  readonly ${Code.name(name)}: number | LookedBack | null;`;
  });
  return code`
/** What a look back over the earlier sets and this one found, in whole steps. */
export interface LookedBack {
  readonly low: number;
  readonly high: number;
  /** It surely has a value, and whether it may have one. */
  readonly sure: boolean;
  readonly maybe: boolean;
  /** A need that the present set lacks decides whether it counts. */
  readonly open?: boolean;
  /** What an average is divided by; 1 unless said otherwise. */
  readonly count?: number;
}

export interface LookBacks {
${Code.joined(each, '\n')}
}
`;
}
