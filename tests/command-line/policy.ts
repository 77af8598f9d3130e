import { cp, mkdir, mkdtemp, rm, writeFile } from 'node:fs/promises';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterEach } from 'vitest';
import { ask, type Answer } from './ask.ts';

/** An invented ward with one protocol, in a folder of its own, and what a reader of it keeps. */
export interface Place {
  readonly protocols: string;
  readonly ward: string;
  readonly seen: string;
}

const ward = (edition: number, more = ''): string => `ward: small_ward
edition: ${edition}
title: A small ward
about: Invented, with invented people.
ladder: alder_ladder
${more}reads_with:
  - { protocol: one_threshold, edition: 1 }
`;

const cases = `ward: small_ward
cases:
  - case: Low
    given: { systolic: 88 }
    expect: { level: { at_least: call_doctor, settled: yes } }
`;

export const people = `people:
  - { name: Dr Ash, roles: [Doctor] }
  - { name: Sister Birch, roles: [Nurse] }
  - { name: Dr Elm, roles: [Doctor] }
`;

export const list = (more = people, signing = 'no'): string => `approvers: small_ward
signing: ${signing}
needs: [{ role: Doctor, people: 1 }, { role: Nurse, people: 1 }]
${more}`;

const folders: string[] = [];
afterEach(async () => {
  for (const folder of folders.splice(0)) await rm(folder, { recursive: true, force: true });
});

/** A folder that is gone after the test. */
export async function folderForTest(): Promise<string> {
  const folder = await mkdtemp(join(tmpdir(), 'vitalwright-'));
  folders.push(folder);
  return folder;
}

/** A ward policy that nobody has sealed, and a list of approvers that is not entered. */
export async function place(inside: string | null = null): Promise<Place> {
  const root = inside ?? (await folderForTest());
  const protocols = join(root, 'protocols');
  for (const name of ['alder_ladder', 'lessons/one_threshold'])
    await cp(join('protocols', name), join(protocols, name.replace('lessons/', '')), {
      recursive: true,
      filter: (path) => !path.includes('editions') && !path.includes('record'),
    });
  const folder = join(protocols, 'small_ward');
  await mkdir(folder);
  await writeFile(join(folder, 'ward.yaml'), ward(1));
  await writeFile(join(folder, 'cases.yaml'), cases);
  await writeFile(join(folder, 'approvers.yaml'), list());
  return { protocols, ward: folder, seen: join(root, 'seen') };
}

/** Gives the draft of the ward policy another number. */
export const draft = async ({ ward: folder }: Place, edition: number, more = ''): Promise<void> =>
  writeFile(join(folder, 'ward.yaml'), ward(edition, more));

/** A call at a time. Nothing is kept of what was seen, unless a folder for it is given. */
export const at = async (
  now: string,
  args: readonly string[],
  seenFolder: string | null = null,
): Promise<Answer> => ask(args, '', { now, today: now.slice(0, 10), seenFolder });

/** Makes the calls one after the other; each must end well. */
export async function steps(now: string, ...calls: readonly (readonly string[])[]): Promise<void> {
  for (const args of calls) {
    const answer = await at(now, args);
    if (answer.exit !== 0) throw new Error(`${args.join(' ')}: ${answer.out}${answer.err}`);
  }
}

export const enterList = (folder: string): readonly string[] => [
  'approvers',
  folder,
  '--agreed-by',
  'Dr Ash',
  '--agreed-by',
  'Sister Birch',
  '--minute',
  'Minute 1',
];
export const approval = (folder: string, edition: number, name: string, role: string): readonly string[] => [
  'approve',
  `${folder}@${edition}`,
  '--as',
  name,
  '--role',
  role,
  '--minute',
  `Minute ${edition + 1}`,
];
export const putting = (folder: string, edition: number, ...more: readonly string[]): readonly string[] => [
  'put-in-force',
  `${folder}@${edition}`,
  '--by',
  'Dr Ash',
  '--because',
  'Agreed by the council.',
  ...more,
];
export const reading = (folder: string, ...more: readonly string[]): readonly string[] => [
  'read',
  folder,
  '--in-force',
  '--set',
  '{ "systolic": 88 }',
  ...more,
];

/** Edition 1 of the ward policy, sealed on 2 March, approved by both, and in force from the morning of the 3rd. */
export async function inForce(): Promise<Place> {
  const made = await place();
  await steps(
    '2026-03-02T08:00:00Z',
    enterList(made.ward),
    ['seal', join(made.protocols, 'one_threshold')],
    ['seal', made.ward, '--author', 'Dr Elm'],
    approval(made.ward, 1, 'Dr Ash', 'Doctor'),
    approval(made.ward, 1, 'Sister Birch', 'Nurse'),
  );
  await steps('2026-03-03T08:00:00Z', putting(made.ward, 1));
  return made;
}

/** Edition 2, in force from the morning of the 10th. */
export async function twoInForce(): Promise<Place> {
  const made = await inForce();
  await draft(made, 2, 'review_by: 2026-12-31\n');
  await steps(
    '2026-03-09T08:00:00Z',
    ['seal', made.ward, '--author', 'Dr Elm'],
    approval(made.ward, 2, 'Dr Ash', 'Doctor'),
    approval(made.ward, 2, 'Sister Birch', 'Nurse'),
  );
  await steps('2026-03-10T08:00:00Z', putting(made.ward, 2));
  return made;
}
