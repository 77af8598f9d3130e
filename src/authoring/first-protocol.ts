/**
 * The first line of a file, which tells an editor where the schema of it stands; nothing where no schema stands near. The path leads from
 * the file's folder to the folder `schema`.
 */
export const schemaLine = (schema: string | null, kind: 'protocol' | 'cases' | 'ladder'): string =>
  schema === null ? '' : `# yaml-language-server: $schema=${schema}/${kind}.schema.json\n`;

/** The protocol that `new` writes: it passes the check, and its comments say what to change. */
export const firstProtocol = (
  name: string,
  ladder: string,
  schema: string | null,
): string => `${schemaLine(schema, 'protocol')}# A first protocol. Every line can be changed; ask "vitalwright check" after each change.
protocol: ${name}
edition: 1
title: Low pressure with a fast rate
# The ladder has the levels that rules can call for.
ladder: ${ladder}
# For whom the protocol is. For anybody else no level is given.
applies_when:
  age: { at_least: 16 y }
otherwise: Use the children's chart.
owners: [Our practice council]

sources:
  council: { cite: "Common practice, no published source" }

observations:
  # Without these the outcome is not settled.
  needs: [systolic, heart_rate]
  # These would tell more.
  helps: [skin]

limits:
  # A named number. The prescriber may change it for one patient, inside these bounds.
  low_systolic: { value: 100, unit: mmHg, between: [80, 110], set_by: prescriber }

measures:
  # A number that is worked out.
  rate_to_pressure: { title: rate for each mmHg of pressure, formula: heart_rate / systolic }

rules:
  - rule: low_pressure
    title: Low pressure
    when: { systolic: { below: low_systolic } }
    level: look_again
    says: The pressure is lower than most adults have at rest.
    because: The organs are perfused by pressure; some people live well with a low one.
    ask: [What is this patient's usual pressure?]
    do: [{ id: repeat_pressure, text: Repeat the pressure with the right cuff on a rested arm, under: own authority }]
    source: [council]

  - rule: low_and_fast
    title: Low pressure with a fast rate
    # Two things at once. A rule can be named in another one.
    when:
      all:
        - { rule: low_pressure }
        - { rate_to_pressure: { at_least: 0.9 } }
    level: call_doctor
    says: The rate is high for this pressure; it suggests that the heart is working to hold it up.
    source: [council]

  - rule: low_and_mottled
    title: Low pressure and mottled skin
    when: { rule: low_pressure, skin: { is: mottled } }
    level: call_doctor
    says: Mottled skin with a low pressure suggests that the skin is being cut off to save the rest.
    source: [council]
`;

/** Cases beside it: what the council expects, on both sides of each number. */
export const firstCases = (
  name: string,
  schema: string | null,
): string => `${schemaLine(schema, 'cases')}# What we expect the protocol to say. A case that fails is shown with the line that expects it.
protocol: ${name}
cases:
  - case: An ordinary set is settled at the lowest level
    source: council
    given: { age: 40 y, systolic: 118, heart_rate: 72 }
    expect:
      level: { at_least: usual_round, settled: yes }
      nothing_else_met: yes

  - case: Exactly at the limit is not below it
    source: council
    given: { age: 40 y, systolic: 100, heart_rate: 72 }
    expect: { not_met: [low_pressure], nothing_else_met: yes }

  - case: One below the limit
    source: council
    given: { age: 40 y, systolic: 99, heart_rate: 89 }
    expect: { level: { at_least: look_again, settled: yes }, met: [low_pressure], not_met: [low_and_fast] }

  - case: Low and fast
    source: council
    given: { age: 40 y, systolic: 99, heart_rate: 90 }
    expect: { level: { at_least: call_doctor, settled: yes }, met: [low_pressure, low_and_fast] }

  - case: Low and mottled, the rate not taken
    source: council
    given: { age: 40 y, systolic: 90, skin: mottled }
    expect:
      level: { at_least: call_doctor }
      met: [low_pressure, low_and_mottled]
      undecided: [low_and_fast]

  - case: Nothing taken is never called normal
    source: council
    given: { age: 40 y }
    expect: { level: { at_least: none, could_be: call_doctor, settled: no } }

  - case: A child is not read with this
    source: council
    given: { age: 9 y, systolic: 90, heart_rate: 110 }
    expect: { applies: no, level: { at_least: none } }
`;

/** A ladder for a folder that has none within reach. */
export const firstLadder = (
  name: string,
  schema: string | null,
): string => `${schemaLine(schema, 'ladder')}# The levels, lowest first. Put your own roles and times here.
ladder: ${name}
edition: 1
levels:
  - { level: usual_round, title: Usual round, reassess: 12 h }
  - level: look_again
    title: Look again soon
    tell: [{ who: The patient's nurse }]
    reassess: 1 h
  - level: call_doctor
    title: Call the doctor
    tell: [{ who: Duty doctor }]
    respond: 30 min
    reassess: 15 min
    if_no_answer: { after: 15 min, tell: The senior doctor on call }
`;
