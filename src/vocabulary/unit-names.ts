import { nearMiss, type Candidate } from './near-miss.ts';
import { units } from './units.ts';

/** What else people write for a unit, beside its UCUM code; used only to say what was meant. */
const alsoWritten: Readonly<Record<string, readonly string[]>> = {
  mmHg: ['mm Hg', 'millimetres of mercury', 'torr'],
  kPa: ['kilopascal'],
  cmH2O: ['cm H2O', 'centimetres of water'],
  ms: ['msec', 'millisecond'],
  s: ['sec', 'second'],
  min: ['mins', 'minute'],
  h: ['hr', 'hrs', 'hour'],
  d: ['day'],
  wk: ['week', 'w'],
  mo: ['month', 'mth'],
  y: ['yr', 'yrs', 'year', 'years old'],
  '/min': [
    'bpm',
    'rpm',
    'per minute',
    'beats/min',
    'breaths/min',
    'beats per minute',
    'breaths per minute',
    '1/min',
  ],
  '/s': ['per second', 'Hz'],
  '/h': ['per hour'],
  '°C': ['C', 'degC', 'celsius', 'degrees celsius', 'centigrade'],
  '°F': ['F', 'fahrenheit', 'degrees fahrenheit'],
  '%': ['percent', 'per cent', 'pct'],
  g: ['gram', 'gm'],
  kg: ['kilo', 'kilogram', 'kgs'],
  lb: ['lbs', 'pound'],
  mm: ['millimetre'],
  cm: ['centimetre'],
  m: ['metre'],
  in: ['inch', 'inches'],
  mL: ['millilitre', 'cc'],
  L: ['litre'],
  'mL/h': ['mL/hr', 'mL per hour'],
  'L/min': ['lpm', 'L per minute', 'litres per minute'],
  'mL/kg/h': ['mL/kg/hr', 'mL per kg per hour'],
  'mmol/L': ['millimoles per litre', 'mmol per litre'],
  '10^9/L': ['x10^9/L', '10e9/L', 'G/L'],
  '10^3/uL': ['K/uL', 'x10^3/uL'],
  points: ['point', 'score', 'pts'],
};

const candidates: readonly Candidate[] = units.map(({ word, ucum }) => ({
  name: word,
  alsoCalled: ucum === word ? (alsoWritten[word] ?? []) : [ucum, ...(alsoWritten[word] ?? [])],
}));

const bySigns = new Map(
  candidates.flatMap(({ name, alsoCalled }) =>
    [name, ...(alsoCalled ?? [])].map((each) => [signs(each), name]),
  ),
);

/** What is left of a unit when capitals and spaces do not count; the signs that make it a unit do. */
function signs(written: string): string {
  return written
    .normalize('NFKC')
    .toLowerCase()
    .replace(/[\s[\]{}]/g, '')
    .replace(/º/g, '°')
    .replace(/µ|μ/g, 'u');
}

/** The unit that was probably meant; null when nothing is near. `nearestUnit('bpm')` is `'/min'`, `nearestUnit('years')` is `'y'`. */
export function nearestUnit(written: string): string | null {
  if (written.length > 40) return null;
  return bySigns.get(signs(written)) ?? nearMiss(written, candidates);
}
