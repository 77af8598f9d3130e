import { html, type Html } from '../html.ts';
import type { Sentence } from '../sentences/sentence.ts';

/** Sentences as nested lists: what is shown is their whole text, so that it can be read back from the page. */
export const logic = (sentences: readonly Sentence[]): Html =>
  html`<ul class="logic">
    ${sentences.map(line)}
  </ul>`;

const line = ({ text, of }: Sentence): Html =>
  html`<li>
    ${text}${
      of.length > 0
        ? html`<ul>
            ${of.map(line)}
          </ul>`
        : null
    }
  </li>`;

/** A list of texts; nothing at all without one. */
export const list = (items: readonly (string | Html)[], name: string | null = null): Html | null =>
  items.length === 0
    ? null
    : html`${name === null ? null : html`<p class="label">${name}</p>`}
        <ul>
          ${items.map((each) => html`<li>${each}</li>`)}
        </ul>`;
