import { basename, dirname, join } from 'node:path';
import manifest from '../../package.json' with { type: 'json' };
import { yamlToDocument } from '../document/yaml-to-document.ts';
import type { Compiled, Ward } from '../index.ts';
import type { SiteEdition } from '../editions/site-record.ts';
import { timeInWords } from '../outcome/time-in-words.ts';
import { hasErrors } from '../problems/problem.ts';
import type { ParentText } from '../protocol/based-on/basis.ts';
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
import { loadParents } from './load-parents.ts';
import { loadWard, type LoadedWard } from './load-ward.ts';
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
  const place = await placeBelow(folder, protocol);
  const loaded = protocol.kind === 'ward' ? await loadWard(place, null) : await loadProtocol(place, null);
  const of = await textsOf({ folder, protocol, all, place, loaded });
  return { digest: digestOfText(JSON.stringify(of)), of, parts: await partsOf(place, protocol, loaded) };
}

interface Read {
  readonly folder: string;
  readonly protocol: SiteProtocol;
  readonly all: readonly SiteProtocol[];
  readonly place: string;
  readonly loaded: Loaded | LoadedWard;
}

/**
 * Every text that could make a difference; of what reads with others, all drafts, rather than one too few. What is not served with them is
 * among them too: a page that does not find it shows nothing.
 */
async function textsOf({ folder, protocol, all, place, loaded }: Read): Promise<StoredText[]> {
  const readsOthers = protocol.kind === 'ward' || /^based_on:/m.test(protocol.text);
  const texts = [protocol, protocol.cases, protocol.ladder, ...(readsOthers ? all : [])];
  const members = 'ward' in loaded ? (loaded.ward?.members ?? []) : [];
  const editions = [comparedWith(protocol), ...members.map((member) => sealedOf(member.protocol, all))];
  const sealed = await Promise.all(
    editions.map(async (edition) => {
      const text = edition && (await editionAt(folder, edition.address));
      return edition && text !== null ? { file: edition.file, text } : null;
    }),
  );
  const known = [...texts, ...sealed].flatMap((each) => each ?? []);
  const parents = 'ward' in loaded ? [] : await parentsOf(loaded, place);
  const elsewhere = parents.filter(({ text }) => !known.some((each) => each.text === text));
  const named = new Map([...known, ...elsewhere].map(({ file, text }) => [file, digestOfText(text)]));
  return [...named].map(([file, digest]) => ({ file, digest }));
}

/** The texts that a protocol is based on. */
async function parentsOf({ compiled }: Loaded, place: string): Promise<readonly ParentText[]> {
  const { text, file } = await readText(place);
  const { document } = yamlToDocument(file, text);
  const parents = document && (await loadParents(document, place));
  return (compiled?.protocol.basedOn ?? []).flatMap(({ name }) => {
    const parent = parents?.get(name);
    // A site is for everybody: it says nothing of where this machine keeps its files.
    return parent ? [{ file: `${name}/${fileNames.protocol}`, text: parent.text }] : [];
  });
}

/** The sealed edition of a protocol that a ward reads with, where there is one: a ward may stay with it while the draft moves on. */
const sealedOf = (
  { name, edition }: { readonly name: string; readonly edition: number },
  all: readonly SiteProtocol[],
): SiteEdition | null =>
  all
    .find(({ kind, id }) => kind === 'protocol' && id.split('/').at(-1) === name)
    ?.editions?.find((each) => each.edition === edition) ?? null;

/** The edition that a draft is compared with: the one in force, else the latest that is sealed. */
function comparedWith({ editions = [], record }: SiteProtocol): SiteEdition | null {
  const number = record?.in_force?.edition ?? editions.at(-1)?.edition;
  return editions.find(({ edition }) => edition === number) ?? null;
}

async function partsOf(
  place: string,
  protocol: SiteProtocol,
  loaded: Loaded | LoadedWard,
): Promise<StoredPart[]> {
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
