import {
  evaluate,
  readProtocol,
  readSet,
  type Compiled,
  type Outcome,
  type Problem,
} from '../../src/index.ts';
import { askable, bundledLadder } from '../bundled.ts';
import { protocolText, type Found, type Work } from './works.ts';

const ladder = bundledLadder();
const read = new Map<string, Compiled>();

/** A protocol of this folder, ready to be asked. It must pass the check without a problem. */
export function testProtocol(name: string): Compiled {
  const known = read.get(name);
  if (known) return known;
  const { protocol, problems } = readProtocol(`${name}.yaml`, protocolText(name), { ladder });
  if (!protocol || problems.length > 0) {
    throw new Error(problems.map(({ line, says }) => `${name}.yaml:${line}: ${says}`).join('\n'));
  }
  read.set(name, protocol);
  return protocol;
}

/** The protocol that a file of figures is held against. */
export const protocolOf = ({ protocol, bundled }: Work): Compiled =>
  bundled === undefined ? testProtocol(protocol ?? '') : askable(bundled);

/** What a protocol says about a set or a series, as in JSON: `{ respiratory_rate: 8 }`, units as UCUM codes. */
export function ask(protocol: Compiled, set: object): Outcome {
  const { series, problems } = readSet('set.json', JSON.stringify(set), protocol);
  if (!series) throw new Error(problems.map(({ says }) => says).join('\n'));
  return evaluate(protocol, series);
}

/** An adult for whom the bundled protocols are, with what is given. */
export const adult = (given: object): object => ({
  age: { value: 47, unit: 'a' },
  pregnancy: 'not_pregnant',
  ...given,
});

/**
 * The problems of a protocol of this folder after printed bands were written below it as a partition of the name `printed`,
 * and the line of that name.
 */
export function withBands(
  work: Work,
  { exactly_one_of: bands }: Found,
): { line: number; problems: readonly Problem[] } {
  const before = protocolText(work.protocol ?? '');
  // Where a protocol has partitions of its own, they stand last in its file.
  const heading = before.includes('\nexactly_one_of:\n') ? '' : 'exactly_one_of:\n';
  const text = `${before}${heading}  printed: ${JSON.stringify(bands)}\n`;
  const { problems } = readProtocol(`${work.name}.yaml`, text, { ladder });
  return { line: text.split('\n').length - 1, problems };
}
