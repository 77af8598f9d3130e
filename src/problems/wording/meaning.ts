import { error, warning } from '../entry.ts';

type Name = { name: string };

const list = (words: readonly string[]): string => words.join(', ');
const anyNumber = (): string => 'an observation with a number, a measure, or a limit';

/** Problems of what a protocol means: names, kinds, units, numbers, rules. */
export const meaningWording = {
  // Names
  unknown_name: error(
    (f: Name) => `"${f.name}" is neither an observation nor a measure of this protocol.`,
    () => 'an observation from the dictionary, or a measure declared under measures',
  ),
  unknown_observation: error(
    (f: Name) => `"${f.name}" is not an observation that the dictionary or this protocol knows.`,
    () => 'an observation from the dictionary, or one declared under observations, declares',
  ),
  unknown_number: error((f: Name) => `"${f.name}" is not a number that this protocol knows.`, anyNumber),
  unknown_rule: error(
    (f: Name) => `There is no rule "${f.name}" in this protocol.`,
    () => 'the name of a rule of this protocol',
  ),
  unknown_level: error(
    (f: Name & { levels: readonly string[] }) => `"${f.name}" is not a level of the ladder.`,
    (f) => `one of ${list(f.levels)}`,
  ),
  unknown_source: error(
    (f: Name) => `"${f.name}" is not declared under sources.`,
    () => 'the name of a source that is declared under sources',
  ),
  unknown_choice: error(
    (f: Name & { choice: string; choices: readonly string[] }) =>
      `"${f.choice}" is not a choice of ${f.name}.`,
    (f) => `one of ${list(f.choices)}`,
  ),
  unknown_unit: error(
    (f: { unit: string }) => `"${f.unit}" is not a unit that this kit knows.`,
    () => "a unit in the trade's words, for example mmHg, /min, °C, %, mmol/L, y, mo, h",
  ),
  observation_not_listed: error(
    (f: Name) => `"${f.name}" is read here, but stands neither under needs nor under helps.`,
    (f) => `${f.name} listed under observations: needs or helps`,
  ),
  listed_twice: error((f: Name) => `"${f.name}" is listed twice under observations.`),
  name_used_twice: error(
    (f: Name & { first: string; second: string }) =>
      `"${f.name}" is used for two things: it is already the name of the ${f.first}, and here of the ${f.second}.`,
    () => 'a name of its own for each thing',
  ),
  rule_twice: error(
    (f: Name) => `There are two rules called "${f.name}".`,
    () => 'a name of its own for each rule',
  ),
  reserved_word: error(
    (f: Name) => `"${f.name}" is a word of the language and cannot be a name.`,
    () => 'another name',
  ),
  circle: error(
    (f: { names: readonly string[] }) => `These name each other in a circle: ${f.names.join(' → ')}.`,
    () => 'no way round from a name to itself',
  ),
  ladder_not_found: error((f: Name) => `The ladder "${f.name}" cannot be found, or has problems of its own.`),

  // Comparisons
  nothing_compared: error(
    (f: Name) => `Nothing is asked of ${f.name} here.`,
    () => 'a comparison, for example at_least: 90',
  ),
  limit_compared: error(
    (f: Name) => `"${f.name}" is a limit: it stands on the right of a comparison.`,
    (f) => `the name of an observation or a measure, compared with ${f.name}`,
  ),
  rule_compared: error(
    (f: Name) => `"${f.name}" is a rule; it is not compared with anything.`,
    (f) => `rule: ${f.name}`,
  ),
  fact_of_measure: error(
    (f: Name & { key: string }) => `"${f.key}" is asked of "${f.name}", which is a measure.`,
    (f) => `${f.key} asked of an observation`,
  ),
  choice_of_number: error(
    (f: Name & { key: string }) => `"${f.name}" is a number, so "${f.key}" cannot be asked of it.`,
    () => 'below, above, at_most, at_least or between',
  ),
  is_of_several: error(
    (f: Name & { choice: string }) =>
      `"${f.name}" can hold several choices at once, so "is" would not say which are meant.`,
    (f) => `one_of: [${f.choice}], which holds when ${f.choice} is among them`,
  ),
  number_of_choice: error(
    (f: Name & { key: string; choices: readonly string[] }) =>
      `"${f.name}" is not a number, so "${f.key}" cannot be asked of it.`,
    (f) => `is or one_of with ${list(f.choices)}`,
  ),
  plain_number_wanted: error(
    (f: { written: string }) => `"${f.written}" has a unit; the points of a curve are plain numbers.`,
    () => 'the number alone, in the unit of what the curve is read at',
  ),
  unit_mismatch: error(
    (f: { left: string; right: string }) =>
      `${f.left} and ${f.right} measure different things; they cannot be added or compared.`,
    (f) => `both in ${f.left}`,
  ),
  threshold_outside_possible: error(
    (f: Name & { asked: string; low: string; high: string }) =>
      `This asks for ${f.name} of ${f.asked}; it never has such a value (possible: ${f.low} to ${f.high}).`,
    (f) => `a number from ${f.low} to ${f.high}`,
  ),
  threshold_off_step: error(
    (f: Name & { written: string; step: string }) =>
      `${f.name} is written down in steps of ${f.step}, so ${f.written} stands between two values.`,
    (f) => `a multiple of ${f.step}`,
  ),
  comparison_never_true: error(
    (f: { asked: string }) => `This can never hold: ${f.asked}.`,
    () => 'a comparison that holds for some possible set and fails for another',
  ),
  comparison_always_true: error(
    (f: { asked: string }) => `This always holds: ${f.asked}.`,
    () => 'a comparison that holds for some possible set and fails for another',
  ),
  between_wrong_way: error(
    (f: { from: string; to: string }) => `"between" runs the wrong way: ${f.from} is higher than ${f.to}.`,
    (f) => `[${f.to}, ${f.from}]`,
  ),
  count_beyond_list: error(
    (f: { count: number; of: number }) =>
      `At least ${f.count} of these are asked for, but there are only ${f.of}.`,
    (f) => `a number from 1 to ${f.of}`,
  ),
  known_silences: warning(
    (f: Name & { rule: string }) =>
      `${f.rule} is silent while ${f.name} has not been taken: what is missing would count as if all were well.`,
    () => 'a rule that does not ask whether it is known; or accepted: with the reason, beside known',
  ),

  // Limits
  limit_outside_bounds: error(
    (f: Name & { value: string; low: string; high: string }) =>
      `The limit "${f.name}" is ${f.value}, outside its own bounds ${f.low} to ${f.high}.`,
    (f) => `a value from ${f.low} to ${f.high}`,
  ),
  limit_without_unit: error(
    (f: { written: string }) => `"${f.written}" has a unit, but the limit itself has none.`,
    () => 'unit: beside value',
  ),
  limit_in_two_units: error(
    (f: { written: string; unit: string }) => `"${f.written}" is not in ${f.unit}, the unit of the limit.`,
    (f) => `a number in ${f.unit}`,
  ),

  // Measures
  one_kind_of_measure: error(
    (f: Name & { kinds: readonly string[] }) =>
      f.kinds.length === 0
        ? `Nothing says how "${f.name}" is worked out.`
        : `"${f.name}" is worked out in two ways: ${list(f.kinds)}.`,
    () =>
      'exactly one of formula, curve, score, choose, first_known, highest, lowest, average, earliest, latest, change, count, minutes_since, held',
  ),
  key_not_for_this_kind: error(
    (f: { key: string; kind: string }) => `"${f.key}" says nothing beside "${f.kind}".`,
    () => 'this key left out',
  ),
  look_back_without_over: error(
    (f: { kind: string }) => `"${f.kind}" looks back; how far is not said.`,
    () => 'over: with a time, for example 4 h',
  ),
  look_back_of_choice: error(
    (f: Name & { kind: string }) => `"${f.kind}" looks back at numbers; ${f.name} is not a number.`,
    () => 'an observation with a number',
  ),
  look_back_of_measure: error(
    (f: Name & { kind: string }) => `"${f.kind}" looks back at observations; ${f.name} is worked out.`,
    () => 'the name of an observation',
  ),
  look_back_condition: error(
    (f: { part: string }) => `Here one set is looked at; ${f.part} cannot be asked of it.`,
    () => 'observations compared with numbers, choices or limits',
  ),
  unknown_action: error(
    (f: Name) => `There is no action "${f.name}" here.`,
    () => 'the id of an action',
  ),
  actions_exclude_each_other: error(
    (f: { first: string; second: string; rules: readonly string[]; set: string }) =>
      `"${f.first}" and "${f.second}" must never be advised together, but are: by ${f.rules.map((each) => `"${each}"`).join(' and ')}${f.set === '' ? '' : `, for ${f.set}`}.`,
    () => 'rules that cannot both be met, or one of the two actions left out',
  ),
  actions_may_meet: warning(
    (f: { first: string; second: string; rules: readonly string[] }) =>
      `"${f.first}" and "${f.second}" must never be advised together; whether ${f.rules.map((each) => `"${each}"`).join(' and ')} can both be met is more than this check can settle.`,
    () => 'rules that plainly cannot both be met',
  ),
  rule_not_here: error(
    (f: Name) => `This is decided before any rule, so it cannot depend on one ("${f.name}").`,
    () => 'observations and measures',
  ),
  formula_unreadable: error(
    (f: { near: string }) => `This formula cannot be read, near "${f.near}".`,
    () => 'numbers and names with + - * / and ( ) on one line',
  ),
  formula_not_arithmetic: error(
    (f: { part: string }) => `"${f.part}" has no place in a formula.`,
    () => 'numbers and names with + - * / and ( )',
  ),
  formula_of_choice: error(
    (f: Name) => `"${f.name}" is not a number and cannot be worked with in a formula.`,
    anyNumber,
  ),
  measure_in_wrong_unit: error(
    (f: Name & { found: string; unit: string }) =>
      `"${f.name}" comes out in ${f.found}, which cannot be shown in ${f.unit}.`,
    (f) => `unit: ${f.found}, or another formula`,
  ),
  divisor_not_positive: error(
    (f: Name & { set: string }) =>
      `"${f.name}" divides by something that can be zero or less: with ${f.set}.`,
    () => 'a divisor that is above zero for every possible set',
  ),
  number_too_large: error(
    (f: { what: string }) =>
      `The numbers in ${f.what} can grow past what can be reckoned exactly (9007199254740991 steps).`,
    () => 'fewer products, or fewer decimal places',
  ),
  curve_not_rising: error(
    (f: { before: string; at: string }) =>
      `The points of the curve do not rise: ${f.at} comes after ${f.before}.`,
    () => 'each point further on than the one before',
  ),
  curve_too_short: error(
    (f: Name & { low: string; high: string; from: string; to: string }) =>
      `The curve reaches from ${f.from} to ${f.to}, but ${f.name} from ${f.low} to ${f.high}, and nothing says what holds beyond.`,
    () => 'beyond: missing or beyond: hold',
  ),
  curve_of_quotient: error(
    (f: Name) => `A curve cannot be read at "${f.name}", which is a quotient that changes with the set.`,
    () => 'an observation, or a measure without a divisor',
  ),
  band_with_two_ends: error(
    (_f: object) => 'This band has two ends.',
    () => 'at_most or below, one of them',
  ),
  band_without_end: error(
    (_f: object) => 'This band has no end, but others follow.',
    () => 'at_most or below',
  ),
  last_band_not_open: error(
    (_f: object) => 'The last band has an end; what lies above it would get no points.',
    () => 'a last band with points alone',
  ),
  band_not_a_number: error(
    (f: Name) => `The end of a band is a number; "${f.name}" is a name.`,
    () => 'a number',
  ),
  bands_not_in_order: error(
    (f: { before: string; at: string }) => `The bands are not in order: ${f.at} comes after ${f.before}.`,
    () => 'each band reaching further than the one before',
  ),
  bands_of_choice: error(
    (f: Name & { choices: readonly string[] }) => `"${f.name}" is not a number, so it has no bands.`,
    (f) => `points for each of ${list(f.choices)}`,
  ),
  points_of_number: error(
    (f: Name) => `"${f.name}" is a number, so its points stand in bands.`,
    () => '[{ at_most: 8, points: 3 }, { points: 0 }]',
  ),
  choose_without_rest: error(
    (_f: object) => 'The last entry has a condition; when none holds, there would be no value.',
    () => 'a last entry with use alone',
  ),
  choose_without_when: error(
    (_f: object) => 'This entry has no condition, so those after it are never reached.',
    () => 'when: beside use',
  ),

  // Rules
  rule_says_nothing: error(
    (f: Name) => `The rule "${f.name}" neither says anything nor calls for a level.`,
    () => 'says, or level, or both',
  ),
  rule_without_source: error(
    (f: Name) => `The rule "${f.name}" names no source.`,
    () => 'source: with names from sources; "Common practice, no published source" is one',
  ),
  explained_to_lowest: error(
    (f: Name) => `An explanation lowers the rule "${f.name}" to the lowest level.`,
    () => 'a level above the lowest',
  ),
  explained_level_not_lower: error(
    (f: Name) =>
      `The explanation of the rule "${f.name}" calls for a level that is not lower than the rule's own.`,
    () => "a level below the rule's own",
  ),
  unless_reaches_lowest: warning(
    (f: Name & { set: string }) =>
      `The exception of "${f.name}" can bring the outcome down to the lowest level: with ${f.set}.`,
    () => 'another rule that still calls for a level; or accepted: with the reason, beside unless',
  ),
  partition_hole: error(
    (f: Name & { set: string }) => `"${f.name}" has a hole: none of its conditions holds with ${f.set}.`,
    () => 'conditions of which exactly one always holds',
  ),
  partition_overlap: error(
    (f: Name & { set: string }) => `"${f.name}" overlaps: two of its conditions hold with ${f.set}.`,
    () => 'conditions of which exactly one always holds',
  ),
  partition_not_settled: warning(
    (f: Name) => `Whether "${f.name}" has a hole or an overlap is too large a question to answer here.`,
    () => 'fewer observations in one partition',
  ),
  observation_unused: error(
    (f: Name) => `"${f.name}" is listed, but nothing reads it.`,
    () => 'a rule or a measure that reads it, or the name left out',
  ),
  review_overdue: warning(
    (f: { review_by: string }) => `The review was due by ${f.review_by}.`,
    () => 'a review by the council, and a new date',
  ),
  not_a_day: error(
    (f: { written: string }) => `"${f.written}" is not a day of the calendar.`,
    () => 'year-month-day, for example 2027-09-30',
  ),

  // Findings
  finding_not_there: error(
    (f: { finding: string }) => `A reason is given for "${f.finding}", and nothing of that name is found.`,
    () =>
      'the name of a finding, as "vitalwright check --findings" prints it; without the answer, when it is found no more',
  ),

  // Ladders
  level_twice: error((f: { level: string }) => `The level "${f.level}" stands twice on the ladder.`),
  higher_level_answers_later: error(
    (f: { level: string; time: string; lower: string; lowerTime: string }) =>
      `"${f.level}" is answered within ${f.time}, later than the lower level "${f.lower}" (${f.lowerTime}).`,
    (f) => `${f.lowerTime} or sooner; or the levels in another order`,
  ),
  higher_level_reassesses_later: error(
    (f: { level: string; time: string; lower: string; lowerTime: string }) =>
      `"${f.level}" is reassessed within ${f.time}, later than the lower level "${f.lower}" (${f.lowerTime}).`,
    (f) => `${f.lowerTime} or sooner; or the levels in another order`,
  ),
} as const;
