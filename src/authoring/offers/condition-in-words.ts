import { listed, plainWords } from '../../protocol/words.ts';
import type { Known } from '../known/known.ts';
import { entriesOf, itemsOf, textsOf, textUnder, under, type Part } from '../sketch/sketch.ts';

const comparisonWords: Readonly<Record<string, string>> = {
  below: 'below',
  above: 'above',
  at_most: 'at most',
  at_least: 'at least',
};

/**
 * A condition as it is written, in words: `systolic at most 90, and rate above 95 or breathing at least 22`. What is half-typed is left
 * out; empty when nothing is asked yet.
 */
export function conditionInWords(part: Part | undefined, known: Known): string {
  return parts(part, known).join(', and ');
}

function parts(part: Part | undefined, known: Known): string[] {
  return entriesOf(part).flatMap(({ key, value }) => {
    const words = onePart(key.text, value, known);
    return words === '' ? [] : [words];
  });
}

function onePart(key: string, value: Part, known: Known): string {
  switch (key) {
    case 'all':
      return each(value, known).join(', and ');
    case 'any':
      return each(value, known).join(' or ');
    case 'none': {
      const of = each(value, known);
      return of.length === 0 ? '' : `none of: ${of.join('; ')}`;
    }
    case 'at_least_of': {
      const of = each(under(value, 'of'), known);
      return of.length === 0 ? '' : `at least ${textUnder(value, 'count')} of: ${of.join('; ')}`;
    }
    case 'rule':
      return value.kind === 'text'
        ? `the rule “${known.rules.get(value.text)?.title ?? value.text}” is met`
        : '';
    default:
      return compared(key, value, known);
  }
}

const each = (part: Part | undefined, known: Known): string[] =>
  itemsOf(part).flatMap((item) => {
    const words = parts(item, known);
    return words.length === 0 ? [] : [words.join(' and ')];
  });

function compared(name: string, part: Part, known: Known): string {
  const title = titleOf(name, known);
  const asked = entriesOf(part).flatMap(({ key, value }) => {
    const words = comparison(key.text, value, name, known);
    return words === '' ? [] : [words];
  });
  return asked.length === 0 ? '' : `${title} ${asked.join(' and ')}`;
}

function comparison(key: string, value: Part, name: string, known: Known): string {
  const how = comparisonWords[key];
  const choice = (named: string): string =>
    known.observations.get(name)?.choices.find((found) => found.choice === named)?.title ?? plainWords(named);
  if (value.kind === 'list') {
    const texts = textsOf(value);
    if (key === 'between') return `from ${texts.join(' to ')}`;
    return key === 'one_of' ? listed(texts.map(choice), 'or') : '';
  }
  if (value.kind !== 'text' || value.text === '') return '';
  if (how !== undefined) return `${how} ${numberInWords(value.text, known)}`;
  if (key === 'is') return `is ${choice(value.text)}`;
  if (key === 'known') return value.text === 'yes' ? 'known' : 'not known';
  if (key === 'unobtainable') return value.text === 'yes' ? 'unobtainable' : 'not unobtainable';
  return '';
}

function numberInWords(text: string, known: Known): string {
  const limit = known.limits.get(text);
  if (limit) return `${limit.title} (${limit.value}${limit.unit === '' ? '' : ` ${limit.unit}`})`;
  return /^[a-z]/.test(text) ? titleOf(text, known) : text;
}

function titleOf(name: string, { observations, measures, limits }: Known): string {
  const found = observations.get(name) ?? measures.get(name) ?? limits.get(name);
  return found?.title ?? plainWords(name);
}
