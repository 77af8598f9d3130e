import { caseProblems } from '../cases/case-problems.ts';
import type { Case } from '../cases/case.ts';
import type { CaseResult } from '../cases/case-result.ts';
import { documentToCases, type ReadCases } from '../cases/document-to-cases.ts';
import { askCase, compareCase } from '../cases/run-case.ts';
import { partAt, toPlain, type Document } from '../document/document.ts';
import { YamlReader } from '../document/yaml-reader.ts';
import type { Compiled } from '../outcome/compile.ts';
import type { Problem } from '../problems/problem.ts';
import type { Surroundings } from '../protocol/document-to-protocol.ts';
import { documentToChecked } from '../review/document-to-checked.ts';
import { textToFile } from '../shape/text-to-file.ts';
import { decidingAnswers, givenNumbers, levelInWords, type CaseReport } from './document-to-cases-report.ts';
import { linesOf, type PartLines } from './lines-of.ts';

/** The two texts that are written beside each other, under the names that problems cite. */
export interface WrittenTexts {
  readonly protocol: { readonly file: string; readonly text: string };
  readonly cases: { readonly file: string; readonly text: string };
}

/** How a case came out, as a list of all cases tells it. */
export interface CaseAnswer {
  readonly name: string;
  readonly lines: PartLines;
  readonly passes: boolean;
  /** What came out otherwise than expected, a sentence each. */
  readonly differences: readonly string[];
  /** The level in words, and the rules that call for it, in one sentence. */
  readonly levelSays: string;
  /** Names of the rules that it meets; empty where the protocol is not for the patient. */
  readonly met: readonly string[];
  /** The numbers of its present set. */
  readonly given: CaseReport['given'];
}

/** What the check of both texts says. */
export interface Written {
  /** Null with errors: then no case is run. */
  readonly compiled: Compiled | null;
  /** Two protocols with the same answer every set alike; empty without one. */
  readonly decidesLike: string;
  /** Of the protocol, with what it is based on worked in; null when its text cannot be read. */
  readonly document: Document | null;
  readonly casesDocument: Document | null;
  /** The cases that could be read. */
  readonly read: readonly Case[];
  readonly cases: readonly CaseAnswer[];
  readonly rules: readonly PartLines[];
  readonly problems: { readonly protocol: readonly Problem[]; readonly cases: readonly Problem[] };
}

interface Checked extends Pick<Written, 'compiled' | 'decidesLike' | 'document' | 'rules'> {
  readonly problems: readonly Problem[];
  /** Two protocols with the same read every case alike. */
  readonly readsLike: string;
}

type Ran = Pick<Written, 'read' | 'cases'> & {
  readonly problems: readonly Problem[];
  readonly cameTo: ReadonlyMap<string, CameTo>;
};

/**
 * Checks a protocol and its cases again and again while they are written. The answer is always that of `readProtocol` and `runCases`; what has not
 * changed since the last time is not worked out anew.
 */
export class Workbench {
  private readonly protocolTexts = new YamlReader();
  private readonly caseTexts = new YamlReader();
  private lastRun: {
    readonly document: Document;
    readonly readsLike: string;
    readonly decidesLike: string;
    readonly readCases: ReadCases;
    readonly ran: Ran;
  } | null = null;
  private last: { readonly text: string; readonly around: Surroundings; readonly checked: Checked } | null =
    null;

  check({ protocol, cases }: WrittenTexts, around: Surroundings): Written {
    const checked = this.protocol(protocol, around);
    const { compiled, decidesLike, document, rules } = checked;
    const read = this.caseTexts.read(cases.file, cases.text);
    const none = {
      compiled,
      decidesLike,
      document,
      casesDocument: read.document,
      rules,
      read: [],
      cases: [],
    };
    const told = (more: readonly Problem[]): Written['problems'] => ({
      protocol: checked.problems,
      cases: more,
    });
    if (cases.text.trim() === '') return { ...none, problems: told([]) };
    if (!read.document)
      return { ...none, problems: told(textToFile('cases', cases.file, cases.text).problems) };
    if (!compiled) return { ...none, problems: told(read.problems) };
    const ran = this.run(read.document, compiled, checked.readsLike, checked.decidesLike);
    return { ...none, read: ran.read, cases: ran.cases, problems: told([...read.problems, ...ran.problems]) };
  }

