import { html } from '../html.ts';
import type { Section } from './section.ts';

/** Who approved a sealed edition, and what is lacking; of a draft there is nothing to tell. */
export const approvals: Section = ({ edition }) => {
  if (!edition) return null;
  const { file, approvals: found } = edition;
  const authors = file.authors ?? [];
  const lacking = (found?.lacking ?? []).map(({ role, people }) => `${people} × ${role}`);
  return html`<section class="approvals">
    <h2>Approvals</h2>
    <p>
      ${authors.length > 0 ? `Written by ${authors.join(', ')}, who may not approve it.` : 'The edition names no authors.'}
      Seal ${file.seal}.
    </p>
    ${
      found && found.counted.length > 0
        ? html`<table>
            <thead>
              <tr>
                <th>Name</th>
                <th>Role</th>
                <th>Minute</th>
                <th>On</th>
              </tr>
            </thead>
            <tbody>
              ${found.counted.map(
                ({ by, role, minute, on }) =>
                  html`<tr>
                    <td>${by}</td>
                    <td>${role}</td>
                    <td>${minute}</td>
                    <td>${on}</td>
                  </tr>`,
              )}
            </tbody>
          </table>`
        : html`<p>No approval that counts is in its record.</p>`
    }
    ${lacking.length > 0 ? html`<p class="lacking">Still lacking: ${lacking.join(', ')}.</p>` : null}
  </section>`;
};
