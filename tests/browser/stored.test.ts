import { readFile, writeFile } from 'node:fs/promises';
import { dirname, join } from 'node:path';
import { expect, onTestFinished, test } from 'vitest';
import { ask } from '../command-line/ask.ts';
import { inForce } from '../command-line/policy.ts';
import { openSite } from '../command-line/save-site.ts';
import { inBrowser } from './in-browser.ts';
import { accessibilityFaults, fitsItsWidth, openPage } from './room.ts';

// A site of files: what was worked out is shown as true of the very texts beside it, and of no others.

const rooms = inBrowser();

/** A site of files of a small ward, served by a server that knows nothing but files. */
async function siteOfFiles(): Promise<{ readonly folder: string; readonly origin: string }> {
  const made = await inForce();
  const folder = join(dirname(made.protocols), 'rooms');
  const now = '2026-03-03T12:00:00Z';
  const { exit, err } = await ask(['build', made.protocols, '--to', 'site', '--out', folder], '', {
    now,
    today: now.slice(0, 10),
  });
  expect({ exit, err }).toEqual({ exit: 0, err: '' });
  const site = await openSite({
    folder,
    saves: null,
    protocols: async () => readFile(join(folder, 'protocols.json'), 'utf8'),
    edition: async (address) => readFile(join(folder, address), 'utf8').catch(() => null),
  });
  onTestFinished(async () => site.close());
  return { folder, origin: `http://127.0.0.1:${site.port}` };
}

const review = '/#/review/small_ward';

test('stored results are shown with the digest that they are of, and nothing can be decided', async () => {
  expect(rooms.site.built).not.toBe('');
  const { origin } = await siteOfFiles();
  const { page, noise, requests } = await openPage(rooms.browser, `${origin}${review}`, {
    width: 390,
    height: 844,
  });
  await page.getByText(/^Of these very texts, sha256:[0-9a-f]{12}: each was compared just now\./).waitFor();
  await page.getByRole('heading', { name: 'Compared with edition 1' }).waitFor();
  expect(await fitsItsWidth(page)).toBe(true);
  expect(await accessibilityFaults(page)).toEqual([]);
  await page.getByRole('tab', { name: 'Decide' }).click();
  await page.getByText('These rooms are files: what is shown here is the record as it was').waitFor();
  expect(await page.getByRole('button', { name: /…$/ }).count()).toBe(0);
  expect(noise).toEqual([]);
  expect(requests.filter((url) => !url.startsWith(origin))).toEqual([]);
});

test.each(['ward.yaml', 'one_threshold', 'edition'])(
  'with another %s beside them, nothing of them is shown, and it is said which file differs',
  async (what) => {
    const { folder, origin } = await siteOfFiles();
    if (what === 'edition') {
      const path = join(folder, 'editions/small_ward/1.yaml');
      await writeFile(path, (await readFile(path, 'utf8')).replace('A small ward', 'A smaller ward'));
    } else {
      const path = join(folder, 'protocols.json');
      const [from, to] =
        what === 'ward.yaml' ? ['Invented, with', 'Invented with'] : ['at_most: 90', 'at_most: 80'];
      await writeFile(path, (await readFile(path, 'utf8')).replaceAll(from, to));
    }
    const { page } = await openPage(rooms.browser, `${origin}${review}`);
    await page.getByText('These results are of other texts than those beside them').waitFor();
    const files = {
      'ward.yaml': 'small_ward/ward.yaml',
      one_threshold: 'one_threshold/protocol.yaml',
      edition: 'small_ward/editions/1.yaml',
    };
    expect(await page.getByText('Changed since, or gone:').innerText()).toContain(
      files[what as keyof typeof files],
    );
    expect(await page.getByText('Of these very texts').count()).toBe(0);
    expect(await page.getByRole('heading', { name: 'What must always hold' }).count()).toBe(0);
  },
);

test('results that name other digests than their own are not shown', async () => {
  const { folder, origin } = await siteOfFiles();
  const path = join(folder, 'stored.json');
  const text = await readFile(path, 'utf8');
  const [, file = ''] = /"of":\[(\{[^}]*\},)/.exec(text) ?? [];
  await writeFile(path, text.replaceAll(file, ''));
  const { page } = await openPage(rooms.browser, `${origin}${review}`);
  await page.getByText('What was stored cannot be read, or is not whole').waitFor();
  expect(await page.getByText('Of these very texts').count()).toBe(0);
});
