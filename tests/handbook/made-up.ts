import { stringify } from 'yaml';
import { drawn, type Draw } from '../agreement/draw.ts';
import { protocolOf } from '../agreement/kit.ts';
import { drawProtocol, ladderText, type Plain } from '../agreement/protocols.ts';
import type { Protocol } from '../../src/protocol/protocol.ts';

/** Titles that people may write and that a sentence could stumble over; some of them more than once. */
const titles = [
  'mean',
  'Mean',
  'mean pressure',
  'pressure is below 90',
  'a or b',
  'a “quoted” thing',
  'open “ mark',
  'end ” mark',
  'mean [m_1]',
  '[m_1]',
  'limit “mean” (5)',
  'rule “Rule 1” is met',
  'answer to “mean”',
  'mean (estimated)',
  'a − b',
  'a × b + c ÷ d',
  'x: y, z; w',
  'first, in mmHg',
  'value over the last 4 h, the present set included',
  'when it is so.',
  'otherwise',
  'any other',
  'known',
  'half / whole',
  '5',
  '−5 mmHg',
  'it’s so',
  "it's so",
  '<b>bold</b> & "more"',
  'Größe der Manschette',
] as const;

function retitle(draw: Draw, part: Plain): Plain {
  return draw.chance(60) ? { ...part, title: draw.one(titles) } : part;
}

const each = (draw: Draw, parts: unknown): Plain =>
  Object.fromEntries(
    Object.entries((parts ?? {}) as Plain).map(([name, part]) => [name, retitle(draw, part as Plain)]),
  );

/** Observations, and their choices, under such titles. */
const observed = (draw: Draw, declares: unknown): Plain =>
  Object.fromEntries(
    Object.entries(each(draw, declares) as Record<string, Plain>).map(([name, { choices, ...rest }]) => [
      name,
      choices ? { ...rest, choices: (choices as Plain[]).map((choice) => retitle(draw, choice)) } : rest,
    ]),
  );

/** A made-up protocol that asks for every kind of sentence, with titles that are hard to tell apart. */
function drawSpoken(draw: Draw): string {
  const { protocol } = drawProtocol(draw);
  const { observations, measures, limits, rules, ...rest } = protocol;
  const { declares, ...roles } = observations as Plain;
  const changed = {
    ...rest,
    observations: { ...roles, declares: observed(draw, declares) },
    ...(limits ? { limits: each(draw, limits) } : {}),
    ...(measures ? { measures: each(draw, measures) } : {}),
    rules: (rules as Plain[]).map((rule) => retitle(draw, rule)),
    exactly_one_of: partitionOf(draw, rules as Plain[]),
  };
  return stringify(changed, { aliasDuplicateObjects: false });
}

/** What the rules ask for, as a partition: whether it is one is not asked here. */
const partitionOf = (draw: Draw, rules: readonly Plain[]): Plain => ({
  made_up_partition: draw.some(
    rules.map(({ when }) => when),
    2,
    3,
  ),
});

/** Such protocols as texts, so that one which fails can be read. */
export const spokenTexts = drawn(drawSpoken);

export const spokenProtocol = (text: string): Protocol => protocolOf(text, ladderText).protocol;
