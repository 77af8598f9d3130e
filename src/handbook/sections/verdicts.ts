import { html, type Html } from '../../review/html.ts';
import { whyNotSettled } from '../../review/requirements/proof-in-words.ts';
import type { Example, Excepted, Proof } from '../../review/requirements/proof.ts';

/** What became of a requirement, in a word or two. */
export const verdictWords = {
  proven: 'proven',
  refuted: 'REFUTED',
  not_settled: 'NOT SETTLED',
} as const satisfies Record<Proof['verdict'], string>;

/** The answer in full, with the example that breaks the requirement, or why nobody knows. */
export function answerOf(proof: Proof): Html {
  switch (proof.verdict) {
    case 'proven':
      return html`<p><b>Proven:</b> no possible set breaks it.</p>
        ${proof.excepted.map(exceptionOf)}`;
    case 'refuted':
      return html`<p class="lacking"><b>Refuted:</b> ${proof.example.says}</p>
        ${exampleOf(proof.example)}`;
    case 'not_settled':
      return html`<p class="lacking"><b>Not settled:</b> ${whyNotSettled(proof.because, proof.looked)}</p>`;
  }
}

const exampleOf = ({ yaml }: Example): Html =>
  html`<p class="label">The plainest example, as it is answered now</p>
    <pre>${yaml}</pre>`;

/** What hides behind an observation that was excepted by name. */
const exceptionOf = ({ observation, worst }: Excepted): Html =>
  worst
    ? html`<p class="lacking"><b>Excepted:</b> ${observation}. Left blank, it can hide: ${worst.says}</p>
        ${exampleOf(worst)}`
    : html`<p>Excepted: ${observation}. Left blank by itself, it hides nothing.</p>`;
