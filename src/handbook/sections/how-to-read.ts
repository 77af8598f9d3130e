import { html } from '../html.ts';
import type { Section } from './section.ts';

/** How the sentences are to be understood. */
export const howToRead: Section = () =>
  html`<section class="how">
    <h2>How to read the rules</h2>
    <p>
      The sentences are the rules. Each sentence in this handbook was read back when it was made, and what was
      read is, part for part, what the kit runs; had one of them said something else, there would be no
      handbook.
    </p>
    <ul>
      <li>The level is the highest that any rule calls for. The order of the rules means nothing.</li>
      <li>
        Missing is never normal: while something that is needed is missing and could still change the level,
        it is not settled, and the set is to be completed.
      </li>
      <li>
        A rule is taken back, or explained, only when what takes it back is known. An exception that nobody
        has answered takes back nothing.
      </li>
      <li>Where a list is counted (“at least 2 of these 4 hold”), each item counts once.</li>
      <li>A limit stands with its name and with the number that it has in this edition.</li>
    </ul>
  </section>`;
