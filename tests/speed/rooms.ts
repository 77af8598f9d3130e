import { chromium, type Page } from 'playwright-core';
import { findBrowser } from '../../.config/browser.mjs';
import { siteBelow } from '../../src/command-line/site-protocols.ts';
import { buildSite } from '../browser/site.ts';

// How fresh the Write room is after a keystroke, in headless Chromium: milliseconds from the question to the answer of its worker, the
// way there and back included; and how long a key keeps the page itself busy.

/** Milliseconds; of ninety-five keystrokes in a hundred. */
const allowed = { check: 50, map: 100, busy: 50 };

/** Notes how long each question to a worker takes, and every task that keeps the page busy for more than 50 ms. */
const watch = `
  window.taken = { check: [], map: [] };
  window.busy = [];
  const post = Worker.prototype.postMessage;
  Worker.prototype.postMessage = function (message) {
    const kind = message?.question?.kind;
    if (kind === 'check' || kind === 'map') {
      const asked = performance.now();
      const hear = ({ data }) => {
        if (data.id !== message.id) return;
        this.removeEventListener('message', hear);
        window.taken[kind].push(performance.now() - asked);
      };
      this.addEventListener('message', hear);
    }
    return post.call(this, message);
  };
  new PerformanceObserver((list) => window.busy.push(...list.getEntries().map(({ duration }) => duration)))
    .observe({ type: 'longtask' });
`;

const part = (times: readonly number[], share: number): number =>
  times.toSorted((left, right) => left - right)[
    Math.min(times.length - 1, Math.floor(times.length * share))
  ] ?? NaN;

interface Taken {
  readonly check: readonly number[];
  readonly map: readonly number[];
  readonly busy: readonly number[];
}

/** What people type: words, numbers and mistakes, in the middle of a text; each key is answered before the next. */
async function typed(page: Page, words: string, keys: string): Promise<Taken> {
  await page.locator('.text-field').click({ position: { x: 300, y: 60 } });
  await page.keyboard.press('Control+Home');
  await page.keyboard.press('Control+f');
  const box = page.getByRole('textbox', { name: 'Find' });
  await box.fill(words);
  await page.locator('.find-widget.visible .matchesCount').getByText(/of/).waitFor();
  await box.press('Enter');
  await box.press('Escape');
  await page.keyboard.press('ArrowRight');
  await page.waitForTimeout(1500);
  await page.evaluate(`window.taken = { check: [], map: [] }; window.busy = [];`);
  for (const key of keys) {
    await page.keyboard.press(key === '<' ? 'Backspace' : key);
    await page.waitForTimeout(260);
  }
  await page.waitForTimeout(1500);
  return page.evaluate('({ ...window.taken, busy: window.busy })');
}

function tell(what: string, times: readonly number[], most: number): void {
  const p95 = part(times, 0.95);
  const words = `median ${part(times, 0.5).toFixed(0)} ms, 95 in 100 within ${p95.toFixed(0)} ms of ${times.length} (at most ${most})`;
  process.stdout.write(`${what}: ${words}\n`);
  if (!(p95 <= most)) process.exitCode = 1;
}

/** A protocol of so many rules with so many cases, for figures of what stays usable. */
function large(rules: number, cases: number): { protocol: string; cases: string } {
  const head = `protocol: large\nedition: 1\ntitle: Large\nladder: alder_ladder\nowners: [nobody]\nsources:\n  made_up: { cite: "Common practice, no published source" }\nobservations:\n  needs: [systolic, heart_rate]\nrules:\n`;
  const rule = (_: unknown, at: number): string =>
    `  - rule: rule_${at}\n    title: Rule ${at}\n    when: { systolic: { below: ${40 + (at % 200)} }, heart_rate: { above: ${50 + (at % 97)} } }\n    level: call_doctor\n    says: Words of rule ${at}.\n    source: [made_up]\n`;
  const one = (_: unknown, at: number): string =>
    `  - case: Case ${at}\n    given: { systolic: ${60 + (at % 150)}, heart_rate: ${40 + (at % 120)} }\n    expect: { level: { settled: yes } }\n`;
  return {
    protocol: head + Array.from({ length: rules }, rule).join(''),
    cases: `protocol: large\ncases:\n${Array.from({ length: cases }, one).join('')}`,
  };
}

const site = await buildSite();
const executablePath = findBrowser();
if (executablePath === null) throw new Error('There is no Chromium: install one, or name it in CHROME_PATH.');
const sandbox = process.getuid?.() === 0 ? ['--no-sandbox'] : [];
const browser = await chromium.launch({ executablePath, args: ['--disable-gpu', ...sandbox] });
try {
  const open = async (id: string): Promise<Page> => {
    const page = await browser.newPage({ viewport: { width: 1440, height: 900 } });
    await page.addInitScript(watch);
    await page.goto(`${site.origin}/#/write/${id}`);
    await page.locator('.case').first().waitFor({ timeout: 120_000 });
    return page;
  };
  const page = await open('reading_technique');
  const words = await typed(page, 'says: ', 'Now and then ');
  const numbers = await typed(page, 'at_least: ', '1<1<1<1<1<1<');
  const broken = await typed(page, 'level: ', 'xyz<<<');
  const all = [words, numbers, broken];
  tell('fresh after a key in words', words.check, allowed.check);
  tell('fresh after a key in a number', numbers.check, allowed.check);
  tell(
    'fresh after a key, all',
    all.flatMap(({ check }) => check),
    allowed.check,
  );
  tell(
    'the page is busy for',
    all.flatMap(({ busy }) => [0, ...busy]),
    allowed.busy,
  );
  await page.close();
  const drawn = await open('pressure_reading');
  await drawn.getByRole('tab', { name: 'Map' }).click();
  await drawn.locator('.map-plot svg').waitFor();
  tell('the map after a key', (await typed(drawn, 'says: ', 'Now and then ')).map, allowed.map);
  await drawn.close();
  const [sample] = (await siteBelow('protocols', false)).protocols.filter(
    ({ id }) => id === 'pressure_reading',
  );
  const made = large(500, 2000);
  if (!sample) throw new Error('there is no protocol to borrow a ladder from');
  const file = 'large/protocol.yaml';
  const cases = { file: 'large/cases.yaml', text: made.cases };
  site.serveProtocols([{ ...sample, id: 'large', title: 'Large', file, text: made.protocol, cases }]);
  const huge = await open('large');
  const { check, busy } = await typed(huge, 'Words of rule 250', ' and so on');
  process.stdout.write(
    `500 rules, 2,000 cases: fresh after ${part(check, 0.5).toFixed(0)} ms (median), the page busy for up to ${Math.max(0, ...busy).toFixed(0)} ms\n`,
  );
} finally {
  await browser.close();
  await site.close();
}
