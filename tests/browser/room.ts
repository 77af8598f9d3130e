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

/** How large a page is, in pixels. */
export interface PageSize {
  readonly width: number;
  readonly height: number;
}

/** A page, and what it did. */
export interface OpenedPage {
  readonly page: Page;
  /** What the page wrote to the console, and errors that nobody caught. */
  readonly noise: readonly string[];
  /** Addresses that were asked for. */
  readonly requests: readonly string[];
}

/** A page with the Bedside room in it. */
export interface Room extends OpenedPage {
  readonly outcome: Locator;
  /** What a screen reader is told, each time that it changes. */
  heard(): Promise<readonly string[]>;
  /** Types a value into a field and moves on. */
  enter(title: string, value: string): Promise<void>;
}

const pictures = fileURLToPath(new URL('../../dist/pictures/', import.meta.url));

/** Opens an address in a context of its own. When the test fails, a picture of it is left in dist/pictures/. */
export async function openPage(
  browser: Browser,
  url: string,
  size: PageSize = { width: 1440, height: 900 },
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

/** Keeps what a screen reader is told, each time that it changes. */
export async function listen(page: Page): Promise<void> {
  await page.evaluate(`(() => {
    window.heard = [];
    const said = document.querySelector('[data-testid=said]');
    new MutationObserver(() => window.heard.push(said.textContent))
      .observe(said, { childList: true, characterData: true, subtree: true });
  })()`);
}

/** All that was told since `listen`. */
export const heardOn = async (page: Page): Promise<readonly string[]> => page.evaluate('window.heard');

/** How many places tell a screen reader of changes by themselves; what lies behind a dialog does not. */
export const liveRegions = async (page: Page): Promise<number> =>
  page.evaluate(`[...document.querySelectorAll('[role=status], [role=alert], [role=log], [aria-live]:not([aria-live=off])')]
    .filter((each) => each.closest('[aria-hidden=true], [inert]') === null).length`);

/** What moves on a page by itself. */
export const moving = async (page: Page): Promise<string[]> =>
  page.evaluate(`[...document.querySelectorAll('*')].filter((each) => {
    const { transitionDuration, animationDuration, scrollBehavior } = getComputedStyle(each);
    const seconds = [transitionDuration, animationDuration].flatMap((all) => all.split(',').map(parseFloat));
    return scrollBehavior === 'smooth' || seconds.some((each) => each > 0.01);
  }).map((each) => each.outerHTML.slice(0, 80))`);

/** Whether nothing of a page lies beside it. */
export const fitsItsWidth = async (page: Page): Promise<boolean> =>
  page.evaluate('document.documentElement.scrollWidth <= innerWidth');

/** Opens the Bedside room. */
export async function openRoom(browser: Browser, url: string, size?: PageSize): Promise<Room> {
  const opened = await openPage(browser, url, size);
  const { page } = opened;
  const outcome = page.locator('#outcome');
  await outcome.waitFor();
  await listen(page);
  return {
    ...opened,
    outcome,
    heard: async () => heardOn(page),
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
