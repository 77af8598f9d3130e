import { yamlToDocument } from '../document/yaml-to-document.ts';
import { findingsToProblems } from '../document/finding-to-problem.ts';
import { problemAt, reporter, type Finding, type Problem, type Report } from '../problems/problem.ts';
import { language } from '../protocol/digest.ts';
import { textToFile } from '../shape/text-to-file.ts';
import type { EditionFile, SealedAnswer } from '../shape/generated/types.ts';
import { firstDifference } from './answers-compared.ts';
import { casesToAnswers, isWard, type Asked } from './cases-to-answers.ts';
import { readParts } from './read-parts.ts';
import { sealOf } from './seal.ts';

/** A sealed edition as it was read. */
export interface Edition {
  readonly file: EditionFile;
  /** What is read with. */
  readonly asked: Asked;
}

/** Where an edition must stand: the protocol or ward policy, and the number. */
export interface EditionPlace {
  readonly name: string;
  readonly edition: number;
}

/** What came of reading an edition. */
export interface EditionRead {
  readonly edition: Edition | null;
  readonly problems: readonly Problem[];
}

/** An edition of which all was read and not yet everything checked. */
export interface EditionBegun {
  /** What it is asked with once it is checked; until then, only what is to be entered may be taken from it. Null when it cannot be read. */
  readonly asked: Asked | null;
  readonly problems: readonly Problem[];
  /** Checks that it answers its cases as when it was sealed: only what this gives may answer about a patient. */
  readonly finish: () => EditionRead;
}

/**
 * Reads a sealed edition; null when it is not as it was sealed, stands elsewhere than it belongs, or this kit reads it otherwise.
 *
 *     text ─► seal ─► shape ─► place ─► its parts, read anew ─► digest ─► answers to its cases
 */
export function textToEdition(file: string, text: string, place: EditionPlace | null): EditionRead {
  return beginEdition(file, text, place).finish();
}

/** The same in two steps, so that a form can be shown while its cases are still being run. */
export function beginEdition(file: string, text: string, place: EditionPlace | null): EditionBegun {
  const broken = brokenSeal(file, text);
  if (broken) return unread([broken]);
  const { value, document, problems } = textToFile('edition', file, text);
  if (!value || !document) return unread(problems);
  const findings: Finding[] = [];
  const report = reporter(findings);
  const told = (): Problem[] => [...problems, ...findingsToProblems(document, findings)];
  const asked = readEdition(value, place, report);
  if (!asked) return unread(told());
  return {
    asked,
    problems: told(),
    finish: () => {
      const edition = answersAsSealed(value, asked, report) ? { file: value, asked } : null;
      return { edition, problems: told() };
    },
  };
}

const unread = (problems: readonly Problem[]): EditionBegun => ({
  asked: null,
  problems,
  finish: () => ({ edition: null, problems }),
});

/** Why a text is no edition as it was sealed; null when it is. */
function brokenSeal(file: string, text: string): Problem | null {
  const seal = sealOf(text);
  if (seal?.isWhole) return null;
  const code = seal === null ? 'edition_not_sealed' : 'edition_changed';
  return problemAt(file, text, { start: 0, end: 1 }, code, {});
}

function readEdition(file: EditionFile, place: EditionPlace | null, report: Report): Asked | null {
  const isElsewhere = place !== null && (place.name !== file.name || place.edition !== file.edition);
  if (isElsewhere) {
    const belongs = `edition ${place.edition} of "${place.name}"`;
    report('edition_in_wrong_place', ['name'], { name: file.name, edition: file.edition, place: belongs });
    return null;
  }
  if (file.language !== language) {
    report('edition_of_other_language', ['language'], { language: file.language, own: language });
    return null;
  }
  const asked = readParts(file, report);
  return asked && hasItsDigest(file, asked, report) ? asked : null;
}

function hasItsDigest(file: EditionFile, asked: Asked, report: Report): boolean {
  const { digest, logicDigest } = isWard(asked) ? asked : asked.protocol;
  const found = digest === file.digest ? logicDigest : digest;
  const isSame = digest === file.digest && logicDigest === file.logic_digest;
  if (!isSame) report('edition_digest_otherwise', ['digest'], { found: found.slice(0, 19) });
  return isSame;
}

function answersAsSealed(file: EditionFile, asked: Asked, report: Report): boolean {
  const cases = yamlToDocument('cases', file.cases).document;
  const found = cases ? casesToAnswers(cases, asked) : [];
  const told = firstOtherAnswer(file.outcomes, found);
  if (told) report('edition_answers_otherwise', ['outcomes', told.index], told);
  return told === null;
}

function firstOtherAnswer(
  sealed: readonly SealedAnswer[],
  found: readonly SealedAnswer[],
): { index: number; name: string; what: string; was: string; is: string } | null {
  for (const [index, { case: name, answers }] of sealed.entries()) {
    const now = found[index];
    const gone = { what: 'the case', was: 'there', is: 'not read' };
    const difference = now?.case === name ? firstDifference(answers, now.answers) : gone;
    if (difference) return { index, name, ...difference };
  }
  const more = found[sealed.length];
  return more ? { index: 0, name: more.case, what: 'the case', was: 'not there', is: 'there' } : null;
}
