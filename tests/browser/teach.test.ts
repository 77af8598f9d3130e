import { readFileSync } from 'node:fs';
import type { Page } from 'playwright-core';
import { afterEach, expect, test } from 'vitest';
import { asRules, judge, readLessons, saidInWords, type SaidLevel } from '../../src/index.ts';
import type { SiteProtocol } from '../../src/command-line/site-protocols.ts';
import { askable, bundledText } from '../bundled.ts';
import { accessibilityFaults, fitsItsWidth, openPage, type OpenedPage, type PageSize } from './room.ts';
import { inBrowser } from './in-browser.ts';

const rooms = inBrowser();

afterEach(() => rooms.site.serveProtocols(null));

const lesson = 'lessons/two_signs_together';
const newly = 'Each number nearly fine, and newly confused';

const teach = async (id: string, name: string | null = null, size?: PageSize): Promise<OpenedPage> =>
  openPage(
    rooms.browser,
    `${rooms.site.origin}/#/teach/${id}${name === null ? '' : `?case=${encodeURIComponent(name)}`}`,
    size,
  );

const verdict = (page: Page): ReturnType<Page['getByRole']> =>
  page.getByRole('region', { name: 'Your answer' });

async function answerAs(page: Page, said: string): Promise<void> {
  await page.getByLabel(said, { exact: true }).check();
  await page.getByRole('button', { name: 'See what your ward’s rule says' }).click();
  await verdict(page).waitFor();
}

async function startAll(page: Page): Promise<void> {
  await page.getByLabel(/^Also the/).check();
  await page.getByRole('button', { name: /^Start: / }).click();
}

/** Goes through a deck with one and the same answer, and gives what was said of each case. */
async function goThrough(page: Page, said: string): Promise<{ name: string; flag: string }[]> {
  const shown: { name: string; flag: string }[] = [];
  for (;;) {
    await answerAs(page, said);
    shown.push({
      name: (await page.locator('.case-name').textContent()) ?? '',
      flag: (await page.locator('.verdict-flag').textContent()) ?? '',
    });
    await page
      .getByRole('button', { name: /^(?:Finish|Next case)$/ })
      .first()
      .click();
    const done = page.getByText(/^That was the deck/);
    await done
      .or(page.getByRole('button', { name: 'See what your ward’s rule says' }))
      .first()
      .waitFor();
    if (await done.isVisible()) return shown;
  }
}

test('a deck from its start to the export: each answer stands beside the rule as the library judges it', async () => {
  const { page, noise, requests } = await teach(lesson);
  await startAll(page);
  const asked = requests.length;
  const shown = await goThrough(page, 'Look again');
  const { lessons } = readLessons(askable(lesson), { file: 'c', text: bundledText(`${lesson}/cases.yaml`) });
  expect(new Set(shown.map(({ name }) => name))).toEqual(new Set(lessons.cards.map(({ name }) => name)));
  const titles = {
    as_the_rule_says: 'As the rule says',
    too_little: 'Called too little',
    too_much: 'Called too much',
    left_open: 'Left open by the rule',
  };
  const expected = new Map(lessons.cards.map((card) => [card.name, titles[judge(1, card.rules)]]));
  for (const { name, flag } of shown) expect(flag).toBe(expected.get(name));
  const missed = [...expected].filter(([, flag]) => flag.startsWith('Called')).map(([name]) => name);
  expect(missed.length).toBeGreaterThan(0);
  for (const name of missed) expect(shown.filter((each) => each.name === name).length).toBeGreaterThan(1);
  await page.getByRole('tab', { name: 'Results' }).click();
  const [file] = await Promise.all([
    page.waitForEvent('download'),
    page.getByRole('button', { name: 'Export as CSV' }).click(),
  ]);
  expect(file.suggestedFilename()).toBe('drill-results.csv');
  const lines = readFileSync(await file.path(), 'utf8')
    .trimEnd()
    .split('\r\n');
  expect(lines).toHaveLength(shown.length + 1);
  expect(lines.slice(1).every((line) => line.includes('two_signs_together'))).toBe(true);
  expect(requests.slice(asked).filter((url) => !url.startsWith('data:'))).toEqual([]);
  expect(noise).toEqual([]);
});

