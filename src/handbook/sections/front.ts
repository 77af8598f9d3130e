import { shortDigest } from '../short-digest.ts';
import { html, type Html } from '../html.ts';
import type { Contents, Section } from './section.ts';

/** What this is, of which edition, whose, and whether it holds. */
export const front: Section = (contents) => {
  const { handout, reads } = contents;
  const { logicDigest } = 'members' in reads ? reads : reads.protocol;
  const { title, about, owners, digest, edition } = handout;
  return html`<section class="front">
    <p class="kind">Policy handbook</p>
    <h1>${title}</h1>
    <p class="status">${statusOf(contents)}</p>
    ${about === null ? null : html`<p>${about}</p>`}
    <table class="facts">
      <tbody>
        ${fact('Edition', edition)}
        ${fact('Answered for by', owners.length > 0 ? owners.join(', ') : 'nobody is named')}
        ${fact('To be reviewed by', reviewBy(contents) ?? 'no day is stated')}
        ${fact('Escalation ladder', handout.ladder)}
        ${contents.ward ? fact('Reads with', handout.parts.map((part) => part.edition).join('; ')) : null}
        ${fact('Digest of everything', digest)} ${fact('Digest of the logic', logicDigest)}
      </tbody>
    </table>
    <p class="caution">${handout.caution}</p>
    <p>
      Each page carries the first digits of the digest, ${shortDigest(digest)}. Who holds two papers with the
      same digits holds the same policy, word for word.
    </p>
  </section>`;
};

const fact = (name: string, value: string): Html =>
  html`<tr>
    <th scope="row">${name}</th>
    <td>${value}</td>
  </tr>`;

const reviewBy = ({ reads }: Contents): string | null =>
  'members' in reads ? reads.own.reviewBy : reads.protocol.reviewBy;

function statusOf({ edition }: Contents): string {
  if (!edition) return 'DRAFT: nobody has sealed or approved this. Do not act on it.';
  return `Sealed on ${edition.file.sealed_on}. ${edition.inForce}`;
}
