import { html, type Html } from '../html.ts';
import { rulesInWords } from '../../teach/verdict-in-words.ts';
import type { CaseCard } from '../../teach/case-card.ts';
import type { Drill } from '../../teach/unfold.ts';
import type { Contents, Section } from './section.ts';

/** The council's cases, each with what is given and what the rules say of it; those that do not come out as expected are named. */
export const cases: Section = (contents) => {
  const { cards, leftOut, ladder } = contents.teacher.lessons;
  if (cards.length + leftOut.length === 0) return null;
  return html`<section class="cases">
    <h2>Cases</h2>
    <p>
      ${cards.length} ${cards.length === 1 ? 'case comes' : 'cases come'} out as the council expects. They are
      invented.
    </p>
    ${
      leftOut.length === 0
        ? null
        : html`<p class="lacking">
            Not as expected, and to be looked at before anybody relies on this: ${leftOut.join('; ')}.
          </p>`
    }
    <table class="case-list">
      <thead>
        <tr>
          <th>Case</th>
          <th>What is given</th>
          <th>What the rules say</th>
        </tr>
      </thead>
      <tbody>
        ${cards.map((card) => caseRow(card, ladder, contents))}
      </tbody>
    </table>
  </section>`;
};

function caseRow({ name, rules }: CaseCard, ladder: readonly string[], { teacher }: Contents): Html {
  const drill = teacher.drill(name);
  return html`<tr>
    <th scope="row">${name}${drill?.story ? html`<span class="says">${drill.story}</span>` : null}</th>
    <td>${drill ? givenIn(drill) : null}</td>
    <td>${rulesInWords(rules, ladder)}</td>
  </tr>`;
}

interface Line {
  readonly title: string;
  readonly words: string;
}

function givenIn({ patient, stated, earlier, at, parts }: Drill): Html {
  const inWords = (lines: readonly Line[]): string =>
    lines.map(({ title, words }) => `${title} ${words}`).join(', ');
  const now = [...patient, ...parts.flatMap(({ lines }) => lines)];
  return html`${earlier.map((set) => html`<div>${set.at}: ${inWords(set.lines)}</div>`)}
    <div>${at !== null && earlier.length > 0 ? `${at}: ` : null}${inWords(now)}</div>
    ${stated.map((each) => html`<div>${each}</div>`)}`;
}