test('an address that names a case opens it, and nothing on the page gives it away before it is answered', async () => {
  const { page } = await teach('pressure_reading', newly);
  await page.getByText('She asks where her mother is.').waitFor();
  const body = page.locator('main');
  expect(await body.textContent()).not.toContain('nearly fine');
  expect(await body.textContent()).not.toContain('108 mmHg');
  await answerAs(page, 'Look again');
  expect(await page.locator('.case-name').textContent()).toBe(newly);
  expect(await verdict(page).textContent()).toContain('Called too little');
  expect(await verdict(page).textContent()).toContain('Your ward’s rule saysCall the doctor');
  expect(await verdict(page).textContent()).not.toMatch(/correct|wrong/i);
  expect(await body.textContent()).toContain('The cuff and the thermometer look fine');
  expect(await body.textContent()).toContain('108 mmHg');
  expect(await page.getByRole('region', { name: 'What would change it' }).textContent()).toMatch(
    /It would be higher with.*Emergency call.*It would be lower with/,
  );
});

test('one more observation is shown where the case gives it, and else told as not taken; each is said once', async () => {
  const { page } = await teach('pressure_reading', newly);
  const said = page.getByTestId('said');
  const ask = async (title: string): Promise<void> => {
    await page.getByLabel('Ask for one more observation').selectOption({ label: title });
    await page.getByRole('button', { name: 'Ask', exact: true }).click();
  };
  await ask('Systolic pressure');
  await expect.poll(async () => said.textContent()).toBe('Systolic pressure: 108 mmHg');
  await ask('Head injury');
  await expect.poll(async () => said.textContent()).toBe('Head injury: not taken');
  expect(await page.locator('.set').last().textContent()).toBe(
    'The setSystolic pressure108 mmHgHead injurynot taken',
  );
});

test('a drill by keys alone; the focus is never lost', async () => {
  const { page } = await teach(lesson);
  await page.getByLabel(/^Also the/).focus();
  await page.keyboard.press('Space');
  await page.keyboard.press('Shift+Tab');
  await page.keyboard.press('Enter');
  await page.locator('.case-name:focus').waitFor();
  await page.keyboard.press('Tab');
  while ((await focused(page)).startsWith('Show')) await page.keyboard.press('Enter');
  expect(await focused(page)).toMatch(/^That is all that was taken/);
  await page.getByLabel('Emergency call', { exact: true }).focus();
  await page.keyboard.press('ArrowDown');
  await page.keyboard.press('ArrowDown');
  expect(await page.getByLabel('Tell the nurse in charge', { exact: true }).isChecked()).toBe(true);
  await page.keyboard.press('Enter');
  await page.locator('.verdict h2:focus').waitFor();
  await page.keyboard.press('Tab');
  expect(await focused(page)).toBe('Next case');
  await page.keyboard.press('Enter');
  await page.locator('.case-name:focus').waitFor();
  expect(await page.locator('.case-name').textContent()).toBe('A patient');
});

const focused = async (page: Page): Promise<string> => page.evaluate('document.activeElement.textContent');

test('without a level nothing is held against the rule, and that is said', async () => {
  const { page } = await teach('pressure_reading', newly);
  await page.getByRole('button', { name: 'See what your ward’s rule says' }).click();
  await page.getByRole('alert').waitFor();
  expect(await page.getByRole('alert').textContent()).toContain('Say a level first');
  expect(await verdict(page).count()).toBe(0);
});

