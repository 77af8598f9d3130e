import { html, type Html } from '../html.ts';
import type { Part } from './section.ts';

/** The number by which each source of a protocol is cited, in the order of its file, from 1. */
export const numbersOf = (names: readonly string[], { compiled }: Part): number[] => {
  const all = [...compiled.protocol.sources.keys()];
  return names.map((name) => all.indexOf(name) + 1).filter((number) => number > 0);
};

/** The sources of a protocol with their numbers. */
export function sourcesOf({ compiled }: Part): Html | null {
  const all = [...compiled.protocol.sources.values()];
  if (all.length === 0) return null;
  return html`<h3>Sources</h3>
    <ol class="sources">
      ${all.map(
        ({ cite, link, fromMemory }) =>
          html`<li>
            ${cite}${link === null ? null : ` ${link}`}${fromMemory ? ' (from memory: to be looked up)' : null}
          </li>`,
      )}
    </ol>`;
}
