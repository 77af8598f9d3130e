import { mkdirSync } from 'node:fs';
import { fileURLToPath } from 'node:url';
import type { Browser, Locator, Page } from 'playwright-core';
import { onTestFailed } from 'vitest';

/** The Write room in a page, and what the page did. */
export interface WriteRoom {
  readonly page: Page;
  /** What the page wrote to the console, and errors that nobody caught. */
  readonly noise: readonly string[];
  readonly requests: readonly string[];
  readonly problems: Locator;
  readonly save: Locator;
  /** Puts the caret behind the last sign of the line that holds some words. */
  caretBehind(words: string): Promise<void>;
  /** Finds words in the field, and has them marked. */
  find(words: string): Promise<void>;
  part(name: 'protocol.yaml' | 'cases.yaml'): Promise<void>;
}

const pictures = fileURLToPath(new URL('../../dist/pictures/', import.meta.url));

/** Opens the room with a protocol and waits until its cases were run. When the test fails, a picture of it is left in dist/pictures/. */
export async function openWrite(
  browser: Browser,
  url: string,
  size = { width: 1440, height: 900 },
): Promise<WriteRoom> {
  const context = await browser.newContext({ viewport: size });
  const page = await context.newPage();
  const [noise, requests]: [string[], string[]] = [[], []];
  page.on('console', (message) => noise.push(message.text()));
  page.on('pageerror', (error) => noise.push(error.message));
  page.on('request', (request) => requests.push(request.url()));
  onTestFailed(async ({ task }) => {
    mkdirSync(pictures, { recursive: true });
    await page.screenshot({
      path: `${pictures}write_${task.name.replace(/\W+/g, '_').slice(0, 80)}.png`,
      fullPage: true,
    });
  });
  await page.goto(url);
  return roomIn(page, noise, requests);
}

async function roomIn(page: Page, noise: string[], requests: string[]): Promise<WriteRoom> {
  await ready(page);
  const find = async (words: string): Promise<void> => {
    await page.locator('.text-field').click({ position: { x: 300, y: 60 } });
    await page.keyboard.press('Control+Home');
    await page.keyboard.press('Control+f');
    const box = page.getByRole('textbox', { name: 'Find' });
    await box.fill(words);
    await page.locator('.find-widget.visible .matchesCount').getByText(/of/).waitFor();
    await box.press('Enter');
    await box.press('Escape');
    await page.locator('.find-widget.visible').waitFor({ state: 'detached' });
  };
  return {
    page,
    noise,
    requests,
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
