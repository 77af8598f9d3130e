import type { Gap, GapList, SheetGaps } from '../bedside/sheet.ts';
import { listed } from '../protocol/words.ts';
import type { Page } from './page.ts';

/** What is missing, and what it could change, in the order in which to ask and take. */
export function showGaps({ heading, lists, noValueHeading, noValue }: SheetGaps, page: Page): void {
  if (lists.length + noValue.length > 0) page.heading(heading);
  for (const list of lists) {
    page.gap();
    page.title(list.heading);
    if (list.kind === 'ask') for (const gap of list.gaps) showQuestion(gap, page);
    else showList(list, page);
  }
  if (noValue.length === 0) return;
  page.gap();
  page.title(noValueHeading);
  for (const sentence of noValue) page.item(sentence);
}

/** What an answer does: a sentence of its own where it names what is asked, else behind it. */
function showQuestion({ title, lines }: Gap, page: Page): void {
  const whole = lines.filter((line) => line.startsWith(`${title} `));
  const parts = lines.filter((line) => !whole.includes(line));
  for (const line of whole) page.item(line);
  if (parts.length > 0) page.item(`${title}: ${parts.join('; ')}`);
}

/** The observations in order, those that alone change nothing together at the end; what to take first is numbered. */
function showList({ kind, gaps }: GapList, page: Page): void {
  const isTogether = kind === 'missing' || kind === 'rough' || kind === 'more';
  const quiet = isTogether ? gaps.filter(({ lines }) => lines.length === 0) : [];
  gaps
    .filter((gap) => !quiet.includes(gap))
    .forEach(({ title, lines }, index) => {
      page.item(title, 0, kind === 'take' ? `${index + 1}.` : '-');
      for (const line of lines) page.text(line, 4);
    });
  if (quiet.length > 0) page.item(listed(quiet.map(({ title }) => title)));
}
