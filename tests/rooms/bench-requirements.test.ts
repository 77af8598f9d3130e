import { expect, test } from 'vitest';
import type { SiteProtocol, SiteText } from '../../editor/src/common/site-protocol.ts';
import type { RequirementsHere } from '../../editor/src/write/messages.ts';
import { Bench } from '../../editor/src/write/work/bench.ts';
import { bundledText } from '../bundled.ts';

const textOf = (file: string): SiteText => ({ file, text: bundledText(file) });
const ladder = textOf('alder_ladder/ladder.yaml');
const cases = textOf('lessons/one_threshold/cases.yaml');
const { file, text } = textOf('lessons/one_threshold/protocol.yaml');
const id = 'lessons/one_threshold';
/** Five of the protocol, and one of its ladder that speaks of what it reads. */
const stated = 6;
const protocol: SiteProtocol = { kind: 'protocol', id, title: 'One', file, text, ladder, cases };

function opened(): (written: string) => RequirementsHere {
  const bench = new Bench();
  bench.open({ kind: 'open', protocol, all: [protocol], ladders: [ladder] });
  return (written) =>
    bench.requirements({ kind: 'requirements', texts: { protocol: written, cases: cases.text } });
}

function changed(from: string, to: string): string {
  const made = text.replace(from, to);
  expect(made).not.toBe(text);
  return made;
}

test('what is proven is told, and after a change what is refuted, with what the set is answered', () => {
  const ask = opened();
  const before = ask(text);
  expect(before.answers.map(({ verdict }) => verdict)).toEqual(Array(stated).fill('proven'));
  const after = ask(changed('when: { systolic: { at_most: 90 }', 'when: { systolic: { at_most: 88 }'));
  const refuted = after.answers.filter(({ verdict }) => verdict === 'refuted');
  expect(refuted.map(({ name }) => name)).toContain('low_calls_the_doctor');
  expect(refuted[0]?.says).toContain('at least "Call the doctor" is required');
});

test('while only words of rules change nothing is asked again; a threshold of a requirement is', () => {
  const ask = opened();
  const before = ask(text);
  expect(ask(changed('says: ', 'says: Now and then. '))).toBe(before);
  const after = ask(changed('where: { systolic: { at_most: 90 } }', 'where: { systolic: { at_most: 91 } }'));
  expect(after.answers[0]?.verdict).toBe('refuted');
});

test('of a text that cannot be read nothing is told, and the old answers do not stay', () => {
  const ask = opened();
  expect(ask(text).answers.length).toBe(stated);
  expect(ask(changed('rules:', 'rulez:')).answers).toEqual([]);
});
