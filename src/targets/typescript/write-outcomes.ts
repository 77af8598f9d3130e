import { rulesInWord } from './packed-answers.ts';
import { Code, code } from './code.ts';
import type { ModuleInputs } from './module-inputs.ts';

/** What a module answers in words, and its measures. */
export function writeOutcomes({ protocol, logic, lookBacks }: ModuleInputs): readonly Code[] {
  const measures = logic.measures.map(
    ({ measure, topScale, bottomScale }, index) =>
      code`    ${Code.name(measure)}: endsOf(worked, ${5 * index}, ${Number(topScale)}, ${Number(bottomScale)}),`,
  );
  const rules = protocol.rules.map(({ name }, index) => {
    const word = 1 + 2 * Math.floor(index / rulesInWord);
    return code`      ${Code.name(name)}: stateOf(out, at + ${word}, ${index % rulesInWord}),`;
  });
  const measured = measures.length === 0 ? [] : [measuresText(measures, lookBacks.length > 0)];
  return [types, unpackText(rules), askText, ...measured];
}

const types = code`export interface Outcome {
  readonly applies: 'yes' | 'no' | 'unsure';
  /** Null when the protocol is not for this patient. \`at_least\` is null while nothing is settled: that is no all-clear. */
  readonly level: { readonly at_least: LevelId | null; readonly could_be: LevelId; readonly settled: boolean } | null;
  readonly rules: Readonly<Record<RuleId, State>>;
  /** Values that are impossible or contradict each other; they counted as missing, and are to be shown. */
  readonly refused: readonly ObservationId[];
}

function stateOf(out: Int32Array, word: number, bit: number): State {
  if ((((out[word] as number) >> bit) & 1) === 1) return 'met';
  return (((out[word + 1] as number) >> bit) & 1) === 1 ? 'undecided' : 'not_met';
}`;

const unpackText = (rules: readonly Code[]): Code => code`/** A packed answer in words. */
export function unpack(out: Int32Array, at: number, refused: readonly ObservationId[] = []): Outcome {
  const first = out[at] as number;
  const fits = first & 3;
  return {
    applies: fits === 2 ? 'yes' : fits === 1 ? 'unsure' : 'no',
    level:
      fits === 0
        ? null
        : {
            at_least: levels[((first >> 3) & 255) - 1] ?? null,
            could_be: levels[(first >> 11) & 255] as LevelId,
            settled: (first & 4) !== 0,
          },
    rules: {
${Code.joined(rules, '\n')}
    },
    refused,
  };
}`;

const askText = code`/** What the protocol says of one set. */
export function evaluate(set: GivenSet, limits: Limits | null = null): Outcome {
  const isWhole = pack(set, single, 0, limits);
  return unpack(single, 0, isWhole ? [] : observations.filter((_, index) => state[index] === 3));
}

/**
 * The packed answer to bounds: the numbers of the protocol's inputs, in their order. \`wide\` holds them with earlier values counted as
 * missing, where some stand in.
 */
export function packBounds(narrow: Float64Array, out: Int32Array, at: number, wide: Float64Array = narrow): void {
  answer(narrow, narrowAnswer);
  if (wide === narrow) {
    packAnswers(narrowAnswer, narrowAnswer, out, at);
    return;
  }
  answer(wide, wideAnswer);
  packAnswers(narrowAnswer, wideAnswer, out, at);
}`;

const measuresText = (
  measures: readonly Code[],
  looksBack: boolean,
): Code => code`const worked = new Float64Array(${5 * measures.length});

function endsOf(from: Float64Array, at: number, scale: number, bottomScale: number): Range | null {
  const [start = 0, end = 0, bottomLow = 1, bottomHigh = 1, maybe = 0] = from.subarray(at, at + 5);
  if (maybe === 0) return null;
  return {
    low: (start / scale) * (bottomScale / (start < 0 ? bottomLow : bottomHigh)),
    high: (end / scale) * (bottomScale / (end < 0 ? bottomHigh : bottomLow)),
  };
}

/** The measures over bounds, each from its lowest to its highest; null for one that has no value. */
export function measuresOfBounds(b: Float64Array): Readonly<Record<MeasureId, Range | null>> {
  work(b, worked);
  return {
${Code.joined(measures, '\n')}
  };
}

/** The measures of one set. */
export function measuresOf(set: GivenSet, limits: Limits | null = null): Readonly<Record<MeasureId, Range | null>> {
  takeSet(set);
  refuse();
  writeBounds(bounds, limits);${
    looksBack
      ? code`
  writeLookBacks(bounds, set.look_backs);`
      : code``
  }
  return measuresOfBounds(bounds);
}`;
