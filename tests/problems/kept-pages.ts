import { readFileSync } from 'node:fs';
import { parse } from 'yaml';
import { checkList } from '../../src/editions/check-list.ts';
import { reportApproval, reportPut } from '../../src/editions/approvals.ts';
import { editionToText } from '../../src/editions/edition-to-text.ts';
import { entryText, makersOf, withDigest } from '../../src/editions/entry.ts';
import { headOf, type Ledger } from '../../src/editions/record.ts';
import { sealed } from '../../src/editions/seal.ts';
import { notAsSeen } from '../../src/editions/seen.ts';
import { newKey, signatureOf, type Draft, type PrivateKey } from '../../src/editions/signatures.ts';
import { textToEdition } from '../../src/editions/text-to-edition.ts';
import { textsToRecord, type EntryText } from '../../src/editions/texts-to-record.ts';
import { protocolToEdition } from '../../src/editions/to-edition.ts';
import { readLadder, readProtocol } from '../../src/index.ts';
import { reporter, type Finding } from '../../src/problems/problem.ts';
import { textToFile } from '../../src/shape/text-to-file.ts';
import type { EditionFile, RecordEntry } from '../../src/shape/generated/types.ts';

// What the pages of sealed editions, of records and of lists of approvers are about: only what matters stands in a page; the rest is here.

const own = 'example_ward';
const digest = `sha256:${'1'.repeat(64)}`;
const at = '2026-03-02T08:00:00Z';

/** The codes of the problems of a list of approvers. */
export function codesOfApprovers(text: string): string[] {
  const { value, problems } = textToFile('approvers', 'approvers.yaml', text);
  const findings: Finding[] = [];
  const report = reporter(findings);
  if (value && value.approvers !== own)
    report('approvers_of_another', ['approvers'], { name: value.approvers, own });
  if (value) checkList(value, [], report);
  return [...problems, ...findings].map(({ code }) => code);
}

const folder = new URL('../../protocols/', import.meta.url);
const textAt = (path: string): string => readFileSync(new URL(path, folder), 'utf8');

const wholeEdition = (): string => {
  const [ladderText, text, cases] = [
    'alder_ladder/ladder',
    'lessons/one_threshold/protocol',
    'lessons/one_threshold/cases',
  ].map((path) => textAt(`${path}.yaml`)) as [string, string, string];
  const { protocol } = readProtocol('protocol.yaml', text, {
    ladder: readLadder('ladder.yaml', ladderText).ladder,
  });
  if (!protocol) throw new Error('the lesson has problems');
  const about = { kit: '0.1.0', sealedOn: '2026-03-02', authors: [], approvers: null };
  return editionToText(
    protocolToEdition(protocol, { ladder: ladderText, texts: { one_threshold: text }, cases }, about),
  );
};

/** The codes of the problems of a sealed edition in which one thing was changed. */
export function codesOfEdition(text: string): string[] {
  const page = parse(text) as { instead_of: string; stands: string; sealed_anew: string; stands_as?: number };
  const whole = wholeEdition();
  if (!whole.includes(page.instead_of)) throw new Error(`it does not hold ${page.instead_of}`);
  const changed = whole.replace(page.instead_of, page.stands);
  const stands =
    page.sealed_anew === 'yes' ? sealed(changed.slice(0, changed.lastIndexOf('seal: '))) : changed;
  const { problems } = textToEdition('1.yaml', stands, {
    name: 'one_threshold',
    edition: page.stands_as ?? 1,
  });
  return problems.map(({ code }) => code);
}

interface Step extends Partial<Record<'approvers' | 'approved' | 'in_force' | 'withdrawn', object>> {
  /** Other parts of the entry, before its digest is on it; and after. */
  readonly with?: object;
  readonly then?: object;
  /** Whose key signs for whom; everybody's own, where entries are signed. */
  readonly signed_by?: Readonly<Record<string, string>>;
}

interface RecordPage {
  readonly entries: readonly Step[];
  readonly first?: string;
  readonly signing?: string;
  readonly asks?: 'approval' | 'put';
  readonly edition?: {
    readonly authors?: readonly string[];
    readonly seal?: string;
    readonly sealed_after_entry?: number;
  };
  readonly seen?: number;
  readonly seen_otherwise?: string;
}

const keys = new Map<string, Promise<PrivateKey>>();
async function keyOf(name: string): Promise<PrivateKey> {
  const key = keys.get(name) ?? newKey();
  keys.set(name, key);
  return key;
}

