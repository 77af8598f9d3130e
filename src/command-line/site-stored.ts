import { basename, dirname, join } from 'node:path';
import manifest from '../../package.json' with { type: 'json' };
import { yamlToDocument } from '../document/yaml-to-document.ts';
import type { Compiled, Ward } from '../index.ts';
import { timeInWords } from '../outcome/time-in-words.ts';
import { hasErrors } from '../problems/problem.ts';
import { digestOfText } from '../protocol/digest.ts';
import { compareSides } from '../review/compare/compare.ts';
import { findingsOf } from '../review/findings/find-findings.ts';
import { redCases } from '../review/guards/guards-of.ts';
import { lookForUnguarded } from '../review/guards/look-for-unguarded.ts';
import { proveRequirements } from '../review/requirements/prove.ts';
import { comparisonToStored } from '../review/stored/comparison-to-stored.ts';
import type { StoredDraft, StoredPart, StoredResults, StoredText } from '../review/stored/stored-results.ts';
import {
  findingsToStored,
  partWithout,
  proofsToStored,
  titles,
  unguardedToStored,
} from '../review/stored/to-stored.ts';
import { vitalSigns } from '../vocabulary/vital-signs.ts';
import { editionPath, loadEdition } from './edition-files.ts';
import { fileNames, readText } from './files.ts';
import { loadProtocol, type Loaded } from './load.ts';
import { loadWard } from './load-ward.ts';
import { editionAt } from './site-editions.ts';
import type { SiteProtocol } from './site-protocols.ts';
import type { Terminal } from './terminal.ts';

/** Works out everything that a site of files tells of its drafts; `told` hears of each as it is done. */
export async function storedResults(
  folder: string,
  protocols: readonly SiteProtocol[],
  { now }: Terminal,
  told: (id: string) => void,
): Promise<StoredResults> {
  const drafts: Record<string, StoredDraft> = {};
  for (const protocol of protocols) {
    drafts[protocol.id] = await storedDraft(folder, protocol, protocols);
    told(protocol.id);
  }
  return { kit: manifest.version, made: timeInWords(now), drafts };
}

async function storedDraft(
  folder: string,
  protocol: SiteProtocol,
  all: readonly SiteProtocol[],
): Promise<StoredDraft> {
  const of = await textsOf(folder, protocol, all);
  return { digest: digestOfText(JSON.stringify(of)), of, parts: await partsOf(folder, protocol) };
}

/** Every text that could make a difference; of what reads with others, all of them, rather than one too few. */
async function textsOf(
  folder: string,
  protocol: SiteProtocol,
  all: readonly SiteProtocol[],
): Promise<StoredText[]> {
  const readsOthers = protocol.kind === 'ward' || /^based_on:/m.test(protocol.text);
  const texts = [protocol, protocol.cases, protocol.ladder, ...(readsOthers ? all : [])];
  const edition = comparedWith(protocol);
  const sealed = edition && (await editionAt(folder, edition.address));
  const found = [...texts, edition && sealed !== null ? { file: edition.file, text: sealed } : null];
  const named = new Map(found.flatMap((each) => (each ? [[each.file, digestOfText(each.text)]] : [])));
  return [...named].map(([file, digest]) => ({ file, digest }));
}

/** The edition that a draft is compared with: the one in force, else the latest that is sealed. */
function comparedWith({
  editions = [],
  record,
}: SiteProtocol): NonNullable<SiteProtocol['editions']>[number] | null {
  const number = record?.in_force?.edition ?? editions.at(-1)?.edition;
  return editions.find(({ edition }) => edition === number) ?? null;
}

async function partsOf(folder: string, protocol: SiteProtocol): Promise<StoredPart[]> {
  const place = await placeBelow(folder, protocol);
  const loaded = protocol.kind === 'ward' ? await loadWard(place, null) : await loadProtocol(place, null);
  const reader = 'ward' in loaded ? loaded.ward : loaded.compiled;
  if (!reader)
    return [partWithout(titles.comparison, 'The draft has problems of its own: nothing is told of it.')];
  const parts = [await comparison(place, protocol, reader), proofsToStored(proveRequirements(reader))];
  if ('ward' in loaded)
    return [...parts, partWithout(titles.findings, 'Asked of each protocol that it reads with, by itself.')];
  return [...parts, ...(await ofRules(loaded))];
}

async function placeBelow(folder: string, { id, kind }: SiteProtocol): Promise<string> {
  const inside = join(folder, ...id.split('/'), fileNames[kind]);
  const own = join(folder, fileNames[kind]);
  return basename(folder) === id && (await readText(own).catch(() => null)) ? own : inside;
}

async function comparison(
  place: string,
  protocol: SiteProtocol,
  draft: Compiled | Ward,
): Promise<StoredPart> {
  const with_ = comparedWith(protocol);
  if (!with_)
    return partWithout(
      titles.comparison,
      'No edition of it is sealed yet: there is nothing to compare it with.',
    );
  const { edition, problems } = await loadEdition(editionPath(dirname(place), with_.edition));
  if (!edition)
    return partWithout(
      titles.comparison,
      `Edition ${with_.edition} cannot be relied on: ${problems[0]?.says ?? ''}`,
    );
  if ('members' in edition.asked !== 'members' in draft)
    return partWithout(
      titles.comparison,
      'One is a protocol and the other a ward policy: they are not compared.',
    );
  const cases = protocol.cases && yamlToDocument(protocol.cases.file, protocol.cases.text).document;
  return comparisonToStored(compareSides(edition.asked, draft, cases));
}

/** What is asked of the rules of one protocol. */
async function ofRules({ document, compiled, casesPath }: Loaded): Promise<StoredPart[]> {
  if (!document || !compiled) return [];
  const text = casesPath === null ? null : await readText(casesPath);
  const read = text && yamlToDocument(text.file, text.text);
  if (read && (!read.document || hasErrors(read.problems)))
    return [partWithout(titles.findings, 'Its cases cannot be read: nothing is told of its rules.')];
  const cases = read?.document ?? null;
  return [findingsToStored(findingsOf({ compiled, document, cases })), unguarded(document, compiled, cases)];
}

function unguarded(
  document: NonNullable<Loaded['document']>,
  compiled: Compiled,
  cases: Loaded['document'],
): StoredPart {
  if (!cases) return partWithout(titles.unguarded, 'It has no cases: nothing would notice a change.');
  const [red] = redCases(compiled.protocol, cases);
  if (red !== undefined)
    return partWithout(titles.unguarded, `A case is not as expected before anything is changed: ${red}.`);
  const surroundings = { dictionary: vitalSigns, ladder: compiled.protocol.ladder, today: null };
  const { of, steps } = lookForUnguarded({ document, compiled, cases, surroundings });
  const found = [];
  for (let step = steps.next(); step.done !== true; step = steps.next())
    if (step.value) found.push(step.value);
  return unguardedToStored(of, found);
}
