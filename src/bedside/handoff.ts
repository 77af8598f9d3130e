import { changedLimits } from './sheet-facts.ts';
import type { BedsideSheet, GapList, SheetLevel } from './sheet.ts';

/** What only a person knows; null or blank: still to be filled in. */
export interface Background {
  readonly caller: string;
  readonly bed: string;
  readonly reason: string;
  readonly history: string;
  readonly treatment: string;
  readonly allergies: string;
}

/** What each blank asks for, in the order in which it is said. */
export const blanks: Readonly<Record<keyof Background, string>> = {
  caller: 'your name and ward',
  bed: 'bed label',
  reason: 'why the patient is in hospital',
  history: 'what matters from before',
  treatment: 'medicines, oxygen and fluids since the last set',
  allergies: 'allergies',
};

export const emptyBackground: Background = {
  caller: '',
  bed: '',
  reason: '',
  history: '',
  treatment: '',
  allergies: '',
};

/** Marks a blank, so that it looks unfinished wherever the text goes. */
const blank = (asks: string): string => `[TO FILL IN: ${asks}]`;

/** How many blanks are left. */
export const blanksLeft = (background: Background): number =>
  Object.values<string>({ ...background }).filter((each) => each.trim() === '').length;

/** What holds for the patient, in sentences, where somebody stated it. */
export interface HandoffFacts {
  readonly standing: readonly string[];
  /** Earlier sets by time: `2026-03-04 08:00 UTC: systolic pressure 128 mmHg, …`. */
  readonly earlier: readonly string[];
}

/** What is to be said of what was read with, beside its name. */
export interface SaidOfSource {
  /** Before everything else: what failed or is overdue. */
  readonly warnings: readonly string[];
  /** Since when it is in force, or that it is not; null where that is not known. */
  readonly says: string | null;
}

const nothingSaid: SaidOfSource = { warnings: [], says: null };

/** Of what is read as its text stands, and not as the record says. */
export const draftSaid: SaidOfSource = {
  warnings: [],
  says: 'A draft, not in force: read as its text stands here, whatever was approved.',
};

/**
 * A handoff in the order that the trade uses: Situation, Background, Assessment, Recommendation. Plain text, wrapped nowhere, one
 * fact a line. While a blank is left, its first line says so; only what must be said of the policy stands before that.
 */
export function handoffText(
  sheet: BedsideSheet,
  facts: HandoffFacts,
  background: Background,
  { warnings, says }: SaidOfSource = nothingSaid,
): string {
  const about = warnings.flatMap((line) => [`ABOUT THIS POLICY: ${line}`, '']);
  const left = blanksLeft(background);
  const unfinished =
    left > 0
      ? [`UNFINISHED: ${left === 1 ? '1 blank is' : `${left} blanks are`} still to be filled in.`, '']
      : [];
  const parts = [
    section('SITUATION', situation(sheet, background)),
    section('BACKGROUND', backgroundLines(sheet, facts, background)),
    section('ASSESSMENT', assessment(sheet, facts)),
    section('RECOMMENDATION', recommendation(sheet)),
    [`Read with: ${sheet.title} (${sheet.edition})`, ...(says === null ? [] : [says]), sheet.caution],
  ];
  return `${[...about, ...unfinished, ...parts.flatMap((lines) => [...lines, '']).slice(0, -1)].join('\n')}\n`;
}

const section = (heading: string, lines: readonly string[]): string[] => [heading, ...lines];
const items = (lines: readonly string[]): string[] => lines.map((line) => `- ${line}`);
const filled = (background: Background, key: keyof Background): string =>
  background[key].trim() === '' ? blank(blanks[key]) : background[key].trim().replaceAll(/\s+/gu, ' ');

function situation({ at, level, why }: BedsideSheet, background: Background): string[] {
  const suggests = why.flatMap(({ says, level: calls }) => (says !== null && calls !== null ? [says] : []));
  return [
    `I am: ${filled(background, 'caller')}`,
    `About: ${filled(background, 'bed')}`,
    `Set taken: ${at ?? blank('time of the set')}`,
    ...levelLines(level),
    ...(suggests.length > 0 ? ['What the reading suggests:', ...items(suggests.slice(0, 3))] : []),
  ];
}