test('results are wiped only after asking, and hold none of the learner’s own words', async () => {
  const { page } = await teach('pressure_reading', newly);
  await page.getByLabel('In your own words (not kept)').fill('is it her own tooth');
  await answerAs(page, 'Look again');
  expect(await page.locator('.own-words').textContent()).toBe('is it her own tooth');
  const kept = 'JSON.stringify({ ...localStorage })';
  expect(await page.evaluate(kept)).toContain('too_little');
  expect(await page.evaluate(kept)).not.toContain('tooth');
  await page.getByRole('tab', { name: 'Results' }).click();
  const wipe = page.getByRole('button', { name: 'Wipe the results' });
  await wipe.click();
  await page.getByRole('alertdialog').waitFor();
  await page.keyboard.press('Escape');
  await page.getByRole('alertdialog').waitFor({ state: 'detached' });
  expect(await page.evaluate(kept)).toContain('too_little');
  await wipe.click();
  await page.getByRole('button', { name: 'Wipe them' }).click();
  await page.getByText('There are none yet.').waitFor();
  expect(await page.evaluate(kept)).toBe('{}');
});

test('what is printed is the handout alone: levels with hours, rules, sources, caution, edition and digest', async () => {
  const { page } = await teach('pressure_reading');
  await page.getByRole('tab', { name: 'Handout' }).click();
  await page.emulateMedia({ media: 'print' });
  const handout = page.getByRole('article');
  const text = await handout.innerText();
  for (const part of [
    'Night doctor (20:00 to 08:00)',
    'Why:',
    'Sources',
    'the paper policy wins',
    `edition ${askable('pressure_reading').protocol.edition}`,
  ])
    expect(text).toContain(part);
  expect(text).toContain(askable('pressure_reading').protocol.digest);
  expect(await page.locator('.head').isVisible()).toBe(false);
  expect(await page.getByRole('tablist').isVisible()).toBe(false);
  expect((await page.pdf({ format: 'A4' })).subarray(0, 5).toString()).toBe('%PDF-');
});

test('the room works once loaded without any network', async () => {
  const { page, noise } = await teach('pressure_reading', newly);
  await page.getByText('She asks where her mother is.').waitFor();
  await page.context().setOffline(true);
  await answerAs(page, 'Call the doctor');
  expect(await verdict(page).textContent()).toContain('As the rule says');
  expect(noise).toEqual([]);
});

const states: Readonly<Record<string, (page: Page) => Promise<void>>> = {
  choosing: async (page) => page.getByRole('button', { name: /^Start: / }).waitFor(),
  'mid drill': async (page) => {
    await page.getByRole('button', { name: /^Start: / }).click();
    await page.getByRole('button', { name: /^Show/ }).click();
    await page.getByText('Choose from the protocol’s questions').click();
  },
  'the answer shown': async (page) => {
    await page.getByRole('button', { name: /^Start: / }).click();
    await answerAs(page, 'Look again');
  },
  'the deck done': async (page) => {
    await page.goto(`${page.url()}?case=${encodeURIComponent(newly)}`);
    await answerAs(page, 'Look again');
    await page.getByRole('button', { name: 'Finish' }).first().click();
  },
  'results, and the dialog open': async (page) => {
    await states['the deck done']?.(page);
    await page.getByRole('tab', { name: 'Results' }).click();
    await page.getByRole('button', { name: 'Wipe the results' }).click();
    await page.getByRole('alertdialog').waitFor();
  },
  'the handout': async (page) => page.getByRole('tab', { name: 'Handout' }).click(),
};

const sizes: readonly PageSize[] = [
  { width: 1440, height: 900 },
  { width: 720, height: 450 },
  { width: 390, height: 844 },
];

test.each(Object.keys(states))(
  'nothing stands in the way of anybody, at any width: %s',
  async (name) => {
    for (const size of sizes) {
      const { page } = await teach('pressure_reading', null, size);
      await states[name]?.(page);
      await page.waitForTimeout(300);
      expect(await accessibilityFaults(page)).toEqual([]);
      expect(await fitsItsWidth(page)).toBe(true);
      expect(await smallTargets(page)).toEqual([]);
      await page.context().close();
    }
  },
  180_000,
);

