import { expect, test } from 'vitest';
import { askable } from '../bundled.ts';
import { ask } from './kit.ts';
import { severeMinutes, severityFigures } from './pregnancy-figures.ts';

const protocol = 'pregnancy_severe_pressure';

test.each(
  severityFigures.flatMap((figure) =>
    ['pregnant', 'within_6_weeks_of_birth'].map((pregnancy) => ({ ...figure, pregnancy })),
  ),
)('$id, $pregnancy: severe is $severe', ({ systolic, diastolic, pregnancy, severe }) => {
  const { rules, level } = ask(askable(protocol), { pregnancy, systolic, diastolic });
  expect(rules.find(({ rule }) => rule === 'severe_now')?.state).toBe(severe ? 'met' : 'not_met');
  expect(level?.at_least).toBe(severe ? 'call_doctor' : 'tell_nurse_in_charge');
});

/** The rules that are met when a severe set is followed by another so many minutes later. */
function metAfter(minutes: number): string[] {
  const severe = { pregnancy: 'pregnant', systolic: 164, diastolic: 104 };
  const start = Date.parse('2026-03-03T10:00:00Z');
  const at = (after: number): string => new Date(start + after * 60_000).toISOString();
  const sets = [0, minutes].map((after) => ({ at: at(after), ...severe }));
  const { rules } = ask(askable(protocol), { sets });
  return rules.filter(({ state }) => state === 'met').map(({ rule }) => rule);
}

const { persisting, treatFrom, treatBy } = severeMinutes;

test.each([
  ['severe_lasting', persisting],
  ['treatment_due', persisting + treatFrom],
  ['treatment_late', persisting + treatBy],
])('%s is met from %d minutes on, and not a minute before', (rule, minutes) => {
  expect(metAfter(minutes)).toContain(rule);
  expect(metAfter(minutes - 1)).not.toContain(rule);
});
