import { readDictionary } from '../vocabulary/dictionary.ts';
import type { DictionaryFile } from '../vocabulary/generated/dictionary-file.ts';
import type { Band, ObservationEntry } from '../vocabulary/observation.ts';
import { plainDictionary } from './dictionary-output.ts';
import { markdownText, pageBanner, type Output } from './output.ts';

/** The page of the dictionary: every observation that a protocol can list. */
export const observationsPage: Output = {
  path: 'schema/reference/observations.md',
  make: (inputs) => {
    const file = plainDictionary(inputs) as DictionaryFile;
    const { observations } = readDictionary(file, (code) => {
      throw new Error(`schema/vital_signs.yaml has a problem: ${code}`);
    });
    const numbers = [...observations.values()].filter(({ kind }) => kind === 'number');
    const others = [...observations.values()].filter(({ kind }) => kind !== 'number');
    return [
      pageBanner('schema/vital_signs.yaml'),
      '# Observations\n',
      'What a protocol can list under `needs` and `helps`. Ranges include both ends; where they change with age, the ages are named.\n',
      '## Numbers\n',
      '| name | what | unit | step | possible | plausible | ordinary | good for | LOINC |',
      '|---|---|---|---|---|---|---|---|---|',
      ...numbers.map(numberRow),
      '\n## Choices, and yes or no\n',
      '| name | what | kind | choices | ordinary | good for | LOINC |',
      '|---|---|---|---|---|---|---|',
      ...others.map(choiceRow),
      '\n## Sources\n',
      ...Object.values(file.sources ?? {}).map(({ cite }) => `- ${markdownText(cite)}`),
      '',
    ].join('\n');
  },
};

function numberRow(entry: ObservationEntry): string {
  const { name, title, unit, stepsPerUnit, ordinary, loinc } = entry;
  return row([
    `\`${name}\``,
    title,
    unit?.word ?? '',
    stepsPerUnit.inverse().round(6).toString(),
    entry.possible.map((band) => range(band, entry)).join('; '),
    entry.plausible.map((band) => range(band, entry)).join('; '),
    typeof ordinary === 'number' ? value(ordinary, entry) : '',
    lasting(entry),
    loinc ?? '',
  ]);
}

function choiceRow(entry: ObservationEntry): string {
  const { name, title, kind, choices, ordinary, loinc } = entry;
  const listed = kind === 'yes_no' ? '`yes`, `no`' : choices.map(({ choice }) => `\`${choice}\``).join(', ');
  const usual = Array.isArray(ordinary)
    ? (ordinary as readonly string[]).map((each) => `\`${each}\``).join(', ')
    : '';
  return row([`\`${name}\``, title, kind, listed, usual, lasting(entry), loinc ?? '']);
}

const row = (cells: readonly string[]): string => `| ${cells.map(markdownText).join(' | ')} |`;

const value = (steps: number, { stepsPerUnit }: ObservationEntry): string =>
  stepsPerUnit.inverse().mul(steps).round(2).toString();

function range({ ageBelow, low, high }: Band, entry: ObservationEntry): string {
  const until = ageBelow === null ? '' : ` below ${ageInWords(ageBelow)}`;
  return `${value(low, entry)} to ${value(high, entry)}${until}`;
}

/** Steps of age are sixteenths of a day: in years where they are whole, else in months, else in days. */
function ageInWords(steps: number): string {
  const [year, month] = [5844, 487];
  if (steps % year === 0) return `${steps / year} y`;
  return steps % month === 0 ? `${steps / month} mo` : `${steps / 16} d`;
}

/** How long a value may stand in, in the largest unit that is whole. */
function lasting({ standing, goodFor }: ObservationEntry): string {
  if (standing) return 'until changed';
  if (goodFor === null) return 'its own time';
  const units = [
    ['d', 86_400_000],
    ['h', 3_600_000],
    ['min', 60_000],
  ] as const;
  const [word, length] = units.find(([, each]) => goodFor % each === 0) ?? units[2];
  return `${goodFor / length} ${word}`;
}
