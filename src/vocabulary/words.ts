/** British spellings of words that are also written otherwise; both ways of writing then compare as the same word. */
const spellings: ReadonlyMap<string, string> = new Map(
  Object.entries({
    anesthesia: 'anaesthesia',
    anesthetic: 'anaesthetic',
    behavior: 'behaviour',
    center: 'centre',
    centimeter: 'centimetre',
    color: 'colour',
    diarrhea: 'diarrhoea',
    dyspnea: 'dyspnoea',
    edema: 'oedema',
    fetal: 'foetal',
    fetus: 'foetus',
    fiber: 'fibre',
    gray: 'grey',
    gynecology: 'gynaecology',
    hematology: 'haematology',
    hematoma: 'haematoma',
    hemoglobin: 'haemoglobin',
    hemorrhage: 'haemorrhage',
    hypovolemia: 'hypovolaemia',
    hypoxemia: 'hypoxaemia',
    ischemia: 'ischaemia',
    kilometer: 'kilometre',
    leukocyte: 'leucocyte',
    liter: 'litre',
    meter: 'metre',
    milliliter: 'millilitre',
    neighbor: 'neighbour',
    odor: 'odour',
    orthopedic: 'orthopaedic',
    pediatric: 'paediatric',
    practice: 'practise',
    program: 'programme',
    tumor: 'tumour',
  }),
);

/** Endings of whole families: `stabilize`, `stabilise`. */
function british(word: string): string {
  const known = spellings.get(word);
  if (known !== undefined) return known;
  return word.replace(/([a-z]{3,})iz(e|ed|es|er|ing|ation)$/, '$1is$2');
}

/** One of several: `rates` is `rate`, `allergies` is `allergy`. Short words and `pus`, `loss` stay as they are. */
function singular(word: string): string {
  if (word.length < 4 || !word.endsWith('s') || /(?:ss|us|is)$/.test(word)) return word;
  if (word.endsWith('ies')) return `${word.slice(0, -3)}y`;
  return word.slice(0, -1);
}

/** The parts of a name between underscores, hyphens, spaces and capitals; digits stand alone. */
function parts(name: string): string[] {
  const spaced = name
    .normalize('NFKD')
    .replace(/\p{M}/gu, '')
    .replace(/(\p{Ll})(\p{Lu})/gu, '$1 $2')
    .replace(/(\p{Lu})(\p{Lu}\p{Ll})/gu, '$1 $2')
    .toLowerCase()
    .replace(/(\p{L})(\p{N})/gu, '$1 $2')
    .replace(/(\p{N})(\p{L})/gu, '$1 $2');
  return (spaced.match(/[\p{L}\p{N}]+/gu) ?? []).map(british);
}

/**
 * The words of a name, brought to one way of writing: small letters without accents, British spelling, one of several.
 *
 * `wordsOf('Heart-Rates')`, `wordsOf('heartRate')` and `wordsOf('heart_rate')` are all `['heart', 'rate']`; digits stand
 * alone, so that `last 6h` and `last_6_h` are the same.
 */
export const wordsOf = (name: string): string[] => parts(name).map(singular);

/** The letters and digits of a name without anything between them. `lettersOf('Heart-Rates')` is `'heartrates'`. */
export const lettersOf = (name: string): string => parts(name).join('');
