/** What every outcome, screen and printout carries. */
export const caution =
  'This supports the judgement of a licensed clinician and the policy of the place, and replaces neither. It is not a medical device. ' +
  'When it and the paper policy differ, the paper policy wins. Whoever is worried about a patient calls, whatever stands here.';
