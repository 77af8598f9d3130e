import { readProtocol, type Compiled, type Parents, type Problem } from '../../../src/index.ts';
import { bundledLadder } from '../../bundled.ts';

const ladder = bundledLadder();

/** A hospital's protocol: a limit that may be changed and one that may not, a rule that names another, a measure. */
export const hospital = `protocol: hospital
edition: 3
title: Of the hospital
ladder: alder_ladder
applies_when: { age: { at_least: 16 y } }
otherwise: For a child use the chart of the children.
sources: { council: { cite: "Common practice, no published source" } }
observations: { needs: [systolic, diastolic], helps: [skin] }
limits:
  floor: { value: 90, unit: mmHg, between: [80, 110] }
  fixed: { value: 200, unit: mmHg }
measures:
  gap: { formula: systolic - diastolic, unit: mmHg }
rules:
  - { rule: low, when: { systolic: { below: floor } }, level: look_again, says: It suggests a low pressure., source: [council] }
  - { rule: high, when: { systolic: { above: fixed } }, level: look_again, says: It suggests a high pressure., source: [council] }
  - { rule: mottled, when: { skin: { is: mottled } }, level: call_doctor, says: It suggests little flow., source: [council] }
  - { rule: low_and_narrow, when: { rule: low, gap: { below: 30 } }, level: call_doctor, says: It suggests little flow., source: [council] }
`;

/** The head of a ward's protocol, and what is based on, in flow style or on lines of its own. */
export const ward = (basedOn: string, parts = ''): string => `protocol: ward
edition: 1
title: Of the ward
based_on: ${basedOn}
ladder: alder_ladder
${parts}`;

/** The same with the hospital's protocol below it. */
export const onHospital = (changes: string, parts = ''): string =>
  ward(`{ protocol: hospital, edition: 3${changes === '' ? '' : `, ${changes}`} }`, parts);

export const rule = (name: string, when: string, more = 'level: call_doctor'): string =>
  `  - { rule: ${name}, when: ${when}, ${more}, says: It suggests something., source: [council] }\n`;

export const parentsOf = (texts: Readonly<Record<string, string>>): Parents =>
  new Map(Object.entries(texts).map(([name, text]) => [name, { file: `${name}.yaml`, text }]));

/** Reads a protocol with the hospital's, and more, to be based on. */
export function read(
  text: string,
  more: Readonly<Record<string, string>> = {},
  today: string | null = null,
): { protocol: Compiled | null; problems: readonly Problem[] } {
  return readProtocol('ward.yaml', text, { ladder, today, parents: parentsOf({ hospital, ...more }) });
}

/** A protocol that must be without errors. */
export function sound(text: string, more: Readonly<Record<string, string>> = {}): Compiled {
  const { protocol, problems } = read(text, more);
  if (!protocol) throw new Error(problems.map(({ line, says }) => `${line}: ${says}`).join('\n'));
  return protocol;
}

/** What is said of a text, each with the words of the file that are marked: `code at words`. */
export function told(text: string, more: Readonly<Record<string, string>> = {}): string[] {
  return read(text, more).problems.map(({ code, file, source, column, length, line }) => {
    const written = text.split('\n')[line - 1];
    if (file !== 'ward.yaml' || source !== written) return `${code} at a wrong place: ${file}:${line}`;
    return `${code} at ${source.slice(column - 1, column - 1 + length)}`;
  });
}
