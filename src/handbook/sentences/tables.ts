import type { MeasureHow, ScorePart } from '../../protocol/protocol.ts';
import { cutAt, every, partsOf } from './apart.ts';
import { readIn, readNumber, readPoints, sayNumber, sayPoints } from './numbers.ts';
import { readNamed, sayOperand } from './operands.ts';
import { plain, type Sentence } from './sentence.ts';
import { readChoice, readObservation, sayChoice, sayThing, type Speaker } from './speaker.ts';
import type { Unit } from '../../vocabulary/units.ts';

type Curve = Extract<MeasureHow, { kind: 'curve' }>;
type Bands = Extract<ScorePart, { kind: 'bands' }>;
type Choices = Extract<ScorePart, { kind: 'choices' }>;

const unitOf = (of: Bands['of'], speaker: Speaker): Unit | null =>
  of.kind === 'number' ? of.unit : speaker.unitOf(of.name);

const beyondWords = {
  missing: 'outside them it has no value',
  hold: 'outside them it keeps the value of the nearest one',
} as const;

/** `read from the systolic pressure, in straight lines between these 3 points; outside them it has no value`. */
export function sayCurve({ of, points, beyond }: Curve, unit: Unit | null, speaker: Speaker): Sentence {
  const own = unitOf(of, speaker);
  return {
    text: `read from ${sayOperand(of, null, speaker)}, in straight lines between these ${points.length} points; ${beyondWords[beyond]}`,
    of: points.map(({ at, value }) => plain(`at ${sayNumber(at, own)}: ${sayNumber(value, unit)}`)),
  };
}

export function readCurve({ text, of: below }: Sentence, unit: Unit | null, speaker: Speaker): Curve | null {
  const [, thing = '', beyond] =
    /^read from (.*), in straight lines between these [0-9]+ points; (.*)$/.exec(text) ?? [];
  const of = readNamed(thing, speaker);
  const kept = (['missing', 'hold'] as const).find((each) => beyondWords[each] === beyond);
  const points = every(below, (each) => {
    const [at, value] = cutAt(each.text.replace(/^at /, ''), ': ') ?? ['', ''];
    const read = [readIn(at, of && unitOf(of, speaker)), readIn(value, unit)] as const;
    return read[0] && read[1] && each.of.length === 0 ? { at: read[0], value: read[1] } : null;
  });
  return of && kept && points ? { kind: 'curve', of, points, beyond: kept } : null;
}

const anyOther = 'any other 0 points';

/** One part of a score in one line: `the respiratory rate: at most 8 /min 3 points, …, otherwise 3 points`. */
export const sayPart = (part: ScorePart, speaker: Speaker): string =>
  part.kind === 'bands' ? sayBands(part, speaker) : sayChoices(part, speaker);

function sayBands({ of, bands }: Bands, speaker: Speaker): string {
  const own = unitOf(of, speaker);
  const said = bands.map(({ to, included, points }) => {
    const end = to ? `${included ? 'at most' : 'below'} ${sayNumber(to.value, to.unit ?? own)}` : 'otherwise';
    return `${end} ${sayPoints(points)}`;
  });
  return `${sayOperand(of, null, speaker)}: ${said.join(', ')}`;
}

function sayChoices({ observation, points }: Choices, speaker: Speaker): string {
  const said = [...points].map(
    ([choice, count]) => `${sayChoice(choice, observation, speaker)} ${sayPoints(count)}`,
  );
  const isAll = points.size === speaker.observation(observation).choices.length;
  return `${sayThing(observation, speaker)}: ${[...said, ...(isAll ? [] : [anyOther])].join(', ')}`;
}

export function readPart(words: string, speaker: Speaker): ScorePart | null {
  const [thing, said] = cutAt(words, ': ') ?? ['', ''];
  const of = readNamed(thing, speaker);
  const parts = partsOf(said, ', ');
  const read = of ? readBands(of, parts) : readChoicePart(thing, parts, speaker);
  return read && sayPart(read, speaker) === words ? read : null;
}

function readBands(of: Bands['of'], parts: readonly string[]): ScorePart | null {
  const bands = every(parts, (part) => {
    const { before, points } = readPoints(part) ?? { before: '', points: 0 };
    if (before === 'otherwise') return { to: null, included: false, points };
    const [, how, number = ''] = /^(at most|below) (.*)$/.exec(before) ?? [];
    const to = readNumber(number);
    return to && { to: { kind: 'number' as const, ...to }, included: how === 'at most', points };
  });
  return bands && { kind: 'bands', of, bands, path: [] };
}

function readChoicePart(thing: string, parts: readonly string[], speaker: Speaker): ScorePart | null {
  const observation = readObservation(thing, speaker);
  if (!observation) return null;
  const listed = parts.at(-1) === anyOther ? parts.slice(0, -1) : parts;
  const points = every(listed, (part) => {
    const read = readPoints(part);
    const choice = read && readChoice(read.before, observation.name, speaker);
    return read && choice !== null ? ([choice, read.points] as const) : null;
  });
  return points && { kind: 'choices', observation: observation.name, points: new Map(points), path: [] };
}
