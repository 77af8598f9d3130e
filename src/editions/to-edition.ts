import { yamlToDocument } from '../document/yaml-to-document.ts';
import type { Compiled } from '../outcome/compile.ts';
import { language } from '../protocol/digest.ts';
import type { EditionFile } from '../shape/generated/types.ts';
import type { DictionaryFile } from '../vocabulary/generated/dictionary-file.ts';
import type { Ward } from '../ward/ward.ts';
import { asJson, canonicalText } from './canonical.ts';
import { casesToAnswers, type Asked } from './cases-to-answers.ts';
import { dictionaryOf, laidOver } from './own-dictionary.ts';
import type { Unsealed } from './unsealed.ts';

/** What is known of an edition beside what it says. */
export interface About {
  /** The number of the kit. */
  readonly kit: string;
  /** Year-month-day. */
  readonly sealedOn: string;
  readonly authors: readonly string[];
  /** The digest of the entry that says who may approve; null when there is none. */
  readonly approvers: string | null;
}

/** The texts that an edition is made of. */
export interface Parts {
  readonly ladder: string;
  /** By name: itself, and what it is based on. */
  readonly texts: Readonly<Record<string, string>>;
  readonly cases: string;
}

/** A checked protocol as an edition: everything that it is read with, and what it answers to its cases. */
export function protocolToEdition(compiled: Compiled, parts: Parts, about: About): Unsealed {
  const { name, edition, title, digest, logicDigest, reviewBy } = compiled.protocol;
  return {
    ...heading('protocol', { name, edition, title }, about),
    ...digests(digest, logicDigest, reviewBy),
    dictionary: asJson(dictionaryOf([compiled.protocol])),
    ...texts(parts),
    outcomes: answersTo(parts.cases, compiled),
  };
}

/** A checked ward policy as an edition, with the sealed editions that it reads with. */
export function wardToEdition(
  ward: Ward,
  parts: Parts,
  members: readonly EditionFile[],
  about: About,
): Unsealed {
  const { name, edition, title, digest, logicDigest, own } = ward;
  const all = [...ward.members.map(({ protocol }) => protocol), own];
  return {
    ...heading('ward', { name, edition, title }, about),
    ...digests(digest, logicDigest, own.reviewBy),
    reads_with: members.map((each) => ({ protocol: each.name, edition: each.edition, digest: each.digest })),
    dictionary: asJson(dictionaryOf(all, laidOver(together(members)))),
    ...texts({ ...parts, texts: { ...parts.texts, ...textsOf(members) } }),
    outcomes: answersTo(parts.cases, ward),
  };
}

/** Whether two editions say the same: all but when, and by which kit, they were sealed. */
export function saysTheSame(left: Unsealed | EditionFile, right: Unsealed | EditionFile): boolean {
  const content = (each: Unsealed | EditionFile): string =>
    canonicalText({ ...each, seal: null, kit: null, sealed_on: null, approvers: null, authors: null });
  return content(left) === content(right);
}

function heading(
  sealed: 'protocol' | 'ward',
  named: Pick<EditionFile, 'name' | 'edition' | 'title'>,
  { kit, sealedOn, authors, approvers }: About,
): Pick<EditionFile, 'sealed' | 'name' | 'edition' | 'title' | 'language' | 'kit' | 'sealed_on'> {
  return {
    sealed,
    ...named,
    language,
    kit,
    sealed_on: sealedOn,
    ...(authors.length > 0 ? { authors } : {}),
    ...(approvers === null ? {} : { approvers }),
  };
}

const digests = (
  digest: string,
  logicDigest: string,
  reviewBy: string | null,
): Pick<EditionFile, 'digest' | 'logic_digest' | 'review_by'> => ({
  digest,
  logic_digest: logicDigest,
  ...(reviewBy === null ? {} : { review_by: reviewBy }),
});

const texts = (parts: Parts): Pick<EditionFile, 'ladder' | 'texts' | 'cases'> => ({
  ladder: lines(parts.ladder),
  texts: Object.fromEntries(Object.entries(parts.texts).map(([name, text]) => [name, lines(text)])),
  cases: lines(parts.cases),
});

/** With plain line ends and one at the end, as a text inside another text is read back. */
const lines = (text: string): string => `${text.replaceAll('\r\n', '\n').trimEnd()}\n`;

function answersTo(cases: string, asked: Asked): EditionFile['outcomes'] {
  const { document } = yamlToDocument('cases', lines(cases));
  return document ? casesToAnswers(document, asked) : [];
}

const textsOf = (members: readonly EditionFile[]): Readonly<Record<string, string>> =>
  Object.assign({}, ...members.map((each) => each.texts)) as Readonly<Record<string, string>>;

/** The dictionaries of some editions as one. Where two differ, the digest of one of them will tell. */
function together(members: readonly EditionFile[]): DictionaryFile {
  const [first, ...rest] = members.map(({ dictionary }) => dictionary);
  return rest.reduce(
    (all, each) => ({
      ...all,
      sources: { ...all.sources, ...each.sources },
      observations: { ...all.observations, ...each.observations },
      contradictions: [...(all.contradictions ?? []), ...(each.contradictions ?? [])].filter(
        ({ lower, higher }, index, list) =>
          list.findIndex((other) => other.lower === lower && other.higher === higher) === index,
      ),
    }),
    first ?? { dictionary: 'none', language: 1, observations: {} },
  );
}