  /** Cases are read anew only when the protocol may read them otherwise, and asked anew only when it may answer otherwise. */
  private run(document: Document, compiled: Compiled, readsLike: string, decidesLike: string): Ran {
    const before = this.lastRun;
    const isSame = before?.document === document && before.readsLike === readsLike;
    const readCases = isSame ? before.readCases : documentToCases(document, compiled.protocol);
    const known = before?.decidesLike === decidesLike ? before.ran.cameTo : new Map<string, CameTo>();
    const ran =
      isSame && before.decidesLike === decidesLike
        ? before.ran
        : runAll(document, compiled, readCases, known);
    this.lastRun = { document, readsLike, decidesLike, readCases, ran };
    return ran;
  }

  private protocol({ file, text }: WrittenTexts['protocol'], around: Surroundings): Checked {
    const { last } = this;
    if (last?.text === text && last.around === around) return last.checked;
    const read = this.protocolTexts.read(file, text);
    const checked = read.document ? checkedOf(read.document, read.problems, around) : unread(file, text);
    this.last = { text, around, checked };
    return checked;
  }
}

const unread = (file: string, text: string): Checked => ({
  compiled: null,
  document: null,
  rules: [],
  readsLike: '',
  decidesLike: '',
  problems: textToFile('protocol', file, text).problems,
});

function checkedOf(given: Document, problems: readonly Problem[], around: Surroundings): Checked {
  const { compiled, problems: found, document } = documentToChecked(given, around);
  return {
    compiled,
    document,
    rules: linesOf(document).rules,
    ...(compiled ? likeness(document) : { readsLike: '', decidesLike: '' }),
    problems: [...problems, ...found],
  };
}

/** Keys of a rule or a fault under which stand only words that no answer about a case has. */
const onlyWords: ReadonlySet<string> = new Set(['says', 'because', 'ask', 'do', 'source']);

function likeness(document: Document): Pick<Checked, 'readsLike' | 'decidesLike'> {
  const { rules, faults, ...others } = toPlain(document.root) as Readonly<
    Record<'rules' | 'faults', unknown>
  >;
  const around = JSON.stringify([others, withoutWords(faults)]);
  const named = partsIn(rules).map(({ rule }) => rule);
  return {
    readsLike: `${around} ${JSON.stringify(named)}`,
    decidesLike: `${around} ${JSON.stringify(withoutWords(rules))}`,
  };
}

const partsIn = (list: unknown): readonly Readonly<Record<string, unknown>>[] =>
  Array.isArray(list) ? (list as readonly Readonly<Record<string, unknown>>[]) : [];

const withoutWords = (list: unknown): unknown =>
  partsIn(list).map((part) => Object.entries(part).filter(([key]) => !onlyWords.has(key)));

/** What a case came to, wherever its lines stand now. */
interface CameTo {
  readonly result: CaseResult;
  readonly told: Pick<CaseAnswer, 'levelSays' | 'met' | 'given'>;
}

/** Cases are told apart by their place in the list and their text; one that was asked before, of the same protocol, is not asked again. */
function runAll(
  document: Document,
  compiled: Compiled,
  { cases: read, problems }: ReadCases,
  before: ReadonlyMap<string, CameTo>,
): Ran {
  const places = new Map(linesOf(document).cases.map((place) => [place.path[1], place]));
  const failed: Problem[] = [];
  const cameTo = new Map<string, CameTo>();
  const cases = read.flatMap((each): CaseAnswer[] => {
    const lines = places.get(each.path[1]);
    if (!lines) return [];
    const { span } = partAt(document, each.path).node;
    const key = `${each.path.join(' ')} ${document.text.slice(span.start, span.end)}`;
    const came = before.get(key) ?? whatCameOf(each, compiled);
    cameTo.set(key, came);
    const differs = caseProblems(came.result, document);
    failed.push(...differs);
    const differences = differs.map(({ says }) => says);
    return [{ name: each.name, lines, passes: differs.length === 0, differences, ...came.told }];
  });
  return { read, cases, problems: [...problems, ...failed], cameTo };
}

function whatCameOf(each: Case, compiled: Compiled): CameTo {
  const asked = askCase(compiled, each);
  const { level, rules } = asked.answers;
  const by = decidingAnswers(asked.answers).map(({ rule }) => rule.title);
  const levelSays = levelInWords(asked.answers, compiled.protocol.ladder);
  return {
    result: compareCase(asked, each),
    told: {
      levelSays: by.length === 0 ? levelSays : `${levelSays} By: ${by.join('; ')}.`,
      met: level ? rules.filter(({ state }) => state === 'met').map(({ rule }) => rule.name) : [],
      given: givenNumbers(asked),
    },
  };
}
