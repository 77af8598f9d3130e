import { html, type Html } from '../html.ts';
import type { HandoutLevel } from '../../teach/handout.ts';
import type { Plan } from '../../ward/ward.ts';
import type { Contents, Section } from './section.ts';

/** Whom to call and how soon, the highest level first; and what a plan for one patient puts in place of it. */
export const ladder: Section = (contents) =>
  html`<section class="ladder">
    <h2>Whom to call, and how soon</h2>
    <p>${contents.handout.ladder}. The highest level stands first.</p>
    ${ladderTable(contents.handout.levels)}
    ${contents.ward ? [...contents.ward.plans.values()].map((plan) => planTable(plan, contents)) : null}
  </section>`;

/** All levels in one table. */
export const ladderTable = (levels: readonly HandoutLevel[]): Html =>
  html`<table class="levels">
    <thead>
      <tr>
        <th>Level</th>
        <th>Tell</th>
        <th>Answer within</th>
        <th>If nobody answers</th>
        <th>Next full set</th>
        <th>Step down</th>
      </tr>
    </thead>
    ${levels.map(levelRows)}
  </table>`;

/** A level with its words below it, in a body of their own, so that no page parts them. */
const levelRows = ({ title, says, tell, respond, reassess, noAnswer, stepDown }: HandoutLevel): Html =>
  html`<tbody>
    <tr>
      <th scope="row">${title}</th>
      <td>${tell.length > 0 ? tell.map((who) => html`<div>${who}</div>`) : 'nobody'}</td>
      <td>${respond ?? '–'}</td>
      <td>${noAnswer ?? '–'}</td>
      <td>${reassess ?? '–'}</td>
      <td>${stepDown ?? '–'}</td>
    </tr>
    ${
      says === null
        ? null
        : html`<tr>
            <td colspan="6"><span class="says">${says}</span></td>
          </tr>`
    }
  </tbody>`;

/** What a plan changes; where it says nothing, the ladder holds. */
function planTable({ title, says, levels }: Plan, { handout, ward }: Contents): Html {
  const names = ward?.ladder.levels.map(({ name, title: of }) => ({ name, of })) ?? [];
  const rows = names.toReversed().flatMap(({ name, of }) => {
    const other = levels.get(name);
    if (!other) return [];
    const ladderSays = 'as the ladder says';
    const tell = other.tell?.map(({ who, from, to }) =>
      from === null || to === null ? who : `${who} (${from} to ${to})`,
    );
    const answer = other.ifNoAnswer
      ? `after ${other.ifNoAnswer.after}: ${other.ifNoAnswer.tell}`
      : ladderSays;
    return [
      html`<tbody>
        <tr>
          <th scope="row">${of}</th>
          <td>${tell ? tell.map((who) => html`<div>${who}</div>`) : ladderSays}</td>
          <td>${other.respond ?? ladderSays}</td>
          <td>${answer}</td>
          <td>${other.reassess ?? ladderSays}</td>
        </tr>
        ${
          other.says
            ? html`<tr>
                <td colspan="5"><span class="says">${other.says}</span></td>
              </tr>`
            : null
        }
      </tbody>`,
    ];
  });
  return html`<div class="plan">
    <h3>Plan for one patient: ${title}</h3>
    <p>
      ${says} The level that is shown stays;
      ${handout.levels.length > rows.length ? 'what is not listed here stays as the ladder says' : 'whom to tell and how soon change'}.
    </p>
    <table class="levels">
      <thead>
        <tr>
          <th>Level</th>
          <th>Tell</th>
          <th>Answer within</th>
          <th>If nobody answers</th>
          <th>Next full set</th>
        </tr>
      </thead>
      <tbody>
        ${rows}
      </tbody>
    </table>
  </div>`;
}
