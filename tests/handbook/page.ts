import { parseHTML } from 'linkedom';
import type { Sentence } from '../../src/handbook/sentences/sentence.ts';

/** As much of a part of a page as tests look at. */
export interface Part {
  readonly nodeName: string;
  readonly id: string;
  readonly textContent: string | null;
  readonly children: Iterable<Part>;
  readonly childNodes: Iterable<Part>;
  closest(selector: string): Part | null;
  querySelector(selector: string): Part | null;
  querySelectorAll(selector: string): Iterable<Part> & { readonly length: number };
  getAttribute(name: string): string | null;
  getAttributeNames(): string[];
}

/** A page as it is looked at in tests. */
export const opened = (text: string): Part => (parseHTML(text) as unknown as { document: Part }).document;

const words = (element: Part): string =>
  [...element.childNodes]
    .filter(({ nodeName }) => nodeName !== 'UL')
    .map(({ textContent }) => textContent ?? '')
    .join('')
    .replaceAll(/\s+/g, ' ')
    .trim();

/** The sentences of a list on the page, as a reader sees them. */
function sentencesOn(list: Part | null | undefined): Sentence[] {
  return [...(list?.children ?? [])].map((item) => ({
    text: words(item),
    of: sentencesOn([...item.children].find(({ nodeName }) => nodeName === 'UL')),
  }));
}

/** The list of sentences below the heading with a name in it. */
export function logicUnder(page: Part, name: string): Sentence[] {
  const heading = [...page.querySelectorAll('article code')].find(({ textContent }) => textContent === name);
  return sentencesOn(heading?.closest('article')?.querySelector('ul.logic'));
}
