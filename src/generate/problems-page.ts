import { readdirSync, readFileSync } from 'node:fs';
import { fileURLToPath } from 'node:url';
import { parse } from 'yaml';
import { catalogue, type Code } from '../problems/catalogue.ts';
import { pageBanner, type Output } from './output.ts';

interface Examples {
  readonly of?: 'protocol' | 'ladder' | 'cases' | 'child' | 'ward';
  readonly reject: readonly string[];
  readonly accept: readonly string[];
}

const folder = fileURLToPath(new URL('../../schema/problems', import.meta.url));

/** The page of the problems of what a file means: for each an example that has it, and one that is well. */
export const problemsPage: Output = {
  path: 'schema/reference/problems.md',
  make: () => {
    const codes = readdirSync(folder)
      .map((name) => name.replace('.yaml', ''))
      .sort() as Code[];
    return [
      pageBanner('schema/problems/'),
      '# Problems\n',
      'What `vitalwright check` says about the meaning of a file. Each code has an example that is refused and one that is not; the examples',
      'are parts that are laid over a small whole file. An error must be mended. A warning is answered in the file by `accepted:` with',
      'the reason.\n',
      ...codes.map(section),
    ].join('\n');
  },
};

const placeWords = {
  protocol: 'a protocol',
  ladder: 'a ladder',
  cases: 'a case file',
  child: 'a protocol that is based on another',
  ward: 'a ward policy',
  edition: 'a sealed edition, with one thing changed',
  record: 'the record of a policy',
  approvers: 'a list of approvers',
} as const;

function section(code: Code): string {
  const { of, reject, accept } = parse(readFileSync(`${folder}/${code}.yaml`, 'utf8')) as Examples;
  const where = of === undefined ? '' : ` (in ${placeWords[of]})`;
  return [
    `## \`${code}\`\n`,
    `${catalogue[code].severity === 'error' ? 'An error' : 'A warning'}${where}.\n`,
    'Refused:\n',
    fenced(reject[0] ?? ''),
    'Well:\n',
    fenced(accept[0] ?? ''),
  ].join('\n');
}

/** The first lines of an example; a long one is cut, and says so. */
function fenced(text: string): string {
  const lines = text.trimEnd().split('\n');
  const shown = lines.length > 12 ? [...lines.slice(0, 10), '# …'] : lines;
  return `\`\`\`yaml\n${shown.join('\n')}\n\`\`\`\n`;
}
