import { asRules, type RulesSay, type Said, type Verdict } from './judge.ts';

export const verdictTitles: Readonly<Record<Verdict, string>> = {
  as_the_rule_says: 'As the rule says',
  too_little: 'Called too little',
  too_much: 'Called too much',
  left_open: 'Left open by the rule',
};

/** What a learner can say, in words. `ladder` holds the titles of the levels, lowest first. */
export function saidInWords(said: Said, ladder: readonly string[]): string {
  if (said === 'complete_the_set') return 'Not settled: complete the set';
  if (said === 'not_for_patient') return 'Not for this patient: use another chart';
  return ladder[said] ?? '';
}

/** Everything that can be said, the highest level first. */
export const sayable = (ladder: readonly string[]): readonly Said[] => [
  ...ladder.map((_, index) => index).toReversed(),
  'complete_the_set',
  'not_for_patient',
];

/** What the rules say, in words: `Act now on: Call the doctor. It could be as high as: Emergency call`. */
export function rulesInWords(rules: RulesSay, ladder: readonly string[]): string {
  const words = saidInWords(asRules(rules), ladder);
  if (rules === null || rules.couldBe <= (rules.atLeast ?? 0)) return words;
  const could = `It could be as high as: ${ladder[rules.couldBe] ?? ''}`;
  return rules.atLeast === null ? `${words}. ${could}` : `Act now on: ${words}. ${could}`;
}

/** How an answer stands beside the rules, in one or two sentences. */
export function verdictInWords(said: Said, rules: RulesSay, verdict: Verdict): string {
  switch (verdict) {
    case 'as_the_rule_says':
      return 'You said what your ward’s rule says.';
    case 'too_much':
      return said === 'complete_the_set'
        ? 'Your ward’s rule asks for less: nothing that is missing here could change the level.'
        : 'Your ward’s rule asks for less, whatever is still missing.';
    case 'left_open':
      return rules === null
        ? 'Your ward’s rule leaves this open: it has no level here, and another chart may call for yours.'
        : 'Your ward’s rule leaves this open: it calls for less so far, and what is missing could take it as high as you said.';
    case 'too_little':
      return tooLittle(said, rules);
  }
}

function tooLittle(said: Said, rules: RulesSay): string {
  if (rules === null)
    return 'Your ward’s rule is not for this patient, and its silence reassures nobody: this patient needs another chart.';
  if (said === 'not_for_patient')
    return 'Your ward’s rule asks for more: nothing here takes this patient out of it.';
  if (said === 'complete_the_set')
    return 'Your ward’s rule asks for more than to wait for the set: it calls for this already.';
  if (rules.atLeast === null)
    return 'Your ward’s rule asks for more: the lowest level is only an answer when nothing is missing that could change it.';
  return 'Your ward’s rule asks for more.';
}
