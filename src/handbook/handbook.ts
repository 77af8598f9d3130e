import { sha256 } from '@noble/hashes/sha2.js';
import { utf8ToBytes } from '@noble/hashes/utils.js';
import { handoutOf } from '../teach/handout.ts';
import { html, Html } from '../review/html.ts';
import type { HandbookInput } from './input.ts';
import { approvals } from './sections/approvals.ts';
import { cases } from './sections/cases.ts';
import { changes } from './sections/changes.ts';
import { front } from './sections/front.ts';
import { hazards } from './sections/hazards.ts';
import { howToRead } from './sections/how-to-read.ts';
import { ladder } from './sections/ladder.ts';
import { paperSheets } from './sections/paper-sheet.ts';
import { protocols } from './sections/protocols.ts';
import { residualRisks } from './sections/residual-risks.ts';
import type { Contents, Section } from './sections/section.ts';
import { speak } from './sentences/spoken.ts';
import { shortDigest } from './short-digest.ts';
import { style } from './style.ts';

/** The sections in the order of the handbook; one that has nothing to tell leaves nothing behind. */
const sections: readonly Section[] = [
  front,
  approvals,
  changes,
  howToRead,
  ladder,
  protocols,
  cases,
  hazards,
  residualRisks,
  paperSheets,
];

/**
 * The policy document of a protocol or a ward policy as one HTML page that needs nothing beside itself and runs no script. Every
 * sentence in it was read back; it throws, as a fault of the kit, when one says something else than what runs.
 */
export function handbookToHtml(input: HandbookInput): string {
  const { reads } = input;
  const ward = 'members' in reads ? reads : null;
  const members = 'members' in reads ? reads.members : [reads];
  const contents: Contents = {
    ...input,
    ward,
    handout: handoutOf(reads),
    parts: members.map((compiled) => ({ compiled, spoken: speak(compiled.protocol) })),
  };
  return `<!doctype html>\n${page(contents).text}\n`;
}

/** Nothing is loaded, nothing runs, nothing is sent; the one style is known by its digest. */
const contentPolicy = `default-src 'none'; style-src 'sha256-${base64(sha256(utf8ToBytes(style)))}'; base-uri 'none'; form-action 'none'`;

function base64(bytes: Uint8Array): string {
  return btoa(String.fromCodePoint(...bytes));
}

function page(contents: Contents): Html {
  const { handout, edition } = contents;
  const draft = edition ? '' : 'DRAFT. ';
  return html`<html lang="en">
    <head>
      <meta charset="utf-8" />
      <meta http-equiv="Content-Security-Policy" content="${contentPolicy}" />
      <meta name="viewport" content="width=device-width, initial-scale=1" />
      <meta name="referrer" content="no-referrer" />
      <title>${handout.title}, ${handout.edition}, ${shortDigest(handout.digest)}</title>
      ${new Html(`<style>${style}</style>`)}
    </head>
    <body>
      <div class="paper">
        <header class="running top">
          <div>
            ${draft}${handout.title} · ${handout.edition} ·
            <span class="short">${shortDigest(handout.digest)}</span>
          </div>
        </header>
        <main class="body">${sections.map((section) => section(contents))}</main>
        <footer class="running bottom">
          <div>${handout.caution} <span class="short">${shortDigest(handout.digest)}</span></div>
        </footer>
      </div>
    </body>
  </html>`;
}
