import { html } from '../html.ts';
import type { Section } from './section.ts';

/** Risks that stay, with the reason for which they were accepted, and by whom. */
export const residualRisks: Section = ({ accepted, handout, edition }) => {
  if (accepted.length === 0) return null;
  const owners = handout.owners.length > 0 ? handout.owners.join(', ') : 'nobody who is named';
  const by = edition?.approvals?.counted.map(({ by: who, role }) => `${who} (${role})`) ?? [];
  return html`<section class="risks">
    <h2>Risks that were accepted</h2>
    <p>
      Each of these stays although it is known. They are accepted by
      ${owners}${by.length > 0 ? `, and with this edition by ${by.join(', ')}` : null}.
    </p>
    <table>
      <thead>
        <tr>
          <th>Where</th>
          <th>Why it is accepted</th>
        </tr>
      </thead>
      <tbody>
        ${accepted.map(
          ({ of, what, because }) =>
            html`<tr>
              <th scope="row">${what}<span class="says">${of}</span></th>
              <td>${because}</td>
            </tr>`,
        )}
      </tbody>
    </table>
  </section>`;
};