const named = { edition: 1, digest, seal: digest, by: 'Dr Ash' };
const usual = {
  approved: { ...named, role: 'Doctor', minute: 'Minute 1', on: '2026-03-02' },
  in_force: { ...named, from: at, because: 'Agreed.' },
  withdrawn: { by: 'Dr Ash', from: at, because: 'Wrong.', instead: 'Paper.' },
} as const;

async function usualList(signing: string): Promise<object> {
  const person = async (name: string, role: string): Promise<object> => ({
    name,
    roles: [role],
    ...(signing === 'yes' ? { key: (await keyOf(name)).x } : {}),
  });
  return {
    signing,
    needs: [
      { role: 'Doctor', people: 1 },
      { role: 'Nurse', people: 1 },
    ],
    people: [await person('Dr Ash', 'Doctor'), await person('Sister Birch', 'Nurse')],
    minute: 'Minute 1',
    on: '2026-03-02',
    agreed_by: ['Dr Ash', 'Sister Birch'],
  };
}

/** The texts of the entries of a page, each made as the kit makes them, but for what the page says. */
async function entriesOf(page: RecordPage): Promise<EntryText[]> {
  const steps: readonly Step[] = page.first === 'no' ? page.entries : [{ approvers: {} }, ...page.entries];
  const signing = page.signing ?? 'no';
  const list = await usualList(signing);
  const texts: EntryText[] = [];
  let before: string | null = null;
  for (const [index, step] of steps.entries()) {
    const bodies = Object.entries({ approvers: list, ...usual }).flatMap(([key, parts]) => {
      const said = step[key as keyof typeof usual];
      return said ? [[key, { ...parts, ...said }] as const] : [];
    });
    const draft = {
      record: own,
      entry: index + 1,
      before,
      at,
      ...Object.fromEntries(bodies),
      ...step.with,
    } as Draft;
    const entry = await signed(draft, step, signing);
    before = entry.digest;
    texts.push({ file: `${index + 1}.json`, text: entryText({ ...entry, ...step.then }) });
  }
  return texts;
}

async function signed(draft: Draft, step: Step, signing: string): Promise<RecordEntry> {
  const self = signing === 'yes' ? Object.fromEntries(makersOf(draft).map((name) => [name, name])) : {};
  const signers = Object.entries(step.signed_by ?? self);
  const signatures = await Promise.all(
    signers.map(async ([by, whose]) => signatureOf(draft, by, await keyOf(whose.replace('the key of ', '')))),
  );
  return withDigest({ ...draft, ...(signatures.length > 0 ? { signatures } : {}) });
}

/** The codes of the problems of a record, and of what is asked about it. */
export async function codesOfRecord(text: string): Promise<string[]> {
  const parsed = parse(text) as RecordPage | Step[];
  const page: RecordPage = Array.isArray(parsed) ? { entries: parsed } : parsed;
  const texts = await entriesOf(page);
  const { record, problems } = await textsToRecord(own, texts);
  if (!record) return problems.map(({ code }) => code);
  const other = page.seen === undefined ? null : notAsSeen('record', texts, seenBefore(page, texts));
  return [...(other ? [other] : []), ...asked(page, record)].map(({ code }) => code);
}

function seenBefore(
  { seen = 0, seen_otherwise: isOther }: RecordPage,
  texts: readonly EntryText[],
): EntryText[] {
  const more: EntryText = { file: 'x.json', text: 'another' };
  const all = Array.from({ length: seen }, (_, index) => texts[index] ?? more);
  return isOther === 'yes' ? [...all.slice(0, -1), more] : all;
}

/** What is found when the last entry is held against the edition that it is about. */
function asked({ asks, edition = {} }: RecordPage, record: Ledger): Finding[] {
  const findings: Finding[] = [];
  const entry = record.entries.at(-1);
  const after = record.entries[(edition.sealed_after_entry ?? 1) - 1]?.digest;
  const file = {
    edition: 1,
    digest,
    seal: edition.seal ?? digest,
    authors: edition.authors ?? ['Dr Elm'],
    ...(after === undefined ? {} : { approvers: after }),
  } as unknown as EditionFile;
  const earlier = { ...record, entries: record.entries.slice(0, -1) };
  if (headOf(record) === null || !entry) return findings;
  if (asks === 'approval' && entry.approved)
    reportApproval(earlier, file, entry.approved, reporter(findings));
  if (asks === 'put' && entry.in_force)
    reportPut(record, { entry, inForce: entry.in_force }, file, reporter(findings));
  return findings;
}
