import { error, warning } from '../entry.ts';

/** Problems of case files, and cases that do not come out as expected. */
export const casesWording = {
  case_of_another_protocol: error(
    (f: { name: string; protocol: string }) =>
      `These cases are for "${f.name}", but stand beside the protocol "${f.protocol}".`,
    (f) => f.protocol,
  ),
  case_needs_one_story: error(
    (f: { both: boolean }) =>
      f.both ? 'The case has both given and series.' : 'The case has neither given nor series.',
    () => 'given, for one set; or series, for sets with their times',
  ),
  case_twice: error(
    (f: { name: string }) => `There are two cases called "${f.name}".`,
    () => 'a name of its own for each case',
  ),
  case_contradicts_itself: error(
    (f: { name: string; first: string; second: string }) =>
      `"${f.name}" is expected to be both ${f.first} and ${f.second}.`,
    () => 'each rule expected one way',
  ),
  unknown_measure: error(
    (f: { name: string }) => `There is no measure "${f.name}" in this protocol.`,
    () => 'the name of a measure of this protocol',
  ),
  unknown_change: error(
    (f: { change: string }) => `No small change of this protocol is called "${f.change}".`,
    () => 'the name of a change, as "vitalwright check --unguarded" prints it',
  ),
  answer_not_needed: warning(
    (f: { change: string; because: string }) =>
      `A reason is given for "${f.change}" as if nothing noticed it, but ${f.because}.`,
    () => 'reasons only for changes that nothing notices',
  ),
  unknown_fault: error(
    (f: { name: string }) => `There is no fault "${f.name}" in this protocol.`,
    () => 'the name of a fault of this protocol',
  ),
  case_fails: error(
    (f: { name: string; what: string; expected: string; found: string }) =>
      `The case "${f.name}" expects ${f.what}: ${f.expected}; it is ${f.found}.`,
  ),
} as const;
