import { yamlToDocument } from '../../src/document/yaml-to-document.ts';
import { readLadder, readSet } from '../../src/index.ts';
import { answersOf } from '../../src/outcome/answers.ts';
import { compile, type Compiled } from '../../src/outcome/compile.ts';
import { isNever, type Exact } from '../../src/outcome/exact.ts';
import { documentToProtocol } from '../../src/protocol/document-to-protocol.ts';
import type { Bounds } from '../../src/series/bounds.ts';
import { seriesToBounds } from '../../src/series/series-to-bounds.ts';
import { vitalSigns } from '../../src/vocabulary/vital-signs.ts';
import { remembered } from './remembered.ts';

/** What the kit says of a set or series, in the words in which the judge says it. */
export interface KitAnswer {
  readonly applies: 'yes' | 'no' | 'unsure';
  /** Null for a patient for whom the protocol is not. */
  readonly level: {
    readonly at_least: string | null;
    readonly could_be: string;
    readonly settled: boolean;
  } | null;
  /** By the rule's name. `explained`: its `explained_by` surely holds, whether the rule is met or not. */
  readonly rules: Readonly<Record<string, KitRule>>;
  /** By the measure's name: its ends as exact fractions (`-7/2`, `5`) or `never`; null where it surely has no value. */
  readonly measures: Readonly<Record<string, { readonly low: string; readonly high: string } | null>>;
}

/** Whether a value of an earlier set stands in for one that the present set lacks. */
export function earlierStandsIn(protocolYaml: string, ladderYaml: string, setJson: string): boolean {
  const { narrow, wide } = boundsOf(protocolOf(protocolYaml, ladderYaml), setJson);
  return narrow !== wide;
}

export interface KitRule {
  readonly state: 'met' | 'not_met' | 'undecided';
  readonly counts: boolean;
  readonly explained: boolean;
}

const ladderOf = remembered((yaml) => readLadder('ladder.yaml', yaml).ladder);
const readers = remembered((ladderYaml) => remembered((yaml) => compiledOf(yaml, ladderYaml)));

/** Without the questions about all possible sets: a made-up comparison may well hold for every set. */
export const protocolOf = (protocolYaml: string, ladderYaml: string): Compiled =>
  readers(ladderYaml)(protocolYaml);

function compiledOf(protocolYaml: string, ladderYaml: string): Compiled {
  const { document, problems: inText } = yamlToDocument('protocol.yaml', protocolYaml);
  if (!document) throw new Error(inText.map(({ says, source }) => `${says} ${source}`).join('\n'));
  const { protocol, problems } = documentToProtocol(document, {
    dictionary: vitalSigns,
    ladder: ladderOf(ladderYaml),
    today: null,
  });
  if (!protocol) throw new Error(problems.map(({ line, says }) => `${line}: ${says}`).join('\n'));
  return compile(protocol);
}

export function boundsOf(protocol: Compiled, setJson: string): Bounds {
  const { series, problems } = readSet('set.json', setJson, protocol);
  if (!series) throw new Error(problems.map(({ says }) => says).join('\n'));
  return seriesToBounds(protocol.protocol, series);
}

/** Reads a protocol with its ladder, and asks it about a set or series, all as text. */
export function askKit(protocolYaml: string, ladderYaml: string, setJson: string): KitAnswer {
  const protocol = protocolOf(protocolYaml, ladderYaml);
  return answerOf(protocol, boundsOf(protocol, setJson));
}

/** What a protocol says of bounds. */
export function answerOf(protocol: Compiled, bounds: Bounds): KitAnswer {
  const { applies, level, rules, narrow } = answersOf(protocol, bounds);
  const name = (index: number): string => protocol.protocol.ladder.levels[index]?.name ?? '';
  const measures = [...protocol.protocol.measures.keys()].map((measure) => {
    if (protocol.amounts.maybe(measure)(narrow.result) === 0) return [measure, null] as const;
    const { low, high } = protocol.amounts.of({ kind: 'measure', name: measure }).amount(narrow);
    return [measure, { low: shown(low), high: shown(high) }] as const;
  });
  return {
    applies,
    level: level && {
      at_least: level.atLeast === null ? null : name(level.atLeast),
      could_be: name(level.couldBe),
      settled: level.settled,
    },
    rules: Object.fromEntries(
      rules.map(({ rule, state, counts, explained }) => [
        rule.name,
        { state, counts: counts || state === 'met', explained },
      ]),
    ),
    measures: Object.fromEntries(measures),
  };
}

const shown = (value: Exact): string => (isNever(value) ? 'never' : `${value.n}/${value.d}`);