/** What can be touched and is lower than 44 pixels. */
const smallTargets = async (page: Page): Promise<string[]> =>
  page.evaluate<
    string[]
  >(`[...document.querySelectorAll('main :is(button, select, label.say, label.tick, summary, [role=tab], textarea)')]
    .filter((each) => each.checkVisibility() && each.getBoundingClientRect().height < 44)
    .map((each) => each.outerHTML.slice(0, 80))`);

const ladder = (): SiteProtocol['ladder'] => ({
  file: 'ladder.yaml',
  text: bundledText('alder_ladder/ladder.yaml'),
});

const served = (change: Partial<SiteProtocol>): void =>
  rooms.site.serveProtocols([
    {
      kind: 'protocol',
      id: 'served',
      title: 'Served',
      file: 'protocol.yaml',
      text: bundledText('lessons/one_threshold/protocol.yaml'),
      ladder: ladder(),
      cases: null,
      ...change,
    },
  ]);

test('a protocol without cases, and one with problems, say what helps', async () => {
  served({});
  const { page } = await teach('served');
  await page.getByRole('heading', { name: 'There is nothing to practise on yet' }).waitFor();
  expect(await accessibilityFaults(page)).toEqual([]);
  served({ text: 'protocol: x' });
  const broken = await teach('served');
  await broken.page.getByRole('heading', { name: 'cannot be taught from yet' }).waitFor();
  expect(await accessibilityFaults(broken.page)).toEqual([]);
});

test('hostile and very long words never become markup, and never break the page', async () => {
  const attack = '<img src=x onerror="document.title=1"><script>document.title=2</script>';
  const long = `A${'very'.repeat(40)}longname`;
  const cases = bundledText('lessons/one_threshold/cases.yaml')
    .replace(/(- case: ).*/, `$1'${attack} ${long}'`)
    .replace(
      /\n( +)given:/,
      `\n$1story: '${attack} ${long}'\n$1teach: { common_mistake: '${attack}' }\n$1given:`,
    );
  served({
    title: attack,
    text: bundledText('lessons/one_threshold/protocol.yaml')
      .replace(/says: .*/, `says: '${attack}'`)
      .replace(/title: Systolic low/, `title: '${attack}'`),
    cases: { file: 'cases.yaml', text: cases },
  });
  const { page, noise } = await teach('served', null, { width: 390, height: 844 });
  await page.getByRole('button', { name: 'Start: 1 case' }).click();
  await answerAs(page, 'Look again');
  await page.locator('.mistake').getByText('onerror').waitFor();
  expect(await page.title()).toBe('Vitalwright');
  expect(await page.locator('img').count()).toBe(0);
  expect(await fitsItsWidth(page)).toBe(true);
  expect(await accessibilityFaults(page)).toEqual([]);
  await page.getByRole('tab', { name: 'Handout' }).click();
  await page.getByRole('article').waitFor();
  expect(await page.locator('img').count()).toBe(0);
  expect(noise).toEqual([]);
});

test('a learner’s answer for an unsettled set is kept in the words of the ladder', async () => {
  const name = 'Only the pressure was taken, and it is a good one';
  const { page } = await teach('child_low_pressure', name);
  const answer = readLessons(askable('child_low_pressure'), {
    file: 'c',
    text: bundledText('child_low_pressure/cases.yaml'),
  }).answer(name);
  const rule: SaidLevel = asRules(answer?.rules ?? null);
  await answerAs(page, saidInWords(rule, answer?.sheet.level.ladder ?? []));
  expect(rule).toBe('complete_the_set');
  expect(await verdict(page).textContent()).toContain('As the rule says');
  await page.emulateMedia({ reducedMotion: 'reduce' });
  expect(await page.evaluate(`getComputedStyle(document.querySelector('.level')).borderTopStyle`)).toBe(
    'dashed',
  );
});
