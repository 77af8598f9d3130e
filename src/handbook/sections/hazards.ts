import type { Hazard, Requirement } from '../../protocol/requirements/requirement.ts';
import { html, type Html } from '../../review/html.ts';
import { readsOf } from '../../review/requirements/asked.ts';
import { ofTheRules } from '../../review/requirements/proof-in-words.ts';
import type { Proof } from '../../review/requirements/proof.ts';
import { speakRequirement } from '../sentences/requirements.ts';
import { speakerOf, type Speaker } from '../sentences/speaker.ts';
import { shortDigest } from '../short-digest.ts';
import { list, logic } from './logic.ts';
import type { Contents, Section } from './section.ts';
import { answerOf, verdictWords } from './verdicts.ts';

/** What can go wrong for a patient, what must always hold so that it does not, and what was found of that. */
export const hazards: Section = (contents) => {
  const { reads, proofs, handout } = contents;
  const stated = readsOf(reads).hazards;
  return html`<section class="hazards">
    <h2>Hazards and what controls them</h2>
    ${
      stated.size === 0
        ? html`<p class="lacking">
            No hazard is stated here, and nothing that must always hold: nothing of this kind was proven.
          </p>`
        : html`<p>
              What must always hold was asked of every possible set, of the rules with the
              <span>${shortDigest(handout.digest)}</span>. Unless it is said otherwise, it is asked at every
              value that a limit may have. <b>${ofTheRules}</b>
            </p>
            ${hazardTable(stated, proofs)}
            ${proofs.map((proof) => requirementOf(proof, contents, speakerFor(reads)))}`
    }
    ${list(ownOfMembers(contents), 'Stated by the protocols themselves, and asked of each alone')}
  </section>`;
};

/** Of a ward, everything that one of its protocols reads can be named. */
function speakerFor(reads: Contents['reads']): Speaker {
  if (!('members' in reads)) return speakerOf(reads.protocol);
  const observations = new Map(reads.members.flatMap(({ protocol }) => [...protocol.observations]));
  return speakerOf({ ...reads.own, observations });
}

const severities = {
  slight: 'Slight',
  serious: 'Serious',
  life_threatening: 'Life-threatening',
} as const satisfies Record<Hazard['severity'], string>;

const hazardTable = (stated: ReadonlyMap<string, Hazard>, proofs: readonly Proof[]): Html =>
  html`<table>
    <thead>
      <tr>
        <th>What can go wrong</th>
        <th>How bad</th>
        <th>Answered for by</th>
        <th>Controlled by</th>
      </tr>
    </thead>
    <tbody>
      ${[...stated.values()].map((hazard) => hazardRow(hazard, proofs))}
    </tbody>
  </table>`;

function hazardRow({ name, harm, severity, owner }: Hazard, proofs: readonly Proof[]): Html {
  const own = proofs.filter(({ requirement }) => requirement.controls.includes(name));
  const isProven = own.some(({ verdict }) => verdict === 'proven');
  return html`<tr>
    <th scope="row">${harm}</th>
    <td>${severities[severity]}</td>
    <td>${owner}</td>
    <td>
      ${list(own.map((proof) => `${proof.requirement.title}: ${verdictWords[proof.verdict]}`))}
      ${isProven ? null : html`<b>Nothing that controls this is proven.</b>`}
    </td>
  </tr>`;
}

function requirementOf(proof: Proof, contents: Contents, speaker: Speaker): Html {
  const { name, title, because, sources } = proof.requirement;
  return html`<article class="rule">
    <h4>${title} <code>${name}</code></h4>
    ${logic(speakRequirement(proof.requirement, speaker))}
    ${because === null ? null : html`<p><b>Why:</b> ${because}</p>`} ${citesOf(sources, contents)}
    ${answerOf(proof)}
  </article>`;
}

function citesOf(names: Requirement['sources'], { reads }: Contents): Html | null {
  const { sources } = 'members' in reads ? reads : reads.protocol;
  return names.length === 0
    ? null
    : html`<p class="cites">Sources: ${names.map((name) => sources.get(name)?.cite ?? name).join('; ')}</p>`;
}

/** Which protocols of a ward state requirements of their own; their handbooks hold the answers. */
const ownOfMembers = ({ ward }: Contents): string[] =>
  (ward?.members ?? [])
    .filter(({ protocol }) => protocol.requirements.length > 0)
    .map(
      ({ protocol: { title, edition, requirements, hazards: own } }) =>
        `${title}, edition ${edition}: ${own.size} hazards, ${requirements.length} requirements; its own handbook has the answers`,
    );