function levelLines({ kind, heading, couldBe, reasons, notes }: SheetLevel): string[] {
  const words = heading.toUpperCase();
  if (kind === 'settled') return [`Level: ${words}`];
  return [
    kind === 'at_least' ? `Level, not settled: ${words}. ${couldBe ?? ''}.` : words,
    ...(kind === 'not_settled' && couldBe !== null ? [`${couldBe}.`] : []),
    ...(kind === 'not_for_patient' ? [...items(reasons), ...notes] : []),
  ];
}

function backgroundLines(
  { facts }: BedsideSheet,
  { standing }: HandoffFacts,
  background: Background,
): string[] {
  const changed = facts.find(({ heading }) => heading === changedLimits)?.items ?? [];
  return [
    `In hospital because: ${filled(background, 'reason')}`,
    `From before: ${filled(background, 'history')}`,
    `Given so far: ${filled(background, 'treatment')}`,
    `Allergies: ${filled(background, 'allergies')}`,
    ...(standing.length > 0 ? ['Stated about the patient:', ...items(standing)] : []),
    ...(changed.length > 0 ? ['Limits changed for this patient:', ...items(changed)] : []),
  ];
}

function assessment(sheet: BedsideSheet, { earlier }: HandoffFacts): string[] {
  const remarks = [
    ...new Set(sheet.refused.map(({ says }) => `NOT USED: ${says}`)),
    ...new Set(sheet.questioned.map(({ says }) => `QUESTIONED: ${says}`)),
  ];
  return [
    ...items(remarks),
    'Observations:',
    ...items(sheet.observed.map(({ title, words }) => `${title}: ${words}`)),
    ...(earlier.length > 0 ? ['Earlier sets:', ...items(earlier)] : []),
    ...found(sheet),
    ...(sheet.faults ? ['How it was taken:', ...items(sheet.faults.open), sheet.faults.matters] : []),
    ...(sheet.notReassuring.length > 0
      ? ['Not met, but that reassures nobody:', ...items(sheet.notReassuring)]
      : []),
    ...sheet.level.inForce,
  ];
}

/** In full what calls for the level; the rest by its titles alone, so that whoever listens hears what matters. */
function found({ why, level }: BedsideSheet): string[] {
  if (why.length === 0) return ['Found: no rule is met by what is known.'];
  const reached = level.ladder[level.reached ?? -1] ?? null;
  const calling = why.filter((rule) => rule.level !== null && rule.level === reached);
  const told = calling.length > 0 ? calling : why;
  const rest = [...new Set(why.filter((rule) => !told.includes(rule)).map(({ title }) => title))];
  return [
    'Found:',
    ...items(
      told.map(({ title, of, decidedBy }) => {
        const name = of === null ? title : `${title} (${of})`;
        return decidedBy.length > 0 ? `${name}: ${decidedBy.join('; ')}` : name;
      }),
    ),
    ...(rest.length > 0 ? [`Also met: ${rest.join('; ')}`] : []),
  ];
}

const asksFor: Readonly<Record<GapList['kind'], string | null>> = {
  ask: 'ask',
  take: 'take',
  missing: null,
  unobtainable: 'try again, as it could not be obtained',
  declined: 'ask again, as it was declined',
  rough: null,
  more: null,
};

function recommendation({ level, gaps, plan, faults }: BedsideSheet): string[] {
  const open = gaps.lists.flatMap(({ kind, gaps: each }) =>
    asksFor[kind] === null ? [] : each.map(({ title }) => `${asksFor[kind]}: ${title}`),
  );
  return [
    ...(plan ? [`${plan.title}. ${plan.says}`] : []),
    ...(level.says === null ? [] : [level.says]),
    ...labelled('Tell', level.tell.join('; ')),
    ...labelled('By when', level.byWhen),
    ...labelled('If no answer', level.noAnswer),
    ...(level.doFirst.length > 0 ? [`${level.doHeading}:`, ...items(level.doFirst)] : []),
    ...(faults ? ['Taken with a fault of technique; take it again, and delay no call for it.'] : []),
    ...(open.length > 0 ? ['Still open:', ...items(open)] : []),
    ...labelled('Next set', level.nextSet),
    ...(level.kind === 'not_settled' ? ['Complete the set. Worried? Call now, do not wait for it.'] : []),
  ];
}

const labelled = (label: string, text: string | null): string[] =>
  text === null || text === '' ? [] : [`${label}: ${text}`];
