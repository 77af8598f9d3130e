import { error } from '../entry.ts';

type Named = { name: string };
type Keyed = Named & { key: string };

const kinds: Readonly<Record<string, string>> = {
  number: 'a number',
  choice: 'one of several choices',
  several: 'several of a choice',
  yes_no: 'yes or no',
};

const given = (age: string | null): string => (age === null ? '' : ` for ages ${age}`);

/** Problems of quantities, and of observations as a dictionary or a protocol declares them. */
export const dictionaryWording = {
  // Quantities
  not_a_quantity: error(
    (f: { written: string }) => `"${f.written}" is not a number with its unit.`,
    () =>
      'a number in plain digits, then one space and the unit where there is one, for example 90, 38.3 °C or 16 y',
  ),
  too_many_digits: error(
    (f: { written: string; most: number }) => `"${f.written}" has too many digits to be kept exactly.`,
    (f) => `at most ${f.most} digits`,
  ),

  // What an observation must and must not say
  observation_lacks: error(
    (f: Keyed & { kind: string }) => `"${f.name}" is ${kinds[f.kind]}, but its "${f.key}" is not said.`,
    (f) => `"${f.key}" among the lines of "${f.name}"`,
  ),
  observation_key_unfit: error(
    (f: Keyed & { kind: string }) => `"${f.name}" is ${kinds[f.kind]}; "${f.key}" says nothing about it.`,
    (f) => `"${f.name}" without "${f.key}"`,
  ),
  observation_only_standing: error(
    (f: Keyed) => `"${f.key}" is for what holds until it is changed; "${f.name}" is observed anew each time.`,
    () => '"standing: yes", where it holds until it is changed; else a missing value stays missing',
  ),
  observation_never_standing: error(
    (f: Keyed) => `"${f.name}" holds until it is changed, so "${f.key}" says nothing about it.`,
    (f) => `"${f.name}" without "${f.key}"`,
  ),

  // Steps and ranges
  observation_step: error(
    (f: Named & { written: string }) => `The step of "${f.name}" is ${f.written}.`,
    () => 'a step above zero',
  ),
  observation_step_unit: error(
    (f: Named & { step: string; unit: string }) =>
      `The step of "${f.name}" is in ${f.step}, which does not measure what ${f.unit} measures.`,
    (f) => `a step in ${f.unit}, or in a unit that measures the same`,
  ),
  observation_range_form: error(
    (f: Keyed) => `"${f.key}" of "${f.name}" is neither one range nor a list of ages.`,
    () => 'the lowest and the highest value, for example [20, 350]; or bands of ages with from and to',
  ),
  observation_range_reversed: error(
    (f: Keyed & { from: string; to: string; unit: string }) =>
      `"${f.key}" of "${f.name}" runs from ${f.from} down to ${f.to} ${f.unit}.`,
    () => 'the lowest value first',
  ),
  observation_off_step: error(
    (f: Keyed & { value: string; step: string; unit: string }) =>
      `${f.value} ${f.unit}, "${f.key}" of "${f.name}", does not fall on its step of ${f.step}.`,
    (f) => `a number that is a whole number of steps of ${f.step}`,
  ),
  observation_too_large: error(
    (f: Keyed & { value: string }) =>
      `${f.value}, "${f.key}" of "${f.name}", is too large to be kept exactly on its step.`,
  ),
  observation_band_age: error(
    (f: Keyed & { written: string }) =>
      `"${f.written}" is not an age on which a band of "${f.key}" of "${f.name}" can end.`,
    () =>
      'an age above zero with its unit, d, wk, mo or y, on a sixteenth of a day: for example 28 d, 3 mo or 12 y',
  ),
  observation_band_order: error(
    (f: Keyed & { age: string; before: string }) =>
      `The bands of "${f.key}" of "${f.name}" are not in order: ${f.age} comes after ${f.before}.`,
    () => 'the youngest band first',
  ),
  observation_band_open: error(
    (f: Keyed) => `A band of "${f.key}" of "${f.name}" has no "age_below", but others follow.`,
    () => '"age_below" in every band but the last',
  ),
  observation_band_last: error(
    (f: Keyed & { age: string }) =>
      `"${f.key}" of "${f.name}" ends at ${f.age}; whoever is older has no range.`,
    () => 'a last band without "age_below"',
  ),
  observation_plausible_wide: error(
    (
      f: Named & {
        from: string;
        to: string;
        possibleFrom: string;
        possibleTo: string;
        unit: string;
        age: string | null;
      },
    ) =>
      `What is plausible of "${f.name}"${given(f.age)} runs from ${f.from} to ${f.to} ${f.unit}, beyond what is possible.`,
    (f) => `a range inside ${f.possibleFrom} to ${f.possibleTo} ${f.unit}`,
  ),
  observation_value_outside: error(
    (f: Keyed & { value: string; from: string; to: string; range: string; unit: string }) =>
      `${f.value} ${f.unit}, "${f.key}" of "${f.name}", is not ${f.range}.`,
    (f) => `a value from ${f.from} to ${f.to} ${f.unit}`,
  ),
  observation_age: error(
    (_f: object) => '"age" does not count in years on a sixteenth of a day; bands of ages rely on that.',
    () => 'kind number, unit y, step "0.0625 d"',
  ),

  // Choices, durations
  observation_value_unfit: error(
    (f: Keyed & { written: string; kind: string }) =>
      `"${f.written}" cannot be "${f.key}" of "${f.name}", which is ${kinds[f.kind]}.`,
    (f) =>
      ({
        number: 'a plain number',
        choice: 'one of its choices',
        several: 'a list of its choices',
        yes_no: 'yes or no',
      })[f.kind] ?? '',
  ),
  observation_choice_twice: error(
    (f: Named & { choice: string }) => `"${f.choice}" is named twice among the choices of "${f.name}".`,
  ),
  observation_choice_reserved: error(
    (f: Named & { choice: string }) =>
      `"${f.choice}" cannot be a choice of "${f.name}": it would be read as yes or no.`,
    () => 'another name; or kind yes_no',
  ),
  observation_duration: error(
    (f: Keyed & { written: string }) =>
      `"${f.written}", "${f.key}" of "${f.name}", is not a whole number of milliseconds.`,
    () => 'a number, a space and s, min, h, d, wk, mo or y: for example 4 h',
  ),

  // The dictionary as a whole
  contradiction_of_choice: error(
    (f: Named) => `"${f.name}" is not a number, so it cannot be the lower or the higher of two.`,
    () => 'the name of a number',
  ),
  contradiction_units: error(
    (f: { lower: string; higher: string }) =>
      `"${f.lower}" and "${f.higher}" have different units or steps and cannot be set against each other.`,
    () => 'two numbers with one unit and one step',
  ),
  contradiction_of_one: error((f: Named) => `"${f.name}" cannot be lower than itself.`),
} as const;
