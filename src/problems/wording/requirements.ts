import { error, warning } from '../entry.ts';

type Name = { name: string };

/** Problems of safety requirements and of the hazards that they control. */
export const requirementsWording = {
  one_kind_of_requirement: error(
    (f: Name & { kinds: readonly string[] }) =>
      f.kinds.length === 0
        ? `The requirement "${f.name}" does not say what must hold.`
        : `The requirement "${f.name}" asks for several things at once: ${f.kinds.join(', ')}.`,
    () =>
      'exactly one of level_at_least, level_at_most, rule_met, never_together, getting_worse_never_lowers, nothing_hides, no_level, fault_never_lowers, always_some_advice',
  ),
  requirement_twice: error(
    (f: Name) => `There are two requirements called "${f.name}".`,
    () => 'a name of its own for each requirement',
  ),
  unknown_hazard: error(
    (f: Name) => `"${f.name}" is not declared under hazards.`,
    () => 'the name of a hazard that is declared under hazards',
  ),
  hazard_not_controlled: warning(
    (f: Name) => `No requirement controls the hazard "${f.name}".`,
    () => 'a requirement under must_always that names it under controls',
  ),
  requirement_reads_unread: error(
    (f: Name) => `No rule reads "${f.name}", so nothing can be required of it.`,
    () => 'an observation that is listed under needs, helps or standing, or that says for whom this is',
  ),
  no_level_of_whom: error(
    (f: Name) => `The requirement "${f.name}" does not say which patients get no level.`,
    () => 'where, with what these patients are, for example where: { age: { below: 16 y } }',
  ),
  way_does_not_fit: error(
    (f: Name & { kind: string }) =>
      f.kind === 'several'
        ? `"${f.name}" holds several choices at once: no order of them is worse and worse.`
        : `It is not said in a way that fits "${f.name}" when it gets worse.`,
    (f) =>
      f.kind === 'number'
        ? 'going: up or going: down, and between if not over all that is possible'
        : 'through, with the choices, each worse than the one before; of an observation with one choice at a time',
  ),
  worse_outside_possible: error(
    (f: Name & { value: string }) =>
      `"${f.value}" is no value that "${f.name}" can have: it lies outside what is possible, or between two steps.`,
    () => 'a value that is possible, on the step of the observation',
  ),
  worse_choice_twice: error(
    (f: Name & { choice: string }) => `"${f.choice}" of ${f.name} stands here twice.`,
    () => 'each choice once',
  ),
};
