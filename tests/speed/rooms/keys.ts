import type { Page } from 'playwright-core';

/**
 * Put into a page before it loads: notes how long each question to a worker takes, the way there and back included, and every task
 * that keeps the page busy for more than 50 ms.
 */
export const watch = `
  window.taken = { check: [], map: [], requirements: [] };
  window.busy = [];
  const post = Worker.prototype.postMessage;
  Worker.prototype.postMessage = function (message) {
    const kind = message?.question?.kind;
    if (kind === 'check' || kind === 'map' || kind === 'requirements') {
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

/** Milliseconds from each question to its answer, and of each task that kept the page busy. */
export interface Taken {
  readonly check: readonly number[];
  readonly map: readonly number[];
  readonly requirements: readonly number[];
  readonly busy: readonly number[];
}

/** Types keys behind the first place of some words in the text, each after the answer to the one before; `<` takes one back. */
export async function typed(page: Page, words: string, keys: string): Promise<Taken> {
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
  await page.evaluate(`window.taken = { check: [], map: [], requirements: [] }; window.busy = [];`);
  for (const key of keys) {
    await page.keyboard.press(key === '<' ? 'Backspace' : key);
    await page.waitForTimeout(260);
  }
  await page.waitForTimeout(1500);
  return page.evaluate('({ ...window.taken, busy: window.busy })');
}

/** The time within which so many of a hundred stay. */
export function within(times: readonly number[], hundredths: number): number {
  const sorted = times.toSorted((left, right) => left - right);
  return sorted[Math.min(sorted.length - 1, Math.floor((sorted.length * hundredths) / 100))] ?? NaN;
}
