import type { Browser, Locator, Page } from 'playwright-core';
import { openPage, type OpenedPage, type PageSize } from './room.ts';

/** The Write room in a page, and what the page did. */
export interface WriteRoom extends OpenedPage {
  readonly problems: Locator;
  readonly save: Locator;
  /** Puts the caret behind the last sign of the line that holds some words. */
  caretBehind(words: string): Promise<void>;
  /** Finds words in the field, and has them marked. */
  find(words: string): Promise<void>;
  part(name: 'protocol.yaml' | 'cases.yaml'): Promise<void>;
}

/** Opens the room with a protocol and waits until its cases were run. */
export async function openWrite(browser: Browser, url: string, size?: PageSize): Promise<WriteRoom> {
  return roomIn(await openPage(browser, url, size));
}

async function roomIn(opened: OpenedPage): Promise<WriteRoom> {
  const { page } = opened;
  await ready(page);
  const find = async (words: string): Promise<void> => {
    await page.locator('.text-field').click({ position: { x: 300, y: 60 } });
    await page.keyboard.press('Control+Home');
    await page.keyboard.press('Control+f');
    const box = page.getByRole('textbox', { name: 'Find' });
    const count = page.locator('.find-widget.visible .matchesCount');
    // What was looked for before is still counted until nothing is looked for.
    await box.fill('');
    await count.getByText('No results').waitFor();
    await box.fill(words);
    await count.getByText(/^1 of/).waitFor();
    await box.press('Escape');
    await page.locator('.find-widget.visible').waitFor({ state: 'detached' });
  };
  return {
    ...opened,
    problems: page.locator('.problems'),
    save: page.getByRole('button', { name: 'Save', exact: true }),
    find,
    caretBehind: async (words) => {
      await find(words);
      await page.keyboard.press('End');
    },
    part: async (name) => page.getByRole('group', { name: 'Files' }).getByRole('button', { name }).click(),
  };
}

/** Until the texts are shown and checked. */
export async function ready(page: Page): Promise<void> {
  await page.locator('.view-line').first().waitFor();
  await page.locator('.case, .mend-first, .cases .hint').first().waitFor();
}
