import type { ChangedLevel, ChangedRule, ChangedStand, Ground } from './comparison.ts';
import { listed } from '../../protocol/words.ts';

/** How much ground some sets cover: `0.1 % of all complete sets, each counted once: not how often patients have them`. */
export function groundInWords({ sets, share }: Ground): string {
  if (sets === null) return 'how many sets these are was too much to work out';
  if (share === null) return `${sets} sets`;
  return `${shareInWords(share)} of all complete sets, each combination of values counted once; that says nothing about how often patients have them`;
}

function shareInWords(share: number): string {
  const percent = share * 100;
  if (percent === 0) return 'less than 0.0000000001 %';
  return `${percent >= 0.01 ? Number(percent.toPrecision(2)) : percent.toFixed(10).replace(/0+$/, '').slice(0, 14)} %`;
}

/** The regions of a change, a sentence each. A set may be in several; together they are all, unless the last says otherwise. */
export function regionLines({
  in_common: common,
  regions,
  more,
  earlier_sets: earlier,
}: ChangedLevel | ChangedStand): string[] {
  const lines =
    regions.length === 0
      ? [common.length === 0 ? 'every set' : `${listed(common)}, whatever the rest`]
      : [
          ...(common.length === 0 ? [] : [`in all of these: ${listed(common)}`]),
          ...regions.map((terms) =>
            terms.length === 0 ? 'every one of them' : `${listed(terms)}, whatever the rest`,
          ),
        ];
  return [
    ...lines,
    ...(more > 0 ? [`and further sets, in ${more} more parts that are not told here`] : []),
    ...(earlier ? ['some of these need earlier sets that give what is named here'] : []),
  ];
}

/** The regions of a change in their terms, with what those that are told share taken out of them. */
export interface RegionParts {
  /** What holds in every part; `isAll`: also in those that are not told. */
  readonly shared: readonly string[];
  readonly isAll: boolean;
  /** What holds in each part beside that. A set may be in several parts. */
  readonly parts: readonly (readonly string[])[];
  /** What else is to be known: that there are more parts, that earlier sets are needed. */
  readonly notes: readonly string[];
}

/** The same as `regionLines`, term by term, for a page that sets the terms apart. */
export function regionParts(of: ChangedLevel | ChangedStand): RegionParts {
  const { in_common: common, regions } = of;
  const [first = [], ...rest] = regions;
  const told = rest.length === 0 ? [] : first.filter((term) => rest.every((each) => each.includes(term)));
  const notes = regionLines({ ...of, in_common: [], regions: [] }).slice(1);
  const isAll = common.length > 0 || told.length === 0;
  return {
    shared: [...common, ...told],
    isAll,
    parts: regions.map((terms) => terms.filter((term) => !told.includes(term))),
    notes,
  };
}

/** That what is told is not all. */
export const notWhole =
  'The search grew too large: each of these is true, and there may be more sets. No count below is whole.';

/** What is said before the changes of level of which no region is told. */
export const othersInWords = {
  complete: 'The search for regions grew too large to come upon these. Each has a set that shows it.',
  incomplete:
    'Sets in which something is missing or could not be obtained, and what is shown for them. Each has a set that shows it.',
  whole:
    'No set, complete or not, has another change of level than those that are told here; that is proven.',
} as const;

/** What happened to a rule, in a few words. */
export function ruleIsWords({ is, stands, renamed_from: from }: ChangedRule): string {
  const named = from === null ? '' : `, until now ${from}`;
  if (is === 'added') return `added${stands.length === 0 ? '; no complete set meets it' : ''}`;
  if (is === 'removed') return `removed${stands.length === 0 ? '; no complete set met it' : ''}`;
  if (is === 'asks_otherwise') return `met by other sets${named}`;
  return `written otherwise, and met by the same complete sets${named}`;
}
