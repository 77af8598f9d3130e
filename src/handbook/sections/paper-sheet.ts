import type { Rule } from '../../protocol/protocol.ts';
import { html, type Html } from '../html.ts';
import { cutAt } from '../sentences/apart.ts';
import { behindLevels } from './behind.ts';
import { ladderTable } from './ladder.ts';
import { inShort } from './in-short.ts';
import type { Contents, Part, Section } from './section.ts';

/** One page of paper for each protocol, for when no screen works: the ladder, and when each level is called for. */
export const paperSheets: Section = (contents) =>
  html`${contents.parts.map((part) => sheetOf(part, contents))}`;

/** So many letters of lines, and they are set smaller, so that the sheet stays one page. */
const sizes = [
  { most: 1900, name: 'roomy' },
  { most: 3400, name: 'dense' },
  { most: 5300, name: 'tight' },
] as const;

interface Group {
  readonly title: string;
  /** What is looked for, and when it holds or how it is worked out. */
  readonly lines: readonly (readonly [string, string])[];
}

function sheetOf(part: Part, { handout }: Contents): Html {
  const groups = groupsOf(part);
  const letters = groups.flatMap(({ lines }) => lines.flat()).reduce((sum, { length }) => sum + length, 0);
  const size = sizes.find(({ most }) => letters <= most)?.name ?? 'smallest';
  return html`<section class="sheet ${size}">
    <h2>Paper sheet for downtime: ${part.compiled.protocol.title}</h2>
    <p class="blanks"><span>Patient</span><span>Date and time</span><span>Written by</span></p>
    <p class="blanks">${blanksOf(part).map((each) => html`<span>${each}</span>`)}</p>
    <p>
      ${inShort(part.spoken.applies, part.spoken.speaker)} What was not taken is not normal: complete the set.
      The highest level that any line calls for holds. Names in quotation marks are lines of this sheet. *:
      for this patient it may have been changed.
    </p>
    ${ladderTable(handout.levels.map((level) => ({ ...level, says: null })))}
    <div class="columns">
      ${groups.map(
        ({ title, lines }) =>
          html`<div class="level">
            <p class="name">${title}</p>
            <ul>
              ${lines.map(([name, says]) => html`<li><b>${name}:</b> ${says}</li>`)}
            </ul>
          </div>`,
      )}
    </div>
  </section>`;
}

/** A blank for each observation that is needed and taken at the bed. */
const blanksOf = ({ compiled }: Part): string[] =>
  [...compiled.protocol.observations.values()]
    .filter(({ role, standing }) => role === 'needs' && !standing)
    .map(({ short, unit }) => (unit ? `${short} (${unit.word})` : short));

/** The levels, highest first; then the rules that those rest on and that call for no level, and the numbers. */
function groupsOf(part: Part): Group[] {
  const { protocol } = part.compiled;
  const ladder = protocol.ladder.levels;
  const behind = behindLevels(protocol);
  const lines = (rules: readonly Rule[]): Group['lines'] =>
    rules.map(({ name, title }) => [title, whenOf(name, part)]);
  const levels = [...ladder.keys()].toReversed().map((level) => ({
    title: ladder[level]?.title ?? '',
    lines: lines(protocol.rules.filter((rule) => rule.level === level)),
  }));
  const numbers = behind.measures.map((name): readonly [string, string] => [
    protocol.measures.get(name)?.title ?? name,
    workedOut(name, part),
  ]);
  return [
    ...levels,
    { title: 'Rules that are named above', lines: lines(behind.rules) },
    { title: 'Numbers that are named above', lines: numbers },
  ].filter((group) => group.lines.length > 0);
}

/** When a rule holds, in one line, and what takes it back or explains it. */
function whenOf(name: string, { spoken }: Part): string {
  const [first, ...rest] = (spoken.rules.get(name) ?? []).map((each) => inShort(each, spoken.speaker));
  const [, when = ''] = cutAt(first ?? '', ' when ') ?? [];
  return [when, ...rest].join(' ');
}

/** How a measure is worked out, in one line. */
function workedOut(name: string, { spoken }: Part): string {
  const [first, ...rest] = (spoken.measures.get(name) ?? []).map((each) => inShort(each, spoken.speaker));
  const [, how = ''] = cutAt(first ?? '', ' is ') ?? [];
  return [how, ...rest].join(' ');
}
