import { mkdtempSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { pathToFileURL } from 'node:url';
import type { Browser } from 'playwright-core';
import { afterAll, beforeAll, expect, test } from 'vitest';
import { handbookToHtml } from '../../src/handbook/handbook.ts';
import { teacherOf } from '../../src/teach/teacher.ts';
import { bundledWard } from '../bundled.ts';
import { accessibilityFaults, openBrowser, openPage, type OpenedPage } from './room.ts';

const folder = mkdtempSync(join(tmpdir(), 'vitalwright-handbook-'));
const file = join(folder, 'handbook.html');
let browser: Browser;

beforeAll(async () => {
  const reads = bundledWard();
  const teacher = teacherOf(reads, null);
  writeFileSync(
    file,
    handbookToHtml({ reads, teacher, accepted: [], proofs: [], changes: null, edition: null }),
  );
  browser = await openBrowser();
}, 120_000);

afterAll(async () => {
  await browser.close();
  rmSync(folder, { recursive: true });
});

/** As wide as the printed part of an A4 page, in pixels of 1/96 inch. */
const paper = { width: Math.floor((180 / 25.4) * 96), height: 900 };

const opened = async (): Promise<OpenedPage> => openPage(browser, pathToFileURL(file).href, paper);

test('the page loads nothing beside itself, and its own policy lets its style through', async () => {
  const { page, noise, requests } = await opened();
  expect(noise).toEqual([]);
  expect(requests).toEqual([pathToFileURL(file).href]);
  expect(await page.evaluate(`getComputedStyle(document.querySelector('ul.logic')).listStyleType`)).toBe(
    'none',
  );
});

test('the page has no fault of accessibility that a tool can find', async () => {
  const { page } = await opened();
  expect(await accessibilityFaults(page)).toEqual([]);
});

test('on paper the digest and the caution are repeated on every page', async () => {
  const { page } = await opened();
  await page.emulateMedia({ media: 'print' });
  const shown = (selector: string): Promise<unknown> =>
    page.evaluate(
      `(({ display, breakInside }) => [display, breakInside])(getComputedStyle(document.querySelector('${selector}')))`,
    );
  expect(await shown('.running.top')).toEqual(['table-header-group', 'avoid']);
  expect(await shown('.running.bottom')).toEqual(['table-footer-group', 'avoid']);
});

test('each paper sheet fits one page, beside what every page carries', async () => {
  const { page } = await opened();
  await page.emulateMedia({ media: 'print' });
  const heights = async (selector: string): Promise<number[]> =>
    page.evaluate<number[]>(
      `[...document.querySelectorAll('${selector}')].map((each) => Math.ceil(each.getBoundingClientRect().height))`,
    );
  const room = Math.floor(((297 - 11 - 12) / 25.4) * 96);
  const running = (await heights('.running')).reduce((sum, each) => sum + each, 0);
  const sheets = await heights('.sheet');
  expect(running).toBeGreaterThan(20);
  expect(sheets).toHaveLength(bundledWard().members.length);
  expect(Math.max(...sheets)).toBeLessThanOrEqual(room - running);
});
