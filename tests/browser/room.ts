import { mkdirSync } from 'node:fs';
import { fileURLToPath } from 'node:url';
import axe from 'axe-core';
import { chromium, type Browser, type Locator, type Page } from 'playwright-core';
import { onTestFailed } from 'vitest';
import { findBrowser } from '../../.config/browser.mjs';

const flags = [
  '--disable-gpu',
  '--disable-quic',
  '--no-first-run',
  '--disable-background-networking',
  '--disable-component-update',
  '--disable-sync',
];

/** A real browser. Throws when there is none: these tests are never left out. */
export async function openBrowser(): Promise<Browser> {
  const executablePath = findBrowser();
  if (executablePath === null)
    throw new Error('There is no Chromium: install one, or name it in CHROME_PATH.');
  const sandbox = process.getuid?.() === 0 ? ['--no-sandbox'] : [];
  return chromium.launch({ executablePath, args: [...flags, ...sandbox] });
}

/** One page with a room in it, and what it did. */
export interface Room {
  readonly page: Page;
  /** What the page wrote to the console, and errors that nobody caught. */
  readonly noise: readonly string[];
  /** Addresses that were asked for. */
  readonly requests: readonly string[];
  readonly outcome: Locator;
  /** What a screen reader is told, each time that it changes. */
  heard(): Promise<readonly string[]>;
  /** Types a value into a field and moves on. */
  enter(title: string, value: string): Promise<void>;
}

const pictures = fileURLToPath(new URL('../../dist/pictures/', import.meta.url));

/** A page, and what it did. */
export type OpenedPage = Pick<Room, 'page' | 'noise' | 'requests'>;

/** Opens an address in a context of its own. When the test fails, a picture of it is left in dist/pictures/. */
export async function openPage(
  browser: Browser,
  url: string,
  size = { width: 1440, height: 900 },
): Promise<OpenedPage> {
  const context = await browser.newContext({ viewport: size });
  const page = await context.newPage();
  const [noise, requests]: [string[], string[]] = [[], []];
  page.on('console', (message) => noise.push(message.text()));
  page.on('pageerror', (error) => noise.push(error.message));
  page.on('request', (request) => requests.push(request.url()));
  onTestFailed(async ({ task }) => {
    mkdirSync(pictures, { recursive: true });
    await page.screenshot({
      path: `${pictures}${task.name.replace(/\W+/g, '_').slice(0, 80)}.png`,
      fullPage: true,
    });
  });
  await page.goto(url);
  return { page, noise, requests };
}

/** Opens the Bedside room. */
export async function openRoom(
  browser: Browser,
  url: string,
  size?: { width: number; height: number },
): Promise<Room> {
  const { page, noise, requests } = await openPage(browser, url, size);
  const outcome = page.locator('#outcome');
  await outcome.waitFor();
  await page.evaluate(`
    window.heard = [];
    new MutationObserver(() => window.heard.push(document.querySelector('[data-testid="said"]').textContent))
      .observe(document.querySelector('[data-testid="said"]'), { childList: true, characterData: true, subtree: true });
  `);
  return {
    page,
    noise,
    requests,
    outcome,
    heard: async () => page.evaluate('window.heard'),
    enter: async (title, value) => {
      await page.getByLabel(title, { exact: true }).fill(value);
      await page.keyboard.press('Enter');
    },
  };
}

interface Violation {
  readonly id: string;
  readonly impact: string | null;
  readonly nodes: readonly { readonly html: string }[];
}

/** What the checks of accessibility find on a page, each as its rule and the first place. */
export async function accessibilityFaults(page: Page): Promise<string[]> {
  await page.evaluate(axe.source);
  const { violations } = await page.evaluate<{ violations: readonly Violation[] }>(
    `axe.run(document, { runOnly: ['wcag2a', 'wcag2aa', 'wcag21a', 'wcag21aa', 'wcag22aa', 'best-practice'] })`,
  );
  return violations.map(({ id, impact, nodes }) => `${id} (${impact ?? ''}): ${nodes[0]?.html ?? ''}`);
}
