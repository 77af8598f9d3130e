import { codePointName } from '../../problems/visible.ts';
import type { Span } from '../../problems/place.ts';
import type { TextFaults } from '../text-faults.ts';

/**
 * What no text may have: control characters, characters that cannot be seen (of no width, or turning the reading direction),
 * and broken ones. Tabs and line ends are looked at by the caller.
 */
const refused =
  /[\p{Cc}\p{Cf}\p{Cs}\p{Zl}\p{Zp}\p{Default_Ignorable_Code_Point}\p{Noncharacter_Code_Point}\uFFFD]/gu;
const broken = /[\p{Cs}\p{Noncharacter_Code_Point}\uFFFD]/u;
const control = /[\p{Cc}\p{Zl}\p{Zp}]/u;

/** At least so many, and more than one in twenty, and it is no text. */
const noise = { least: 10, oneIn: 20 };

/**
 * Refuses characters that cannot be seen or that are broken. Returns whether the text can be parsed: a control character could be
 * taken for a sign between the parser's own steps, so after one nothing is parsed.
 */
export function checkCharacters(text: string, faults: TextFaults): boolean {
  const found = [...refusedIn(text)];
  const bad = found.filter(({ character }) => control.test(character) || broken.test(character)).length;
  if (bad >= noise.least && bad * noise.oneIn > text.length) {
    faults.add('text_not_text', { start: found[0]?.at ?? 0, end: (found[0]?.at ?? 0) + 1 }, {});
    return false;
  }
  for (const { character, at } of found) refuse(character, { start: at, end: at + character.length }, faults);
  return !found.some(({ character }) => control.test(character));
}

/** The same for a value or a key in which a character can be written by its number: `"\u0000"`. All of it is at its place. */
export function checkValueCharacters(value: string, span: Span, faults: TextFaults): void {
  for (const { character } of refusedIn(value)) {
    refuse(character, span, faults);
    return;
  }
  if (value.includes('\r')) refuse('\r', span, faults);
}

function refuse(character: string, span: Span, faults: TextFaults): void {
  const code = isBroken(character)
    ? 'broken_character'
    : control.test(character)
      ? 'control_character'
      : 'hidden_character';
  faults.add(code, span, { name: codePointName(character.codePointAt(0) ?? 0) });
}

const isBroken = (character: string): boolean => broken.test(character);

function* refusedIn(text: string): Generator<{ character: string; at: number }> {
  for (const { 0: character, index: at } of text.matchAll(refused)) {
    if (character === '\n' || character === '\t') continue;
    if (character === '\r' && text[at + 1] === '\n') continue;
    yield { character, at };
  }
}
