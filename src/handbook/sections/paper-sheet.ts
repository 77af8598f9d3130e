import { html, type Html } from '../html.ts';
import { cutAt } from '../sentences/apart.ts';
import { ladderTable } from './ladder.ts';
import { inOneLine } from './logic.ts';
import type { Contents, Part, Section } from './section.ts';

/** One page of paper for each protocol, for when no screen works: the ladder, and when each level is called for. */
export const paperSheets: Section = (contents) =>
  html`${contents.parts.map((part) => sheetOf(part, contents))}`;

/** So many letters of rules, and the words are set smaller, so that the sheet stays one page. */
const sizes = [
  { most: 2200, name: 'roomy' },
  { most: 4200, name: 'dense' },
] as const;

function sheetOf(part: Part, { handout }: Contents): Html {
  const { protocol } = part.compiled;
  const levels = [...protocol.ladder.levels.keys()].toReversed();
  const groups = levels.flatMap((level) => {
    const rules = protocol.rules
      .filter((rule) => rule.level === level)
      .map(({ name, title }) => ({ title, says: lineOf(name, part) }));
    return rules.length === 0 ? [] : [{ title: protocol.ladder.levels[level]?.title ?? '', rules }];
  });
  const letters = groups
    .flatMap(({ rules }) => rules)
    .reduce((sum, { title, says }) => sum + title.length + says.length, 0);
  const size = sizes.find(({ most }) => letters <= most)?.name ?? 'tight';
  return html`<section class="sheet ${size}">
    <h2>Paper sheet for downtime: ${protocol.title}</h2>
    <p class="blanks"><span>Patient</span><span>Date and time</span><span>Written by</span></p>
    <p>
      ${inOneLine(part.spoken.applies)} What was not taken is not normal: complete the set. The highest level
      that any line calls for holds.
    </p>
    ${ladderTable(handout.levels.map((level) => ({ ...level, says: null })))}
    <div class="columns">
      ${groups.map(
        (group) =>
          html`<div class="level">
            <p class="name">${group.title}</p>
            <ul>
              ${group.rules.map(({ title, says }) => html`<li><b>${title}:</b> ${says}</li>`)}
            </ul>
          </div>`,
      )}
    </div>
  </section>`;
}

/** When a rule holds, in one line, and what takes it back or explains it. */
function lineOf(name: string, { spoken }: Part): string {
  const [first, ...rest] = (spoken.rules.get(name) ?? []).map(inOneLine);
  const [, when = ''] = cutAt(first ?? '', ' when ') ?? [];
  return [when, ...rest].join(' ');
}
