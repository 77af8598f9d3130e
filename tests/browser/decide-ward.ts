import { rm, writeFile } from 'node:fs/promises';
import { dirname, join } from 'node:path';
import type { Page } from 'playwright-core';
import { onTestFinished } from 'vitest';
import { editionAt } from '../../src/command-line/site-editions.ts';
import { siteBelow } from '../../src/command-line/site-protocols.ts';
import { newKey, type PrivateKey } from '../../src/editions/signatures.ts';
import { enterList, list, place, steps, type Place } from '../command-line/policy.ts';
import { openSite } from '../command-line/save-site.ts';
import { sealHere } from '../command-line/seal-here.ts';
import { terminalNow } from '../command-line/terminal-at.ts';

/** An invented ward that is served as `vitalwright serve` does it, by the clock of this machine. */
export interface ServedWard {
  readonly made: Place;
  readonly origin: string;
}

/** Serves a ward over the built rooms, until the test is over. */
async function serveWard(made: Place, built: string): Promise<ServedWard> {
  const clock = terminalNow(made.seen);
  const site = await openSite({
    folder: built,
    saves: made.protocols,
    decides: clock,
    seal: sealHere(clock),
    protocols: async () => JSON.stringify(await siteBelow(made.protocols, true, clock)),
    edition: async (address) => editionAt(made.protocols, address),
  });
  onTestFinished(async () => site.close());
  return { made, origin: `http://127.0.0.1:${site.port}` };
}

export const now = (): string => new Date().toISOString();

/** A ward with a list of approvers, and nothing sealed but the protocol that it reads with. */
export async function listedWard(built: string): Promise<ServedWard> {
  const made = await place();
  await steps(now(), enterList(made.ward), ['seal', join(made.protocols, 'one_threshold')]);
  return serveWard(made, built);
}

/** A ward whose entries are signed, with edition 1 sealed; each key is in a file of its own. */
export async function signedWard(
  built: string,
): Promise<ServedWard & { readonly ash: PrivateKey; readonly files: readonly [ash: string, birch: string] }> {
  const made = await place();
  const [ash, birch] = [await newKey(), await newKey()];
  const folder = dirname(made.protocols);
  const files = [join(folder, 'ash.jwk'), join(folder, 'birch.jwk')] as const;
  await writeFile(files[0], JSON.stringify(ash));
  await writeFile(files[1], JSON.stringify(birch));
  onTestFinished(async () =>
    Promise.all(files.map(async (file) => rm(file, { force: true }))).then(() => undefined),
  );
  const people = `people:
  - { name: Dr Ash, roles: [Doctor], key: ${ash.x} }
  - { name: Sister Birch, roles: [Nurse], key: ${birch.x} }
`;
  await writeFile(join(made.ward, 'approvers.yaml'), list(people, 'yes'));
  await steps(
    now(),
    [...enterList(made.ward), '--key', files[0], '--key', files[1]],
    ['seal', join(made.protocols, 'one_threshold')],
    ['seal', made.ward, '--author', 'Dr Elm'],
  );
  return { ...(await serveWard(made, built)), ash, files };
}

/** What is said once something was entered. */
export const entered = async (page: Page): Promise<string> => {
  await page.getByRole('dialog').waitFor({ state: 'detached' });
  return page.locator('.decide-said').innerText();
};

export async function approve(page: Page, by: string, minute: string): Promise<void> {
  await page.getByRole('button', { name: 'Approve…' }).click();
  await page.getByLabel('Who approves').selectOption(by);
  await page.getByLabel('Where the decision stands in the minutes').fill(minute);
  await page.getByRole('button', { name: 'Approve it' }).click();
}
