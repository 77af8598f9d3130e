// Generated from schema/*.schema.json; do not edit. npm run generate

import type { Schema } from '../schema.ts';

export const approvers: Schema = {
  $schema: 'https://json-schema.org/draft/2020-12/schema',
  $id: 'approvers.schema.json',
  title: 'ApproversFile',
  description:
    'Who may approve editions of a protocol or a ward policy. It holds once it is entered in the record ("vitalwright approvers").',
  examples: [
    {
      approvers: 'alder_wing',
      signing: 'no',
      needs: [{ role: 'Doctor', people: 1 }],
      people: [{ name: 'Dr Ash', roles: ['Doctor'] }],
    },
  ],
  type: 'object',
  properties: {
    approvers: {
      description: 'The protocol or ward policy.',
      examples: ['alder_wing'],
      $ref: 'dictionary.schema.json#/$defs/name',
    },
    signing: {
      description:
        'yes: every entry of the record is signed with the keys of those who make it. no: it names them.',
      examples: ['no'],
      $ref: 'dictionary.schema.json#/$defs/yes',
    },
    needs: {
      description:
        'Which roles approve an edition, and how many people of each. One person counts once. The same people agree on a change of this list.',
      examples: [[{ role: 'Doctor', people: 1 }]],
      type: 'array',
      items: { $ref: '#/$defs/need' },
      minItems: 1,
      maxItems: 20,
    },
    people: {
      description: 'Who may approve, put in force and withdraw.',
      examples: [[{ name: 'Dr Ash', roles: ['Doctor'] }]],
      type: 'array',
      items: { $ref: '#/$defs/approver' },
      minItems: 1,
      maxItems: 200,
    },
  },
  required: ['approvers', 'signing', 'needs', 'people'],
  additionalProperties: false,
  $defs: {
    role: {
      description: 'A role in words.',
      examples: ['Doctor'],
      type: 'string',
      minLength: 1,
      maxLength: 80,
    },
    key: {
      description: 'The public key of a person, as "vitalwright key new" prints it.',
      examples: ['11qYAYKxCrfVS_7TyWQHOg7hcvPapiMlrwIaaPcHURo'],
      type: 'string',
      pattern: '^[A-Za-z0-9_-]{43}$',
    },
    need: {
      title: 'NeededRole',
      description: 'A role, and how many people of it.',
      examples: [{ role: 'Doctor', people: 1 }],
      type: 'object',
      properties: {
        role: { description: 'The role.', examples: ['Doctor'], $ref: '#/$defs/role' },
        people: {
          description: 'How many people at least.',
          examples: [1],
          type: 'integer',
          minimum: 1,
          maximum: 20,
        },
      },
      required: ['role', 'people'],
      additionalProperties: false,
    },
    approver: {
      title: 'Approver',
      description: 'A person.',
      examples: [{ name: 'Dr Ash', roles: ['Doctor'] }],
      type: 'object',
      properties: {
        name: { description: 'The name.', examples: ['Dr Ash'], $ref: 'edition.schema.json#/$defs/person' },
        roles: {
          description: 'The roles in which this person may approve.',
          examples: [['Doctor']],
          type: 'array',
          items: { $ref: '#/$defs/role' },
          minItems: 1,
          maxItems: 10,
        },
        key: {
          description: 'The public key, where entries are signed.',
          examples: ['11qYAYKxCrfVS_7TyWQHOg7hcvPapiMlrwIaaPcHURo'],
          $ref: '#/$defs/key',
        },
      },
      required: ['name', 'roles'],
      additionalProperties: false,
    },
  },
};

export const cases: Schema = {
  $schema: 'https://json-schema.org/draft/2020-12/schema',
  $id: 'cases.schema.json',
  title: 'CasesFile',
  description: 'Cases of one protocol: stories, observations, and the outcome that the council expects.',
  examples: [{ protocol: 'pressure_reading', cases: [] }],
  type: 'object',
  properties: {
    protocol: {
      description: 'The protocol that the cases are for.',
      examples: ['pressure_reading'],
      $ref: 'dictionary.schema.json#/$defs/name',
    },
    cases: {
      description: 'The cases.',
      examples: [
        [
          {
            case: 'Quiet and flushed',
            source: 'council',
            given: { systolic: 104 },
            expect: { met: ['wide_for_this_systolic'] },
          },
        ],
      ],
      type: 'array',
      items: { $ref: '#/$defs/case' },
      maxItems: 100000,
    },
    unguarded: {
      description:
        'Small changes of the protocol that no case notices and that need none, each with the reason.',
      examples: [
        [
          {
            change: 'rule low_pressure, level: look_again to usual_round',
            accepted: 'Another rule calls for as much whenever this one does.',
          },
        ],
      ],
      type: 'array',
      items: { $ref: '#/$defs/unguarded_change' },
      maxItems: 10000,
    },
  },
  required: ['protocol', 'cases'],
  additionalProperties: false,
  $defs: {
    unguarded_change: {
      title: 'UnguardedChange',
      description: 'One small change that no case notices, and why that is accepted.',
      examples: [
        {
          change: 'rule low_pressure, level: look_again to usual_round',
          accepted: 'Another rule calls for as much whenever this one does.',
        },
      ],
      type: 'object',
      properties: {
        change: {
          description: 'The name of the change, as check --unguarded prints it.',
          examples: ['rule low_pressure, level: look_again to usual_round'],
          $ref: 'dictionary.schema.json#/$defs/text',
        },
        accepted: {
          description: 'Why no case needs to notice it, and who says so.',
          examples: ['Another rule calls for as much whenever this one does.'],
          $ref: 'dictionary.schema.json#/$defs/text',
        },
      },
      required: ['change', 'accepted'],
      additionalProperties: false,
    },
    case: {
      title: 'Case',
      description: 'One case: what is given, and what is expected. It has either given or series.',
      examples: [
        {
          case: 'Quiet and flushed',
          source: 'council',
          given: { systolic: 104 },
          expect: { met: ['wide_for_this_systolic'] },
        },
      ],
      type: 'object',
      properties: {
        case: {
          description: 'The case in a few words.',
          examples: ['Second day after bowel surgery, quiet and flushed'],
          $ref: 'dictionary.schema.json#/$defs/text',
        },
        story: {
          description: 'The story around it.',
          examples: ['He says that he is fine.'],
          $ref: 'dictionary.schema.json#/$defs/text',
        },
        source: {
          description: "Where the expectation comes from: a name from the protocol's sources.",
          examples: ['council'],
          $ref: 'dictionary.schema.json#/$defs/name',
        },
        given: {
          description: 'One set: observations with their values.',
          examples: [{ systolic: 104, diastolic: 48, age: '58 y' }],
          $ref: 'set.schema.json',
        },
        series: {
          description: 'A series of sets with their times.',
          examples: [{ sets: [{ at: '2026-03-02T08:00:00Z', systolic: 118 }] }],
          $ref: 'set.schema.json',
        },
        expect: {
          description: 'What the council expects.',
          examples: [{ met: ['wide_for_this_systolic'] }],
          $ref: '#/$defs/expect',
        },
        teach: {
          description: 'For the drill.',
          examples: [{ ask_first: 'What keeps the diastolic up between beats?' }],
          $ref: '#/$defs/teach',
        },
      },
      required: ['case', 'expect'],
      additionalProperties: false,
    },
    expect: {
      title: 'Expect',
      description: 'What is expected. Lists say "at least these"; nothing_else_met closes them.',
      examples: [{ level: { at_least: 'call_doctor', settled: 'yes' }, met: ['wide_for_this_systolic'] }],
      type: 'object',
      properties: {
        level: {
          description: 'The level.',
          examples: [{ at_least: 'call_doctor', settled: 'yes' }],
          $ref: '#/$defs/expected_level',
        },
        applies: {
          description: 'Whether the protocol is for this patient: yes, no or unsure.',
          examples: ['no'],
          type: ['string', 'boolean'],
          enum: ['yes', 'no', 'unsure', true, false],
        },
        met: {
          description: 'Rules that are met.',
          examples: [['wide_for_this_systolic']],
          $ref: '#/$defs/names',
        },
        not_met: {
          description: 'Rules that are not met.',
          examples: [['mean_too_low']],
          $ref: '#/$defs/names',
        },
        undecided: {
          description: 'Rules that are undecided.',
          examples: [['wide_and_working_hard']],
          $ref: '#/$defs/names',
        },
        explained: {
          description: 'Rules whose explanation is known to hold.',
          examples: [['wide_for_this_systolic']],
          $ref: '#/$defs/names',
        },
        faults: {
          description: 'Faults of technique that are there.',
          examples: [['cuff_too_small']],
          $ref: '#/$defs/names',
        },
        truth: {
          description: 'From where to where the truth may lie, with the faults of technique that are there.',
          examples: [{ systolic: { low: 94, high: 104 } }],
          type: 'object',
          propertyNames: { $ref: 'dictionary.schema.json#/$defs/name' },
          additionalProperties: { $ref: '#/$defs/expected_range' },
        },
        not_reliable: {
          description: 'Rules that are not met but reassure nobody.',
          examples: [['fast_rate']],
          $ref: '#/$defs/names',
        },
        refused: {
          description: 'Observations that are refused.',
          examples: [['systolic']],
          $ref: '#/$defs/names',
        },
        questioned: {
          description: 'Observations that are used and questioned.',
          examples: [['systolic']],
          $ref: '#/$defs/names',
        },
        take_first: {
          description: 'What is to be taken first: the list begins with these.',
          examples: [['respiratory_rate']],
          $ref: '#/$defs/names',
        },
        ask_first: {
          description: 'What is to be asked first: at least these.',
          examples: [['age']],
          $ref: '#/$defs/names',
        },
        measures: {
          description:
            'Measures and their values, compared at the decimals that are written here; { low, high } for a range, missing for none.',
          examples: [{ pulse_pressure: 56, mean_estimate: 66.67 }],
          type: 'object',
          propertyNames: { $ref: 'dictionary.schema.json#/$defs/name' },
          additionalProperties: { $ref: '#/$defs/expected_measure' },
        },
        nothing_else_met: {
          description: 'yes: no other rule is met.',
          examples: ['yes'],
          $ref: 'dictionary.schema.json#/$defs/yes',
        },
      },
      minProperties: 1,
      additionalProperties: false,
    },
    names: {
      title: 'CaseNames',
      description: 'A list of names.',
      examples: [['wide_for_this_systolic']],
      type: 'array',
      items: { $ref: 'dictionary.schema.json#/$defs/name' },
      maxItems: 1000,
    },
    expected_level: {
      title: 'ExpectedLevel',
      description: 'The level that is expected.',
      examples: [{ at_least: 'call_doctor', could_be: 'call_doctor', settled: 'yes' }],
      type: 'object',
      properties: {
        at_least: {
          description: 'The highest level that is called for by a rule that is met; none when nothing is.',
          examples: ['call_doctor', 'none'],
          $ref: 'dictionary.schema.json#/$defs/name',
        },
        could_be: {
          description: 'The highest level that it could be once the missing is known.',
          examples: ['call_doctor'],
          $ref: 'dictionary.schema.json#/$defs/name',
        },
        settled: {
          description: 'yes when nothing that is missing could change it.',
          examples: ['yes'],
          $ref: 'dictionary.schema.json#/$defs/yes',
        },
      },
      minProperties: 1,
      additionalProperties: false,
    },
    expected_range: {
      title: 'ExpectedRange',
      description: 'A range of values, both ends included, in the unit of the observation.',
      examples: [{ low: 94, high: 104 }],
      type: 'object',
      properties: {
        low: { description: 'The lowest that it can truly be.', examples: [94], type: 'number' },
        high: { description: 'The highest that it can truly be.', examples: [104], type: 'number' },
      },
      required: ['low', 'high'],
      additionalProperties: false,
    },
    expected_measure: {
      title: 'ExpectedMeasure',
      description: 'A value, a range, or missing.',
      examples: [56, { low: 0, high: 3 }, 'missing'],
      type: ['number', 'string', 'object'],
      properties: {
        low: { description: 'The lowest that it can be.', examples: [0], type: 'number' },
        high: { description: 'The highest that it can be.', examples: [3], type: 'number' },
      },
      required: ['low', 'high'],
      additionalProperties: false,
      maxLength: 20,
    },
    teach: {
      title: 'Teach',
      description: 'For the drill: what to ask the learner first, and the mistake that is often made.',
      examples: [
        {
          ask_first: 'What keeps the diastolic up between beats?',
          common_mistake: 'Each number alone looks fine.',
        },
      ],
      type: 'object',
      properties: {
        ask_first: {
          description: 'The question to begin with.',
          examples: ['What keeps the diastolic up between beats?'],
          $ref: 'dictionary.schema.json#/$defs/text',
        },
        common_mistake: {
          description: 'The mistake that is often made.',
          examples: ['Each number alone looks fine.'],
          $ref: 'dictionary.schema.json#/$defs/text',
        },
        output_and_vessels: {
          description:
            "What the one who wrote the case reads in it, by the case's own source: the output is falling and the vessels squeeze; the vessels have let go; both fail; neither; or nobody can say from this set. It is shown beside the learner's answer and is no rule.",
          examples: ['vessels_have_let_go'],
          type: 'string',
          enum: ['output_falls_vessels_squeeze', 'vessels_have_let_go', 'both_fail', 'neither', 'cannot_say'],
        },
      },
      additionalProperties: false,
    },
  },
};

export const dictionary: Schema = {
  $schema: 'https://json-schema.org/draft/2020-12/schema',
  $id: 'dictionary.schema.json',
  title: 'DictionaryFile',
  description:
    'A dictionary of observations: what can be observed or known about a patient, in which unit, on which step and inside which ranges.',
  examples: [{ dictionary: 'vital_signs', language: 1, observations: {} }],
  type: 'object',
  properties: {
    dictionary: {
      description: 'The name of the dictionary.',
      examples: ['vital_signs'],
      $ref: '#/$defs/name',
    },
    language: {
      description: 'The number of the language that the dictionary is written in.',
      examples: [1],
      type: 'integer',
      const: 1,
    },
    sources: {
      description: 'Where the figures come from. Every source that an observation names stands here.',
      examples: [{ common_practice: { cite: 'Common practice, no published source' } }],
      type: 'object',
      propertyNames: { $ref: '#/$defs/name' },
      additionalProperties: { $ref: '#/$defs/source' },
    },
    observations: {
      description: 'The observations, in the order in which a nurse usually takes them.',
      examples: [
        {
          heart_rate: {
            title: 'heart rate',
            short: 'rate',
            kind: 'number',
            unit: '/min',
            step: 1,
            possible: [0, 350],
          },
        },
      ],
      type: 'object',
      propertyNames: { $ref: '#/$defs/name' },
      additionalProperties: { $ref: '#/$defs/observation' },
    },
    contradictions: {
      description:
        'Pairs of observations that cannot both be right. When a set holds such a pair, both are refused.',
      examples: [
        [{ lower: 'diastolic', higher: 'systolic', says: 'The diastolic is never as high as the systolic.' }],
      ],
      type: 'array',
      items: { $ref: '#/$defs/contradiction' },
    },
  },
  required: ['dictionary', 'language', 'observations'],
  additionalProperties: false,
  $defs: {
    name: {
      description: 'A name: small letters, digits and underscores, starting with a letter.',
      examples: ['heart_rate'],
      type: 'string',
      pattern: '^[a-z][a-z0-9_]*$',
      maxLength: 60,
    },
    text: {
      description: 'Plain words for a person to read.',
      examples: ['Organs may not be perfused.'],
      type: 'string',
      minLength: 1,
      maxLength: 2000,
    },
    quantity: {
      description: 'A number, with its unit where it has one.',
      examples: [90, '16 y', '38.3 °C'],
      type: ['number', 'string'],
      maxLength: 60,
    },
    duration: {
      description: 'A length of time: a number and min, h, d, wk, mo or y.',
      examples: ['15 min', '4 h'],
      type: 'string',
      pattern: '^[0-9]+([.][0-9]+)? (s|min|h|d|wk|mo|y)$',
      maxLength: 40,
    },
    yes: {
      description: 'yes or no.',
      examples: ['yes'],
      type: ['string', 'boolean'],
      enum: ['yes', 'no', true, false],
    },
    source: {
      title: 'Source',
      description: 'Where something comes from.',
      examples: [{ cite: 'Common practice, no published source' }],
      type: 'object',
      properties: {
        cite: {
          description:
            'The work, with authors, year and place in it; or "Common practice, no published source".',
          examples: [
            'Royal College of Physicians. National Early Warning Score (NEWS) 2. London, 2017. Chart 1',
          ],
          $ref: '#/$defs/text',
        },
        link: {
          description: 'Where it can be read.',
          examples: ['https://doi.org/10.1001/jama.2016.0287'],
          type: 'string',
          pattern: '^https://[^ ]+$',
          maxLength: 300,
        },
        from_memory: {
          description: 'yes while nobody has yet looked the figure up in the work itself.',
          examples: ['yes'],
          $ref: '#/$defs/yes',
        },
      },
      required: ['cite'],
      additionalProperties: false,
    },
    choice: {
      title: 'Choice',
      description: 'One of the values that an observation can take.',
      examples: [{ choice: 'new_confusion', title: 'newly confused' }],
      type: 'object',
      properties: {
        choice: {
          description: 'The name of the value, as rules and sets write it.',
          examples: ['new_confusion'],
          $ref: '#/$defs/name',
        },
        title: {
          description: 'The value in plain words.',
          examples: ['newly confused'],
          $ref: '#/$defs/text',
        },
        meaning: {
          description: 'When to choose it.',
          examples: ['If it is not known to be old, confusion is new.'],
          $ref: '#/$defs/text',
        },
      },
      required: ['choice', 'title'],
      additionalProperties: false,
    },
    range: {
      title: 'Range',
      description:
        'The lowest and the highest value, both included. Where the range changes with age: a list of bands, youngest first, the last without age_below.',
      examples: [
        [20, 350],
        [
          { age_below: '1 y', from: 60, to: 220 },
          { from: 30, to: 200 },
        ],
      ],
      type: 'array',
      items: { $ref: '#/$defs/range_part' },
      minItems: 1,
      maxItems: 12,
    },
    range_part: {
      title: 'RangePart',
      description: 'An end of the range, or a band of ages with its own range.',
      examples: [20, { age_below: '1 y', from: 60, to: 220 }],
      type: ['number', 'object'],
      properties: {
        age_below: {
          description: 'The band holds below this age; at this age the next band begins.',
          examples: ['1 y'],
          $ref: '#/$defs/quantity',
        },
        from: { description: 'The lowest value, included.', examples: [60], type: 'number' },
        to: { description: 'The highest value, included.', examples: [220], type: 'number' },
      },
      required: ['from', 'to'],
      additionalProperties: false,
    },
    observation: {
      title: 'Observation',
      description: 'One thing observed, or known about the patient.',
      examples: [
        { title: 'heart rate', short: 'rate', kind: 'number', unit: '/min', step: 1, possible: [0, 350] },
      ],
      type: 'object',
      properties: {
        title: {
          description: 'The plain name, as it stands in a sentence.',
          examples: ['heart rate'],
          $ref: '#/$defs/text',
        },
        short: { description: 'A shorter name for tables.', examples: ['rate'], $ref: '#/$defs/text' },
        kind: {
          description: 'number; choice (one of several); several (any number of several); yes_no.',
          examples: ['number'],
          type: 'string',
          enum: ['number', 'choice', 'several', 'yes_no'],
        },
        meaning: {
          description: 'What it is and how it is taken, where the name does not say enough.',
          examples: ['Counted over a full minute.'],
          $ref: '#/$defs/text',
        },
        unit: {
          description: "The unit, in the trade's words.",
          examples: ['mmHg'],
          type: 'string',
          maxLength: 20,
        },
        step: {
          description:
            'The smallest difference that is written down. Values between two steps are rounded to the nearest, ties away from zero.',
          examples: [1, 0.1, '0.0625 d'],
          $ref: '#/$defs/quantity',
        },
        possible: {
          description:
            'Outside this range no body or device gives the value: it is refused and counts as missing.',
          examples: [[20, 350]],
          $ref: '#/$defs/range',
        },
        plausible: {
          description: 'Outside this range the value is used and questioned.',
          examples: [[50, 260]],
          $ref: '#/$defs/range',
        },
        ordinary: {
          description: 'What an ordinary adult at rest shows.',
          examples: [120, 'alert', 'no'],
          type: ['number', 'string', 'boolean', 'array'],
          items: { $ref: '#/$defs/name' },
        },
        choices: {
          description: 'The values that a choice, or several of a choice, can take.',
          examples: [
            [
              { choice: 'alert', title: 'alert' },
              { choice: 'new_confusion', title: 'newly confused' },
            ],
          ],
          type: 'array',
          items: { $ref: '#/$defs/choice' },
          minItems: 2,
          maxItems: 40,
        },
        loinc: {
          description: 'The LOINC code, where there is one.',
          examples: ['8480-6'],
          type: 'string',
          pattern: '^[0-9]{1,6}-[0-9]$',
        },
        good_for: {
          description:
            'How long a value may stand in when a later set lacks it. Exactly at this age it still does.',
          examples: ['4 h'],
          $ref: '#/$defs/duration',
        },
        taken_with: {
          description: 'A group that comes from the same set or not at all.',
          examples: ['pressure'],
          $ref: '#/$defs/name',
        },
        standing: {
          description: 'yes when it holds until it is changed.',
          examples: ['yes'],
          $ref: '#/$defs/yes',
        },
        set_by: { description: 'Who may state it.', examples: ['prescriber'], $ref: '#/$defs/text' },
        if_not_stated: {
          description: 'What a standing fact counts as while nobody has stated it.',
          examples: ['scale_1', 120, false],
          type: ['number', 'string', 'boolean'],
        },
        also_called: {
          description: 'Other names that people write for it; used only to say what was meant.',
          examples: [['pulse', 'hr']],
          type: 'array',
          items: { type: 'string', minLength: 1, maxLength: 60 },
          maxItems: 20,
        },
        source: {
          description: 'Where the ranges come from: names from sources.',
          examples: [['common_practice']],
          type: 'array',
          items: { $ref: '#/$defs/name' },
          minItems: 1,
          maxItems: 10,
        },
      },
      required: ['title', 'kind'],
      additionalProperties: false,
    },
    contradiction: {
      title: 'Contradiction',
      description: 'Two observations of one set of which the first must be lower than the second.',
      examples: [
        { lower: 'diastolic', higher: 'systolic', says: 'The diastolic is never as high as the systolic.' },
      ],
      type: 'object',
      properties: {
        lower: { description: 'The one that must be lower.', examples: ['diastolic'], $ref: '#/$defs/name' },
        higher: { description: 'The one that must be higher.', examples: ['systolic'], $ref: '#/$defs/name' },
        may_be_equal: {
          description: 'yes when the two may be equal.',
          examples: ['yes'],
          $ref: '#/$defs/yes',
        },
        says: {
          description: 'What is wrong with such a pair, in a sentence.',
          examples: ['The diastolic is never as high as the systolic.'],
          $ref: '#/$defs/text',
        },
      },
      required: ['lower', 'higher', 'says'],
      additionalProperties: false,
    },
  },
};

export const edition: Schema = {
  $schema: 'https://json-schema.org/draft/2020-12/schema',
  $id: 'edition.schema.json',
  title: 'EditionFile',
  description:
    'A sealed edition of a protocol or of a ward policy, written by "vitalwright seal" and never edited: everything that it is read with, and what it answers to each of its cases. Its last line is the seal, over every byte before it.',
  examples: [
    {
      sealed: 'protocol',
      name: 'one_threshold',
      edition: 1,
      title: 'Low pressure',
      language: 1,
      kit: '0.1.0',
      sealed_on: '2026-03-02',
      digest: 'sha256:0000000000000000000000000000000000000000000000000000000000000000',
      logic_digest: 'sha256:0000000000000000000000000000000000000000000000000000000000000000',
      dictionary: { dictionary: 'vital_signs', language: 1, observations: {} },
      ladder: 'ladder: alder_ladder\n',
      texts: { one_threshold: 'protocol: one_threshold\n' },
      cases: 'protocol: one_threshold\ncases: []\n',
      outcomes: [
        {
          case: 'On the edge',
          answers: { level: { at_least: 'call_doctor', could_be: 'call_doctor', settled: true } },
        },
      ],
      seal: 'sha256:0000000000000000000000000000000000000000000000000000000000000000',
    },
  ],
  type: 'object',
  properties: {
    sealed: {
      description: 'What is sealed.',
      examples: ['protocol'],
      type: 'string',
      enum: ['protocol', 'ward'],
    },
    name: {
      description: 'The name of the protocol or of the ward policy.',
      examples: ['one_threshold'],
      $ref: 'dictionary.schema.json#/$defs/name',
    },
    edition: {
      description: 'The number of the edition.',
      examples: [1],
      type: 'integer',
      minimum: 1,
      maximum: 9999,
    },
    title: {
      description: 'What it is for.',
      examples: ['Low pressure'],
      $ref: 'dictionary.schema.json#/$defs/text',
    },
    language: {
      description: 'The number of the language that it is written in.',
      examples: [1],
      type: 'integer',
      minimum: 1,
      maximum: 9999,
    },
    kit: {
      description: 'The number of the kit that sealed it.',
      examples: ['0.1.0'],
      type: 'string',
      maxLength: 40,
    },
    sealed_on: {
      description: 'The day on which it was sealed.',
      examples: ['2026-03-02'],
      $ref: '#/$defs/calendar_day',
    },
    authors: {
      description: 'Who wrote it. None of them can approve it.',
      examples: [['Dr Elm']],
      type: 'array',
      items: { $ref: '#/$defs/person' },
      minItems: 1,
      maxItems: 50,
    },
    approvers: {
      description:
        'The entry of the record that said, when this was sealed, who may approve it. Without this nobody can approve it.',
      examples: ['sha256:0000000000000000000000000000000000000000000000000000000000000000'],
      $ref: '#/$defs/digest',
    },
    digest: {
      description: 'The digest of what it means, as every outcome names it.',
      examples: ['sha256:0000000000000000000000000000000000000000000000000000000000000000'],
      $ref: '#/$defs/digest',
    },
    logic_digest: {
      description: 'The same without the wording.',
      examples: ['sha256:0000000000000000000000000000000000000000000000000000000000000000'],
      $ref: '#/$defs/digest',
    },
    review_by: {
      description: 'The last day before its review is overdue.',
      examples: ['2027-09-30'],
      $ref: '#/$defs/calendar_day',
    },
    reads_with: {
      description: 'Of a ward policy: the sealed editions that it reads with.',
      examples: [
        [
          {
            protocol: 'one_threshold',
            edition: 1,
            digest: 'sha256:0000000000000000000000000000000000000000000000000000000000000000',
          },
        ],
      ],
      type: 'array',
      items: { $ref: '#/$defs/member' },
    },
    dictionary: {
      description: 'The observations that it reads, as they stood in the dictionary.',
      examples: [{ dictionary: 'vital_signs', language: 1, observations: {} }],
      $ref: 'dictionary.schema.json',
    },
    ladder: {
      description: 'The text of the ladder.',
      examples: ['ladder: alder_ladder\n'],
      $ref: '#/$defs/whole',
    },
    texts: {
      description:
        'By name, the text of the protocol or ward policy itself, of everything that it is based on, and of the protocols that it reads with.',
      examples: [{ one_threshold: 'protocol: one_threshold\n' }],
      type: 'object',
      propertyNames: { $ref: 'dictionary.schema.json#/$defs/name' },
      additionalProperties: { $ref: '#/$defs/whole' },
      minProperties: 1,
      maxProperties: 200,
    },
    cases: {
      description: 'The text of its cases.',
      examples: ['protocol: one_threshold\ncases: []\n'],
      $ref: '#/$defs/whole',
    },
    outcomes: {
      description:
        'What it answers to each case, in the order of the cases. A kit that answers otherwise refuses the edition.',
      examples: [
        [
          {
            case: 'On the edge',
            answers: { level: { at_least: 'call_doctor', could_be: 'call_doctor', settled: true } },
          },
        ],
      ],
      type: 'array',
      items: { $ref: '#/$defs/answered' },
      minItems: 1,
      maxItems: 100000,
    },
    seal: {
      description: 'SHA-256 over every byte of this file before this line.',
      examples: ['sha256:0000000000000000000000000000000000000000000000000000000000000000'],
      $ref: '#/$defs/digest',
    },
  },
  required: [
    'sealed',
    'name',
    'edition',
    'title',
    'language',
    'kit',
    'sealed_on',
    'digest',
    'logic_digest',
    'dictionary',
    'ladder',
    'texts',
    'cases',
    'outcomes',
    'seal',
  ],
  additionalProperties: false,
  $defs: {
    digest: {
      description: 'SHA-256 in 64 hexadecimal digits.',
      examples: ['sha256:0000000000000000000000000000000000000000000000000000000000000000'],
      type: 'string',
      pattern: '^sha256:[0-9a-f]{64}$',
    },
    calendar_day: {
      description: 'A day, year-month-day.',
      examples: ['2026-03-02'],
      type: 'string',
      pattern: '^[0-9]{4}-[0-9]{2}-[0-9]{2}$',
    },
    whole: {
      description: 'The whole text of a file.',
      examples: ['ladder: alder_ladder\n'],
      type: 'string',
      minLength: 1,
      maxLength: 1048576,
    },
    person: {
      description: 'The name of a person, as colleagues write it.',
      examples: ['Dr Ash'],
      type: 'string',
      minLength: 1,
      maxLength: 80,
    },
    member: {
      title: 'SealedMember',
      description: 'A protocol that a sealed ward policy reads with.',
      examples: [
        {
          protocol: 'one_threshold',
          edition: 1,
          digest: 'sha256:0000000000000000000000000000000000000000000000000000000000000000',
        },
      ],
      type: 'object',
      properties: {
        protocol: {
          description: 'Its name.',
          examples: ['one_threshold'],
          $ref: 'dictionary.schema.json#/$defs/name',
        },
        edition: { description: 'Its edition.', examples: [1], type: 'integer', minimum: 1, maximum: 9999 },
        digest: {
          description: 'Its digest.',
          examples: ['sha256:0000000000000000000000000000000000000000000000000000000000000000'],
          $ref: '#/$defs/digest',
        },
      },
      required: ['protocol', 'edition', 'digest'],
      additionalProperties: false,
    },
    answered: {
      title: 'SealedAnswer',
      description: 'A case, and what is answered.',
      examples: [
        {
          case: 'On the edge',
          answers: { level: { at_least: 'call_doctor', could_be: 'call_doctor', settled: true } },
        },
      ],
      type: 'object',
      properties: {
        case: {
          description: 'The name of the case.',
          examples: ['On the edge'],
          $ref: 'dictionary.schema.json#/$defs/text',
        },
        answers: {
          description: 'What decides what a nurse does. Wording is not held.',
          examples: [{ level: { at_least: 'call_doctor', could_be: 'call_doctor', settled: true } }],
          $ref: '#/$defs/reading',
        },
      },
      required: ['case', 'answers'],
      additionalProperties: false,
    },
    reading: {
      title: 'SealedReading',
      description: 'What one protocol, or a ward policy, answers. A list that is empty is left out.',
      examples: [{ level: { at_least: 'call_doctor', could_be: 'call_doctor', settled: true } }],
      type: 'object',
      properties: {
        applies: {
          description: 'Whether the protocol is for this patient.',
          examples: ['yes'],
          type: 'string',
          enum: ['yes', 'no', 'unsure'],
        },
        level: {
          description: 'The level; null when nothing is for this patient.',
          examples: [{ at_least: 'call_doctor', could_be: 'call_doctor', settled: true }],
          $ref: 'outcome.schema.json#/$defs/level',
        },
        met: {
          description: 'Rules that are met.',
          examples: [['systolic_low']],
          type: 'array',
          items: { $ref: 'dictionary.schema.json#/$defs/name' },
        },
        undecided: {
          description: 'Rules that are undecided.',
          examples: [['mean_low']],
          type: 'array',
          items: { $ref: 'dictionary.schema.json#/$defs/name' },
        },
        counts: {
          description: 'Rules that are undecided and count in full.',
          examples: [['mean_low']],
          type: 'array',
          items: { $ref: 'dictionary.schema.json#/$defs/name' },
        },
        explained: {
          description: 'Rules with an explanation that is known to hold.',
          examples: [['wide']],
          type: 'array',
          items: { $ref: 'dictionary.schema.json#/$defs/name' },
        },
        not_reliable: {
          description: 'Rules that are not met, and reassure nobody.',
          examples: [['fast_rate']],
          type: 'array',
          items: { $ref: 'dictionary.schema.json#/$defs/name' },
        },
        measures: {
          description: 'The numbers that were worked out.',
          examples: [{ pulse_pressure: { value: 56, unit: 'mm[Hg]' } }],
          type: 'object',
          propertyNames: { $ref: 'dictionary.schema.json#/$defs/name' },
          additionalProperties: { $ref: 'outcome.schema.json#/$defs/measure' },
        },
        ask_first: {
          description: 'What is to be asked before anything else.',
          examples: [['age']],
          type: 'array',
          items: { $ref: 'dictionary.schema.json#/$defs/name' },
        },
        take_first: {
          description: 'What is to be taken first.',
          examples: [['heart_rate']],
          type: 'array',
          items: { $ref: 'dictionary.schema.json#/$defs/name' },
        },
        missing: {
          description: 'What is missing of what is needed.',
          examples: [['heart_rate']],
          type: 'array',
          items: { $ref: 'dictionary.schema.json#/$defs/name' },
        },
        refused: {
          description: 'What was not used.',
          examples: [['systolic']],
          type: 'array',
          items: { $ref: 'dictionary.schema.json#/$defs/name' },
        },
        questioned: {
          description: 'What was used and questioned.',
          examples: [['systolic']],
          type: 'array',
          items: { $ref: 'dictionary.schema.json#/$defs/name' },
        },
        faults: {
          description: 'Faults of technique that were there.',
          examples: [['arm_hangs']],
          type: 'array',
          items: { $ref: 'dictionary.schema.json#/$defs/name' },
        },
        in_force: {
          description: 'A higher level of earlier sets that is still in force.',
          examples: ['call_doctor'],
          $ref: 'dictionary.schema.json#/$defs/name',
        },
        may_step_down: {
          description: 'Whether the sets allow stepping down from it.',
          examples: [false],
          type: 'boolean',
        },
        plan: {
          description: 'The escalation plan that changes whom to tell.',
          examples: ['comfort_care'],
          $ref: 'dictionary.schema.json#/$defs/name',
        },
        tell: {
          description: 'Who is told.',
          examples: [['Nurse in charge']],
          type: 'array',
          items: { $ref: 'dictionary.schema.json#/$defs/text' },
        },
        reads: {
          description: 'Of a ward policy: what each of its protocols answers.',
          examples: [
            { one_threshold: { level: { at_least: 'call_doctor', could_be: 'call_doctor', settled: true } } },
          ],
          type: 'object',
          propertyNames: { $ref: 'dictionary.schema.json#/$defs/name' },
          additionalProperties: { $ref: '#/$defs/reading' },
        },
      },
      required: ['level'],
      additionalProperties: false,
    },
  },
};

export const ladder: Schema = {
  $schema: 'https://json-schema.org/draft/2020-12/schema',
  $id: 'ladder.schema.json',
  title: 'LadderFile',
  description: "A hospital's escalation ladder: its levels, lowest first.",
  examples: [
    {
      ladder: 'alder_ladder',
      edition: 1,
      title: 'Escalation ladder',
      levels: [
        { level: 'usual_round', reassess: '12 h' },
        { level: 'call_doctor', respond: '30 min' },
      ],
    },
  ],
  type: 'object',
  properties: {
    ladder: {
      description: "The ladder's name.",
      examples: ['alder_ladder'],
      $ref: 'dictionary.schema.json#/$defs/name',
    },
    edition: {
      description: 'The number of the edition.',
      examples: [1],
      type: 'integer',
      minimum: 1,
      maximum: 100000,
    },
    title: {
      description: 'What the ladder is, as a heading.',
      examples: ['Escalation ladder'],
      $ref: 'dictionary.schema.json#/$defs/text',
    },
    about: {
      description: 'Whose ladder it is, in a few sentences.',
      examples: ['Invented for Alder Bay Hospital.'],
      $ref: 'dictionary.schema.json#/$defs/text',
    },
    levels: {
      description:
        'The levels, lowest first. A higher level never answers or reassesses later than a lower one.',
      examples: [
        [
          { level: 'usual_round', reassess: '12 h' },
          { level: 'call_doctor', respond: '30 min', reassess: '15 min' },
        ],
      ],
      type: 'array',
      items: { $ref: '#/$defs/level' },
      minItems: 2,
      maxItems: 20,
    },
  },
  required: ['ladder', 'edition', 'levels'],
  additionalProperties: false,
  $defs: {
    level: {
      title: 'Level',
      description:
        'One level: whom to tell, how soon they come, when to reassess, what if nobody answers, how to step down.',
      examples: [
        {
          level: 'call_doctor',
          title: 'Call the doctor',
          tell: [{ who: 'Duty doctor' }],
          respond: '30 min',
          reassess: '15 min',
        },
      ],
      type: 'object',
      properties: {
        level: {
          description: "The level's name.",
          examples: ['call_doctor'],
          $ref: 'dictionary.schema.json#/$defs/name',
        },
        title: {
          description: 'The level in plain words, as it is read out.',
          examples: ['Call the doctor'],
          $ref: 'dictionary.schema.json#/$defs/text',
        },
        says: {
          description: 'What the level means, in a sentence.',
          examples: ['A doctor sees the patient within half an hour.'],
          $ref: 'dictionary.schema.json#/$defs/text',
        },
        tell: {
          description: 'Whom to tell.',
          examples: [[{ who: 'Duty doctor', from: '07:00', to: '22:00' }]],
          type: 'array',
          items: { $ref: '#/$defs/tell' },
          minItems: 1,
          maxItems: 20,
        },
        respond: {
          description: 'How soon the one who is told is at the bedside.',
          examples: ['30 min'],
          $ref: 'dictionary.schema.json#/$defs/duration',
        },
        reassess: {
          description: 'When the next full set is due, at the latest.',
          examples: ['15 min'],
          $ref: 'dictionary.schema.json#/$defs/duration',
        },
        if_no_answer: {
          description: 'What to do when nobody answers.',
          examples: [{ after: '15 min', tell: 'Registrar' }],
          $ref: '#/$defs/no_answer',
        },
        step_down: {
          description: 'How the patient comes down from this level.',
          examples: [{ sets_in_a_row: 2, over: '1 h', agreed_by: 'Nurse in charge' }],
          $ref: '#/$defs/step_down',
        },
      },
      required: ['level'],
      additionalProperties: false,
    },
    tell: {
      title: 'Tell',
      description: 'Someone to tell, and between which hours.',
      examples: [{ who: 'Duty doctor', from: '07:00', to: '22:00' }],
      type: 'object',
      properties: {
        who: {
          description: 'The role.',
          examples: ['Duty doctor'],
          $ref: 'dictionary.schema.json#/$defs/text',
        },
        from: {
          description: 'From this time of day, included.',
          examples: ['07:00'],
          $ref: '#/$defs/time_of_day',
        },
        to: {
          description: 'Until this time of day, not included.',
          examples: ['22:00'],
          $ref: '#/$defs/time_of_day',
        },
      },
      required: ['who'],
      additionalProperties: false,
    },
    time_of_day: {
      description: 'A time of day, hours and minutes, in quotation marks.',
      examples: ['07:00'],
      type: 'string',
      pattern: '^([01][0-9]|2[0-3]):[0-5][0-9]$',
    },
    no_answer: {
      title: 'NoAnswer',
      description: 'What to do when nobody answers.',
      examples: [{ after: '15 min', tell: 'Registrar' }],
      type: 'object',
      properties: {
        after: {
          description: 'After this long.',
          examples: ['15 min'],
          $ref: 'dictionary.schema.json#/$defs/duration',
        },
        tell: {
          description: 'Whom to tell then.',
          examples: ['Registrar'],
          $ref: 'dictionary.schema.json#/$defs/text',
        },
      },
      required: ['after', 'tell'],
      additionalProperties: false,
    },
    step_down: {
      title: 'StepDown',
      description: 'How the patient comes down from a level.',
      examples: [{ sets_in_a_row: 2, over: '1 h', agreed_by: 'Nurse in charge' }],
      type: 'object',
      properties: {
        sets_in_a_row: {
          description: 'So many sets in a row below this level.',
          examples: [2],
          type: 'integer',
          minimum: 1,
          maximum: 20,
        },
        over: {
          description: 'Spread over at least this long.',
          examples: ['1 h'],
          $ref: 'dictionary.schema.json#/$defs/duration',
        },
        agreed_by: {
          description: 'Who agrees to it.',
          examples: ['Nurse in charge'],
          $ref: 'dictionary.schema.json#/$defs/text',
        },
      },
      required: ['sets_in_a_row', 'over', 'agreed_by'],
      additionalProperties: false,
    },
  },
};

export const logic: Schema = {
  $schema: 'https://json-schema.org/draft/2020-12/schema',
  $id: 'logic.schema.json',
  title: 'LogicFile',
  description:
    'A protocol as logic: whole numbers and flags go in, named steps follow in order, and answers point at steps. Steps are JSON Logic with a closed list of operators. What a protocol is based on is already worked in. Faults of technique stand beside the steps: one that is there makes the bounds of what was read wider.',
  examples: [
    {
      logic: 1,
      protocol: 'one_threshold',
      edition: 1,
      digest: 'sha256:0000000000000000000000000000000000000000000000000000000000000000',
      levels: ['usual_round', 'call_doctor'],
      observations: [
        {
          observation: 'systolic',
          kind: 'number',
          unit: 'mm[Hg]',
          steps_per_unit: '1',
          possible: [{ low: 30, high: 300 }],
        },
      ],
      contradictions: [],
      inputs: [
        {
          input: 'systolic:low',
          of: 'observation',
          name: 'systolic',
          part: 'low',
          unit: 'mm[Hg]',
          steps_per_unit: '1',
          otherwise: 30,
        },
      ],
      steps: [{ step: 'rules/0/when/systolic/below:certain', is: { '<=': [{ var: 'systolic:high' }, 89] } }],
      answers: {
        applies: { certain: true, possible: true },
        levels: { raised: -1, could: -1, floor: -1 },
        rules: {},
        measures: {},
      },
    },
  ],
  type: 'object',
  properties: {
    logic: { description: 'The number of the form of this file.', examples: [1], type: 'integer', const: 1 },
    protocol: {
      description: 'The protocol.',
      examples: ['one_threshold'],
      $ref: 'dictionary.schema.json#/$defs/name',
    },
    edition: { description: 'Its edition.', examples: [1], type: 'integer', minimum: 1 },
    digest: {
      description: 'The digest of the protocol that this was made from.',
      examples: ['sha256:0000000000000000000000000000000000000000000000000000000000000000'],
      type: 'string',
      pattern: '^sha256:[0-9a-f]{64}$',
    },
    levels: {
      description:
        'The levels of the ladder by name, lowest first; a level in the answers is a place in this list, from 0.',
      examples: [['usual_round', 'call_doctor']],
      type: 'array',
      items: { $ref: 'dictionary.schema.json#/$defs/name' },
    },
    observations: {
      description: 'What a set may give, for whoever makes inputs from a set.',
      examples: [
        [
          {
            observation: 'systolic',
            kind: 'number',
            unit: 'mm[Hg]',
            steps_per_unit: '1',
            possible: [{ low: 30, high: 300 }],
          },
        ],
      ],
      type: 'array',
      items: { $ref: '#/$defs/observation' },
    },
    contradictions: {
      description:
        'Pairs of observations that cannot both be right; both are then refused and count as missing.',
      examples: [
        [{ lower: 'diastolic', higher: 'systolic', may_be_equal: false, scale: 1, factor: 1, shift: 0 }],
      ],
      type: 'array',
      items: { $ref: '#/$defs/contradiction' },
    },
    inputs: {
      description: 'What goes in, in this order.',
      examples: [
        [
          {
            input: 'systolic:low',
            of: 'observation',
            name: 'systolic',
            part: 'low',
            unit: 'mm[Hg]',
            steps_per_unit: '1',
          },
        ],
      ],
      type: 'array',
      items: { $ref: '#/$defs/input' },
    },
    steps: {
      description: 'The steps; each reads inputs and earlier steps.',
      examples: [
        [{ step: 'rules/0/when/systolic/below:certain', is: { '<=': [{ var: 'systolic:high' }, 89] } }],
      ],
      type: 'array',
      items: { $ref: '#/$defs/step' },
    },
    faults: {
      description:
        'Faults of technique. Where one is there, what was read is asked about twice: as it was read, and with room for the truth.',
      examples: [
        [
          {
            fault: 'cuff_too_small',
            is_there: { var: 'faults/0/when:certain' },
            reads_high: { systolic: 30 },
            reads_low: {},
          },
        ],
      ],
      type: 'array',
      items: { $ref: '#/$defs/fault' },
    },
    answers: {
      description: 'Where the answers stand.',
      examples: [
        {
          applies: { certain: true, possible: true },
          levels: { raised: -1, could: -1, floor: -1 },
          rules: {},
          measures: {},
        },
      ],
      $ref: '#/$defs/answers',
    },
  },
  required: [
    'logic',
    'protocol',
    'edition',
    'digest',
    'levels',
    'observations',
    'contradictions',
    'inputs',
    'steps',
    'answers',
  ],
  additionalProperties: false,
  $defs: {
    observation: {
      title: 'LogicObservation',
      description: 'One observation that a set may give.',
      examples: [
        {
          observation: 'systolic',
          kind: 'number',
          unit: 'mm[Hg]',
          steps_per_unit: '1',
          possible: [{ low: 30, high: 300 }],
        },
      ],
      type: 'object',
      properties: {
        observation: {
          description: 'Its name.',
          examples: ['systolic'],
          $ref: 'dictionary.schema.json#/$defs/name',
        },
        kind: {
          description: 'A number, one of several choices, several of them, or yes or no.',
          examples: ['number'],
          type: 'string',
          enum: ['number', 'choice', 'several', 'yes_no'],
        },
        unit: { description: 'The unit of a number, as a UCUM code.', examples: ['mm[Hg]'], type: 'string' },
        steps_per_unit: {
          description: 'Of a number: how many steps one unit has, a whole number or a fraction.',
          examples: ['10', '1/5'],
          type: 'string',
          pattern: '^[0-9]+(/[0-9]+)?$',
        },
        possible: {
          description:
            'Of a number: what any body or device can give, a band for each range of ages, youngest first. What is outside is refused and counts as missing.',
          examples: [[{ low: 30, high: 300 }]],
          type: 'array',
          items: { $ref: '#/$defs/band' },
          minItems: 1,
        },
        choices: {
          description: 'Of anything but a number: what it can be.',
          examples: [['yes', 'no']],
          type: 'array',
          items: { $ref: 'dictionary.schema.json#/$defs/name' },
        },
        assumed: {
          description:
            'Of a standing fact: what holds while nobody has stated it, in steps or as a choice. It is then not known, and not missing.',
          examples: ['scale_1'],
          type: ['integer', 'string'],
        },
      },
      required: ['observation', 'kind'],
      additionalProperties: false,
    },
    band: {
      title: 'LogicBand',
      description: 'A range for a range of ages.',
      examples: [{ low: 30, high: 300 }],
      type: 'object',
      properties: {
        age_below: {
          description:
            'The age at which it ends, itself excluded, in steps of the observation age; left out in the last band. It begins where the one before ends.',
          examples: [93504],
          type: 'integer',
        },
        low: { description: 'The lowest step, included.', examples: [30], type: 'integer' },
        high: { description: 'The highest step, included.', examples: [300], type: 'integer' },
      },
      required: ['low', 'high'],
      additionalProperties: false,
    },
    contradiction: {
      title: 'LogicContradiction',
      description:
        'Refused when even the lowest of the one is not below the highest of the other: scale times lower is to be below factor times higher plus shift, in steps.',
      examples: [
        { lower: 'diastolic', higher: 'systolic', may_be_equal: false, scale: 1, factor: 1, shift: 0 },
      ],
      type: 'object',
      properties: {
        lower: {
          description: 'What is to be lower.',
          examples: ['diastolic'],
          $ref: 'dictionary.schema.json#/$defs/name',
        },
        higher: {
          description: 'What is to be higher.',
          examples: ['systolic'],
          $ref: 'dictionary.schema.json#/$defs/name',
        },
        may_be_equal: { description: 'Whether both may be the same.', examples: [false], type: 'boolean' },
        scale: {
          description: 'What the steps of the lower are multiplied by.',
          examples: [1],
          type: 'integer',
        },
        factor: {
          description: 'What the steps of the higher are multiplied by.',
          examples: [1],
          type: 'integer',
        },
        shift: { description: 'What is then added to them.', examples: [0], type: 'integer' },
      },
      required: ['lower', 'higher', 'may_be_equal', 'scale', 'factor', 'shift'],
      additionalProperties: false,
    },
    fault: {
      title: 'LogicFault',
      description: 'One fault of technique.',
      examples: [
        {
          fault: 'cuff_too_small',
          is_there: { var: 'faults/0/when:certain' },
          reads_high: { systolic: 30 },
          reads_low: {},
        },
      ],
      type: 'object',
      properties: {
        fault: {
          description: 'Its name.',
          examples: ['cuff_too_small'],
          $ref: 'dictionary.schema.json#/$defs/name',
        },
        is_there: {
          description: 'Whether it surely is there, from what was read.',
          examples: [{ var: 'faults/0/when:certain' }],
          $ref: '#/$defs/expression',
        },
        reads_high: {
          description:
            'By how many steps each observation may be read too high: the truth may be so much lower, inside what is possible. Of several faults they add up.',
          examples: [{ systolic: 30 }],
          type: 'object',
          additionalProperties: { type: 'integer', minimum: 1 },
        },
        reads_low: {
          description: 'By how many steps each may be read too low: the truth may be so much higher.',
          examples: [{}],
          type: 'object',
          additionalProperties: { type: 'integer', minimum: 1 },
        },
      },
      required: ['fault', 'is_there', 'reads_high', 'reads_low'],
      additionalProperties: false,
    },
    input: {
      title: 'LogicInput',
      description: 'One number that goes in: a whole number of steps, or a flag of 0 or 1.',
      examples: [
        {
          input: 'systolic:low',
          of: 'observation',
          name: 'systolic',
          part: 'low',
          unit: 'mm[Hg]',
          steps_per_unit: '1',
        },
      ],
      type: 'object',
      properties: {
        input: { description: 'Its name in the steps.', examples: ['systolic:low'], type: 'string' },
        of: {
          description: 'What it belongs to.',
          examples: ['observation'],
          type: 'string',
          enum: ['observation', 'limit', 'look_back'],
        },
        name: {
          description: 'The observation, the limit, or the measure that looks back.',
          examples: ['systolic'],
          $ref: 'dictionary.schema.json#/$defs/name',
        },
        part: {
          description:
            'low and high: the ends of a number. known, unobtainable, missing: facts of the set. may: whether a choice is still possible; sure: whether one of several is surely in, or a look back surely has a value; maybe: whether it can have one. open: whether taking a need now could decide that the present set counts in a look back. value: of a limit. count: what an average is divided by.',
          examples: ['low'],
          type: 'string',
          enum: [
            'low',
            'high',
            'known',
            'unobtainable',
            'missing',
            'may',
            'sure',
            'maybe',
            'open',
            'value',
            'count',
          ],
        },
        choice: {
          description: 'The choice, with may, and with sure of several.',
          examples: ['alert'],
          $ref: 'dictionary.schema.json#/$defs/name',
        },
        unit: { description: 'The unit of a number, as a UCUM code.', examples: ['mm[Hg]'], type: 'string' },
        steps_per_unit: {
          description: 'How many steps one unit has: a whole number or a fraction.',
          examples: ['10', '1/5'],
          type: 'string',
          pattern: '^[0-9]+(/[0-9]+)?$',
        },
        otherwise: {
          description:
            'What goes in while nothing is known: a missing number has its whole possible range, a choice may be anything. Left out with look backs, which need the earlier sets.',
          examples: [30],
          type: 'integer',
        },
      },
      required: ['input', 'of', 'name', 'part'],
      additionalProperties: false,
    },
    step: {
      title: 'LogicStep',
      description: 'One step: its name, and what it is.',
      examples: [
        { step: 'rules/0/when/systolic/below:certain', is: { '<=': [{ var: 'systolic:high' }, 89] } },
      ],
      type: 'object',
      properties: {
        step: {
          description: 'Its name: where the part stands in the protocol, and which of its logics this is.',
          examples: ['rules/0/when/systolic/below:certain'],
          type: 'string',
        },
        is: {
          description: 'What it is.',
          examples: [{ '<=': [{ var: 'systolic:high' }, 89] }],
          $ref: '#/$defs/expression',
        },
      },
      required: ['step', 'is'],
      additionalProperties: false,
    },
    expression: {
      title: 'LogicExpression',
      description: 'A whole number, a truth, a variable, or one operator with its parts.',
      examples: [89, true, { var: 'systolic:high' }, { '<=': [{ var: 'systolic:high' }, 89] }],
      type: ['integer', 'boolean', 'object'],
      properties: {
        var: {
          description: 'The value of an input or an earlier step.',
          examples: ['systolic:high'],
          type: 'string',
        },
        '+': { description: 'The sum.', examples: [[{ var: 'a' }, 1]], $ref: '#/$defs/parts' },
        '-': {
          description: 'The first less the second; of one, its negative.',
          examples: [[{ var: 'a' }, 1]],
          $ref: '#/$defs/parts',
        },
        '*': { description: 'The product.', examples: [[2, { var: 'a' }]], $ref: '#/$defs/parts' },
        min: { description: 'The lowest.', examples: [[{ var: 'a' }, 1]], $ref: '#/$defs/parts' },
        max: { description: 'The highest.', examples: [[{ var: 'a' }, 1]], $ref: '#/$defs/parts' },
        '<': {
          description: 'The first is lower than the second.',
          examples: [[{ var: 'a' }, 1]],
          $ref: '#/$defs/parts',
        },
        '<=': {
          description: 'The first is lower than the second, or the same.',
          examples: [[{ var: 'a' }, 1]],
          $ref: '#/$defs/parts',
        },
        and: {
          description: 'Every one holds.',
          examples: [[{ var: 'a' }, { var: 'b' }]],
          $ref: '#/$defs/parts',
        },
        or: {
          description: 'At least one holds.',
          examples: [[{ var: 'a' }, { var: 'b' }]],
          $ref: '#/$defs/parts',
        },
        '!': { description: 'It does not hold.', examples: [[{ var: 'a' }]], $ref: '#/$defs/parts' },
        if: {
          description: 'The part after the first truth that holds; else the last.',
          examples: [[{ var: 'a' }, 1, 0]],
          $ref: '#/$defs/parts',
        },
      },
      minProperties: 1,
      maxProperties: 1,
      additionalProperties: false,
    },
    parts: {
      title: 'LogicParts',
      description: 'The parts of an operator.',
      examples: [[{ var: 'a' }, 1]],
      type: 'array',
      items: { $ref: '#/$defs/expression' },
      minItems: 1,
    },
    answers: {
      title: 'LogicAnswers',
      description: 'Where the answers stand.',
      examples: [
        {
          applies: { certain: true, possible: true },
          levels: { raised: -1, could: -1, floor: -1 },
          rules: {},
          measures: {},
        },
      ],
      type: 'object',
      properties: {
        applies: {
          description: 'Whether the protocol is for this patient.',
          examples: [{ certain: true, possible: true }],
          $ref: '#/$defs/truth',
        },
        levels: {
          description: 'Indices on the ladder; -1 where no rule calls for a level.',
          examples: [{ raised: -1, could: -1, floor: -1 }],
          $ref: '#/$defs/levels',
        },
        rules: {
          description: "Each rule's answers.",
          examples: [
            {
              low: {
                certain: true,
                possible: true,
                counts: true,
                could: true,
                explained: { certain: false, possible: false },
                not_reliable: false,
              },
            },
          ],
          type: 'object',
          additionalProperties: { $ref: '#/$defs/rule' },
        },
        measures: {
          description: "Each measure's value.",
          examples: [
            {
              pulse_pressure: {
                low: { var: 'a' },
                high: { var: 'b' },
                scale: '1',
                bottom_low: 1,
                bottom_high: 1,
                bottom_scale: '1',
                sure: true,
                maybe: true,
              },
            },
          ],
          type: 'object',
          additionalProperties: { $ref: '#/$defs/measure' },
        },
      },
      required: ['applies', 'levels', 'rules', 'measures'],
      additionalProperties: false,
    },
    truth: {
      title: 'LogicTruth',
      description: 'Whether something holds for every set that is still possible, and for some.',
      examples: [{ certain: true, possible: true }],
      type: 'object',
      properties: {
        certain: { description: 'For every one.', examples: [true], $ref: '#/$defs/expression' },
        possible: { description: 'For some.', examples: [true], $ref: '#/$defs/expression' },
      },
      required: ['certain', 'possible'],
      additionalProperties: false,
    },
    levels: {
      title: 'LogicLevels',
      description: 'Levels as indices on the ladder.',
      examples: [{ raised: -1, could: -1, floor: -1 }],
      type: 'object',
      properties: {
        raised: {
          description: 'The highest level of the rules that count.',
          examples: [-1],
          $ref: '#/$defs/expression',
        },
        could: {
          description: 'The highest level of the rules that could be met.',
          examples: [-1],
          $ref: '#/$defs/expression',
        },
        floor: {
          description: 'The highest level of the rules that are met whatever is missing.',
          examples: [-1],
          $ref: '#/$defs/expression',
        },
      },
      required: ['raised', 'could', 'floor'],
      additionalProperties: false,
    },
    rule: {
      title: 'LogicRule',
      description: "One rule's answers.",
      examples: [
        {
          certain: true,
          possible: true,
          counts: true,
          could: true,
          explained: { certain: false, possible: false },
          not_reliable: false,
        },
      ],
      type: 'object',
      properties: {
        certain: { description: 'It is met.', examples: [true], $ref: '#/$defs/expression' },
        possible: {
          description: 'It may be met; else it is not met.',
          examples: [true],
          $ref: '#/$defs/expression',
        },
        counts: {
          description: 'It counts towards the level, exceptions that are not known left aside.',
          examples: [true],
          $ref: '#/$defs/expression',
        },
        could: {
          description: 'Values of what is needed could make it met.',
          examples: [true],
          $ref: '#/$defs/expression',
        },
        explained: {
          description: 'Whether it is explained.',
          examples: [{ certain: false, possible: false }],
          $ref: '#/$defs/truth',
        },
        not_reliable: {
          description: 'It is not met, and that reassures nobody.',
          examples: [false],
          $ref: '#/$defs/expression',
        },
      },
      required: ['certain', 'possible', 'counts', 'could', 'explained', 'not_reliable'],
      additionalProperties: false,
    },
    measure: {
      title: 'LogicMeasure',
      description: "A measure's value: low and high over scale, divided by the bottom over its own scale.",
      examples: [
        {
          low: { var: 'a' },
          high: { var: 'b' },
          scale: '1',
          bottom_low: 1,
          bottom_high: 1,
          bottom_scale: '1',
          sure: true,
          maybe: true,
        },
      ],
      type: 'object',
      properties: {
        low: { description: 'The lowest.', examples: [{ var: 'a' }], $ref: '#/$defs/expression' },
        high: { description: 'The highest.', examples: [{ var: 'b' }], $ref: '#/$defs/expression' },
        scale: {
          description: 'What both are divided by.',
          examples: ['10'],
          type: 'string',
          pattern: '^[0-9]+$',
        },
        bottom_low: { description: 'The lowest divisor.', examples: [1], $ref: '#/$defs/expression' },
        bottom_high: { description: 'The highest divisor.', examples: [1], $ref: '#/$defs/expression' },
        bottom_scale: {
          description: 'What the divisor is divided by.',
          examples: ['1'],
          type: 'string',
          pattern: '^[0-9]+$',
        },
        sure: { description: 'It surely has a value.', examples: [true], $ref: '#/$defs/expression' },
        maybe: { description: 'It may have a value.', examples: [true], $ref: '#/$defs/expression' },
      },
      required: ['low', 'high', 'scale', 'bottom_low', 'bottom_high', 'bottom_scale', 'sure', 'maybe'],
      additionalProperties: false,
    },
  },
};

export const outcome: Schema = {
  $schema: 'https://json-schema.org/draft/2020-12/schema',
  $id: 'outcome.schema.json',
  title: 'Outcome',
  description:
    'What an edition of a protocol says about a set in its series: the level, each rule with the sentences that explain it, what to do, and what is missing.',
  examples: [
    {
      protocol: 'one_threshold',
      edition: 1,
      title: 'Lesson 1: one threshold',
      digest: 'sha256:970c5fc878a4aba8b419ae9f6a8a0675ea37bb5db42c12e2f57989b280064d2b',
      at: null,
      applies: 'yes',
      level: { at_least: 'call_doctor', could_be: 'call_doctor', settled: true },
      rules: [
        {
          rule: 'systolic_low',
          title: 'Systolic low',
          state: 'met',
          level: 'call_doctor',
          decided_by: ['systolic pressure 88 mmHg is 2 below 90; the rule asks for 90 or less'],
        },
        {
          rule: 'no_pressure_found',
          title: 'No pressure found',
          state: 'not_met',
          level: 'call_doctor',
          decided_by: ['nobody reported that systolic pressure could not be obtained'],
        },
      ],
      measures: {},
      advice: [
        {
          rule: 'systolic_low',
          title: 'Systolic low',
          level: 'call_doctor',
          says: 'A systolic of 90 or lower suggests that the organs may go short.',
          because: 'Little is left for the kidneys and the brain.',
          ask: ['How do the hands feel, warm or cold?'],
          do: ['Take the pressure again by hand, on the other arm (own authority)'],
        },
      ],
      ask_first: [],
      take_first: [],
      missing: [],
      would_tell_more: [],
      unobtainable: [],
      declined: [],
      stands_in: [],
      assumed: [],
      limits: [],
      taken: [],
      refused: [],
      questioned: [],
      unused: [],
      caution:
        'This supports the judgement of a licensed clinician and the policy of the place, and replaces neither. It is not a medical device. When it and the paper policy differ, the paper policy wins. Whoever is worried about a patient calls, whatever stands here.',
    },
  ],
  type: 'object',
  properties: {
    protocol: {
      description: "The protocol's name.",
      examples: ['pressure_reading'],
      $ref: 'dictionary.schema.json#/$defs/name',
    },
    edition: {
      description: 'The number of its edition.',
      examples: [1],
      type: 'integer',
      minimum: 1,
      maximum: 100000,
    },
    title: {
      description: 'What the protocol is for, as a heading.',
      examples: ['Reading an adult blood pressure'],
      $ref: 'dictionary.schema.json#/$defs/text',
    },
    digest: {
      description:
        'The digest of everything that the outcome depends on: protocol, what it is based on, ladder and the observations that it reads.',
      examples: ['sha256:9f86d081884c7d659a2feaa0c55ad015a3bf4f1b2b0b822cd15d6c15b0f00a08'],
      type: 'string',
      pattern: '^sha256:[0-9a-f]{64}$',
    },
    based_on: {
      description:
        'Of a protocol that is based on another: that one, then the one that it is based on itself, each with what was changed of it. Without this it is based on none.',
      examples: [
        [
          {
            protocol: 'pressure_reading',
            edition: 1,
            title: 'Reading an adult blood pressure',
            digest: 'sha256:9f86d081884c7d659a2feaa0c55ad015a3bf4f1b2b0b822cd15d6c15b0f00a08',
            limits: [],
            withdrawn: [],
          },
        ],
      ],
      type: 'array',
      items: { $ref: '#/$defs/parent' },
      minItems: 1,
      maxItems: 2,
    },
    at: {
      description: 'The time for which the question was asked, as written; null for a set without a time.',
      examples: ['2026-03-02T12:05:00Z', null],
      type: ['string', 'null'],
    },
    applies: {
      description: 'Whether the protocol is for this patient. While that is unsure, nothing is settled.',
      examples: ['yes', 'unsure'],
      type: 'string',
      enum: ['yes', 'no', 'unsure'],
    },
    applies_because: {
      description: 'When it is not for this patient, or that is unsure: why.',
      examples: [['age 12 y is 4 y below 16 y; the protocol is for 16 y or more']],
      $ref: '#/$defs/sentences',
    },
    otherwise: {
      description: 'When it is not for this patient: what to use instead.',
      examples: ["For a child use the children's chart."],
      $ref: 'dictionary.schema.json#/$defs/text',
    },
    level: {
      description: 'The level. Null when the protocol is not for this patient.',
      examples: [{ at_least: 'tell_nurse_in_charge', could_be: 'call_doctor', settled: false }],
      $ref: '#/$defs/level',
    },
    rules: {
      description:
        'Every rule, in the order of the file, those of a protocol that it is based on first. Empty when the protocol is not for this patient.',
      examples: [[{ rule: 'fast_rate', title: 'Fast rate', state: 'not_met' }]],
      type: 'array',
      items: { $ref: '#/$defs/rule' },
    },
    measures: {
      description: 'The numbers that were worked out, by name.',
      examples: [{ pulse_pressure: { value: 56, unit: 'mm[Hg]' } }],
      type: 'object',
      propertyNames: { $ref: 'dictionary.schema.json#/$defs/name' },
      additionalProperties: { $ref: '#/$defs/measure' },
    },
    advice: {
      description: 'What the rules say that are met, or that count in full: the highest level first.',
      examples: [[{ rule: 'fast_rate', title: 'Fast rate', ask: [], do: [] }]],
      type: 'array',
      items: { $ref: '#/$defs/advice' },
    },
    ask_first: {
      description:
        'What is to be asked before anything else: whether the protocol is for this patient, and exceptions that nobody has answered.',
      examples: [['age']],
      $ref: '#/$defs/names',
    },
    take_first: {
      description: 'The needed observations that are missing and can still be taken, the most telling first.',
      examples: [['respiratory_rate', 'heart_rate']],
      $ref: '#/$defs/names',
    },
    missing: {
      description:
        'The needed observations of which the present set has no value. For some of them an earlier value may stand in.',
      examples: [['heart_rate', 'respiratory_rate']],
      $ref: '#/$defs/names',
    },
    unobtainable: {
      description:
        'What was tried and could not be obtained. It counts as missing, and can itself be a finding.',
      examples: [[{ observation: 'oxygen_saturation', because: 'cold fingers' }]],
      type: 'array',
      items: { $ref: '#/$defs/without_value' },
    },
    declined: {
      description: 'What the patient declined. It counts as missing.',
      examples: [[{ observation: 'temperature', because: 'asked not to be woken' }]],
      type: 'array',
      items: { $ref: '#/$defs/without_value' },
    },
    would_tell_more: {
      description: 'Observations that only help, are missing, and could still decide something.',
      examples: [['vasodilator_last_6_h']],
      $ref: '#/$defs/names',
    },
    stands_in: {
      description:
        'Values of earlier sets that stand in for what the present set lacks. They may raise the level and never settle a lower one.',
      examples: [[{ observation: 'temperature', at: '2026-03-02T10:00:00Z', value: 37.2, unit: 'Cel' }]],
      type: 'array',
      items: { $ref: '#/$defs/earlier' },
    },
    faults: {
      description:
        'Faults of technique that are known to be there, what each may hide, and the rules that would answer otherwise if the truth lay elsewhere. The level that the numbers call for stands. Left out when there are none.',
      examples: [
        [
          {
            fault: 'arm_hangs',
            title: 'Arm below the heart',
            says: 'An arm below the heart makes the pressure read too high.',
            do: [],
            readings: [{ observation: 'systolic', read: 104, low: 94, high: 104, unit: 'mm[Hg]' }],
            changes: [{ rule: 'systolic_lowish', title: 'Systolic on the low side', level: 'look_again' }],
          },
        ],
      ],
      type: 'array',
      items: { $ref: '#/$defs/fault' },
    },
    in_force: {
      description:
        'A higher level that an earlier set reached and that has not been stepped down from. Left out when there is none.',
      examples: [
        {
          level: 'call_doctor',
          since: '2026-03-02T08:00:00Z',
          last_at: '2026-03-02T08:00:00Z',
          sets_below: 1,
          sets_asked: 2,
          minutes: 0,
          minutes_asked: 120,
          agreed_by: 'Nurse in charge',
          may_step_down: false,
        },
      ],
      $ref: '#/$defs/in_force',
    },
    assumed: {
      description: 'Standing facts that nobody has stated, and what they count as.',
      examples: [[{ observation: 'oxygen_scale', value: 'scale_1' }]],
      type: 'array',
      items: { $ref: '#/$defs/assumed' },
    },
    limits: {
      description: 'Limits that were changed for this patient.',
      examples: [[{ limit: 'mean_floor', value: 70, unit: 'mm[Hg]', by: 'Dr Ash' }]],
      type: 'array',
      items: { $ref: '#/$defs/limit' },
    },
    taken: {
      description: 'Values that were converted, or moved to their step.',
      examples: [[{ observation: 'temperature', given: '98.1 [degF]', as: '36.7 Cel' }]],
      type: 'array',
      items: { $ref: '#/$defs/taken' },
    },
    refused: {
      description: 'Values that are not used.',
      examples: [[{ observation: 'systolic', given: '1040', because: 'no body gives this value' }]],
      type: 'array',
      items: { $ref: '#/$defs/remark' },
    },
    questioned: {
      description: 'Values that are used although they are hardly plausible.',
      examples: [
        [
          {
            observation: 'systolic',
            given: '42',
            because: 'systolic pressure 42 mmHg is lower than 50, the lowest that is plausible; it is used',
          },
        ],
      ],
      type: 'array',
      items: { $ref: '#/$defs/remark' },
    },
    unused: {
      description: 'Observations that were given and that the protocol does not read.',
      examples: [['temperature']],
      $ref: '#/$defs/names',
    },
    caution: {
      description: 'What the outcome is not.',
      examples: ['This supports the judgement of a licensed clinician and never replaces it.'],
      $ref: 'dictionary.schema.json#/$defs/text',
    },
  },
  required: [
    'protocol',
    'edition',
    'title',
    'digest',
    'at',
    'applies',
    'level',
    'rules',
    'measures',
    'advice',
    'ask_first',
    'take_first',
    'missing',
    'unobtainable',
    'declined',
    'would_tell_more',
    'stands_in',
    'assumed',
    'limits',
    'taken',
    'refused',
    'questioned',
    'unused',
    'caution',
  ],
  additionalProperties: false,
  $defs: {
    name: { $ref: 'dictionary.schema.json#/$defs/name' },
    names: {
      title: 'OutcomeNames',
      description: 'A list of names.',
      examples: [['heart_rate']],
      type: 'array',
      items: { $ref: '#/$defs/name' },
    },
    sentence: {
      title: 'Sentence',
      description:
        'A sentence for a person to read. Its numbers are values, limits or their exact differences.',
      examples: ['heart rate 95 /min is exactly 95; the rule asks for more than 95'],
      type: 'string',
      minLength: 1,
    },
    sentences: {
      title: 'Sentences',
      description: 'Sentences, each one reason.',
      examples: [['heart rate 95 /min is exactly 95; the rule asks for more than 95']],
      type: 'array',
      items: { $ref: '#/$defs/sentence' },
    },
    unit: {
      description: 'The unit, as a UCUM code. Without one it is a plain number.',
      examples: ['mm[Hg]'],
      type: 'string',
      maxLength: 40,
    },
    level: {
      title: 'OutcomeLevel',
      description: 'How far up the ladder. What is at least so is never shown without what it could be.',
      examples: [{ at_least: 'tell_nurse_in_charge', could_be: 'call_doctor', settled: false }],
      type: ['object', 'null'],
      properties: {
        at_least: {
          description:
            'The highest level that is called for. Null while nothing is settled and no rule calls for more than the lowest: then complete the set.',
          examples: ['tell_nurse_in_charge', null],
          type: ['string', 'null'],
          maxLength: 60,
        },
        could_be: {
          description: 'The highest level that it could be once what is missing is known.',
          examples: ['call_doctor'],
          $ref: '#/$defs/name',
        },
        settled: {
          description: 'Whether nothing that is missing, and no answer that is open, could change it.',
          examples: [false],
          type: 'boolean',
        },
      },
      required: ['at_least', 'could_be', 'settled'],
      additionalProperties: false,
    },
    rule: {
      title: 'OutcomeRule',
      description: 'How one rule stands, and why.',
      examples: [
        {
          rule: 'fast_rate',
          title: 'Fast rate',
          state: 'not_met',
          level: 'look_again',
          decided_by: ['heart rate 72 /min is 18 below 90; the rule asks for more than 90'],
        },
      ],
      type: 'object',
      properties: {
        rule: { description: "The rule's name.", examples: ['fast_rate'], $ref: '#/$defs/name' },
        title: {
          description: 'Its name in plain words.',
          examples: ['Fast rate'],
          $ref: 'dictionary.schema.json#/$defs/text',
        },
        from: {
          description:
            "Of a rule that stands in a protocol that this one is based on: which. Without this the rule is the protocol's own.",
          examples: [{ protocol: 'pressure_reading', edition: 1 }],
          $ref: '#/$defs/origin',
        },
        state: {
          description: 'Whether it holds. undecided: what is missing could still decide it.',
          examples: ['met'],
          type: 'string',
          enum: ['met', 'not_met', 'undecided'],
        },
        level: {
          description:
            'The level that it calls for when it is met: with a known explanation, the level that the explanation states. Without one it only says.',
          examples: ['look_again'],
          $ref: '#/$defs/name',
        },
        lowered_from: {
          description: 'The level that it would call for without the explanation.',
          examples: ['tell_nurse_in_charge'],
          $ref: '#/$defs/name',
        },
        counts: {
          description:
            'true: undecided, and it counts in full, because nothing holds it back but an exception that nobody has answered.',
          examples: [true],
          type: 'boolean',
          const: true,
        },
        decided_by: {
          description: 'What decided it, or what makes it count.',
          examples: [['heart rate 72 /min is 18 below 90; the rule asks for more than 90']],
          $ref: '#/$defs/sentences',
        },
        waits_for: {
          description: 'Of an undecided rule: the observations that could still decide it.',
          examples: [['heart_rate', 'respiratory_rate']],
          $ref: '#/$defs/names',
        },
        decided_if: {
          description: 'Of an undecided rule: values that would decide it, each on its own.',
          examples: [[{ observation: 'heart_rate', from: 96, to: 350, unit: '/min', state: 'met' }]],
          type: 'array',
          items: { $ref: '#/$defs/decided_if' },
        },
        no_value: {
          description: 'Of an undecided rule: numbers in it that have no value, and why.',
          examples: [
            ['change of the systolic has no value: it needs two sets with a systolic pressure within 4 h'],
          ],
          $ref: '#/$defs/sentences',
        },
        explained_by: {
          description: 'The explanation that is known to hold.',
          examples: ['A medicine that lowers pressure can do this; it does not rule out infection.'],
          $ref: '#/$defs/sentence',
        },
        could_be_explained_by: {
          description: 'An explanation that nobody has answered.',
          examples: ['A medicine that lowers pressure can do this; it does not rule out infection.'],
          $ref: '#/$defs/sentence',
        },
        taken_back_by: {
          description: 'The exception that is known to take the rule back.',
          examples: ['This patient always lives at such a pressure.'],
          $ref: '#/$defs/sentence',
        },
        could_be_taken_back_by: {
          description: 'An exception that nobody has answered, and that alone holds the rule back.',
          examples: ['This patient always lives at such a pressure.'],
          $ref: '#/$defs/sentence',
        },
        not_reliable: {
          description: 'The rule is not met, but that reassures nobody: why.',
          examples: [['paced: yes']],
          $ref: '#/$defs/sentences',
        },
      },
      required: ['rule', 'title', 'state'],
      additionalProperties: false,
    },
    origin: {
      title: 'OutcomeOrigin',
      description: 'The protocol in whose file something stands.',
      examples: [{ protocol: 'pressure_reading', edition: 1 }],
      type: 'object',
      properties: {
        protocol: { description: 'Its name.', examples: ['pressure_reading'], $ref: '#/$defs/name' },
        edition: { description: 'Its edition.', examples: [1], type: 'integer', minimum: 1, maximum: 100000 },
      },
      required: ['protocol', 'edition'],
      additionalProperties: false,
    },
    parent: {
      title: 'OutcomeParent',
      description: 'A protocol that is adapted, and what the one that is based on it changes of it.',
      examples: [
        {
          protocol: 'pressure_reading',
          edition: 1,
          title: 'Reading an adult blood pressure',
          digest: 'sha256:9f86d081884c7d659a2feaa0c55ad015a3bf4f1b2b0b822cd15d6c15b0f00a08',
          limits: [],
          withdrawn: [],
        },
      ],
      type: 'object',
      properties: {
        protocol: { description: 'Its name.', examples: ['pressure_reading'], $ref: '#/$defs/name' },
        edition: { description: 'Its edition.', examples: [1], type: 'integer', minimum: 1, maximum: 100000 },
        title: {
          description: 'What it is for, as a heading.',
          examples: ['Reading an adult blood pressure'],
          $ref: 'dictionary.schema.json#/$defs/text',
        },
        digest: {
          description: 'Its digest.',
          examples: ['sha256:9f86d081884c7d659a2feaa0c55ad015a3bf4f1b2b0b822cd15d6c15b0f00a08'],
          type: 'string',
          pattern: '^sha256:[0-9a-f]{64}$',
        },
        limits: {
          description: 'Its limits that have another value.',
          examples: [
            [
              {
                limit: 'mean_floor',
                value: 70,
                instead_of: 65,
                unit: 'mm[Hg]',
                because: "The ward's patients live at higher pressures.",
              },
            ],
          ],
          type: 'array',
          items: { $ref: '#/$defs/other_value' },
        },
        withdrawn: {
          description: 'Its rules that are withdrawn.',
          examples: [
            [
              {
                rule: 'head_injury_watch',
                title: 'Head injury',
                because: 'The ward has a protocol of its own for head injuries.',
              },
            ],
          ],
          type: 'array',
          items: { $ref: '#/$defs/withdrawn' },
        },
      },
      required: ['protocol', 'edition', 'title', 'digest', 'limits', 'withdrawn'],
      additionalProperties: false,
    },
    other_value: {
      title: 'OutcomeOtherValue',
      description: 'A limit that has another value than in the protocol that is adapted, for every patient.',
      examples: [
        {
          limit: 'mean_floor',
          value: 70,
          instead_of: 65,
          unit: 'mm[Hg]',
          because: "The ward's patients live at higher pressures.",
        },
      ],
      type: 'object',
      properties: {
        limit: { description: 'The limit.', examples: ['mean_floor'], $ref: '#/$defs/name' },
        value: { description: 'Its value.', examples: [70], type: 'number' },
        instead_of: {
          description: 'Its value in the protocol that is adapted.',
          examples: [65],
          type: 'number',
        },
        unit: { description: 'The unit of both.', examples: ['mm[Hg]'], $ref: '#/$defs/unit' },
        because: {
          description: 'Why.',
          examples: ["The ward's patients live at higher pressures."],
          $ref: 'dictionary.schema.json#/$defs/text',
        },
      },
      required: ['limit', 'value', 'instead_of', 'because'],
      additionalProperties: false,
    },
    withdrawn: {
      title: 'OutcomeWithdrawn',
      description: 'A rule that is withdrawn.',
      examples: [
        {
          rule: 'head_injury_watch',
          title: 'Head injury',
          because: 'The ward has a protocol of its own for head injuries.',
        },
      ],
      type: 'object',
      properties: {
        rule: { description: "The rule's name.", examples: ['head_injury_watch'], $ref: '#/$defs/name' },
        title: {
          description: 'Its name in plain words.',
          examples: ['Head injury'],
          $ref: 'dictionary.schema.json#/$defs/text',
        },
        because: {
          description: 'Why.',
          examples: ['The ward has a protocol of its own for head injuries.'],
          $ref: 'dictionary.schema.json#/$defs/text',
        },
      },
      required: ['rule', 'title', 'because'],
      additionalProperties: false,
    },
    decided_if: {
      title: 'DecidedIf',
      description:
        'Values of one observation that decide a rule, whatever else is missing: a range with both ends included, or any one of some choices.',
      examples: [
        { observation: 'heart_rate', from: 96, to: 350, is_highest: true, unit: '/min', state: 'met' },
      ],
      type: 'object',
      properties: {
        observation: { description: 'The observation.', examples: ['heart_rate'], $ref: '#/$defs/name' },
        from: { description: 'The lowest such value, included.', examples: [96], type: 'number' },
        to: { description: 'The highest such value, included.', examples: [350], type: 'number' },
        is_lowest: {
          description: 'true: no value below from would be used.',
          examples: [true],
          type: 'boolean',
          const: true,
        },
        is_highest: {
          description: 'true: no value above to would be used.',
          examples: [true],
          type: 'boolean',
          const: true,
        },
        unit: { description: 'The unit of from and to.', examples: ['/min'], $ref: '#/$defs/unit' },
        choices: {
          description:
            'Any one of these choices; of an observation that can hold several, any one of them among the others. An empty list: none at all.',
          examples: [['pain', 'unresponsive']],
          $ref: '#/$defs/names',
        },
        state: {
          description: 'What the rule then is.',
          examples: ['met'],
          type: 'string',
          enum: ['met', 'not_met'],
        },
      },
      required: ['observation', 'state'],
      additionalProperties: false,
    },
    measure: {
      title: 'OutcomeMeasure',
      description: 'A value; or the lowest and the highest that it can still be; or none.',
      examples: [{ value: 56, unit: 'mm[Hg]' }, { low: 0, high: 3 }, { missing: true }],
      type: 'object',
      properties: {
        value: {
          description:
            'The value. Where it has more than six decimals it is rounded, and exact says what it is.',
          examples: [66.666667],
          type: 'number',
        },
        exact: {
          description: 'The value as a fraction, where it was rounded.',
          examples: ['200/3'],
          $ref: '#/$defs/exact_fraction',
        },
        low: { description: 'The lowest that it can be.', examples: [0], type: 'number' },
        low_exact: {
          description: 'The same as a fraction, where it was rounded.',
          examples: ['200/3'],
          $ref: '#/$defs/exact_fraction',
        },
        high: { description: 'The highest that it can be.', examples: [3], type: 'number' },
        high_exact: {
          description: 'The same as a fraction, where it was rounded.',
          examples: ['200/3'],
          $ref: '#/$defs/exact_fraction',
        },
        unit: { description: 'Its unit.', examples: ['mm[Hg]'], $ref: '#/$defs/unit' },
        never: {
          description:
            'true: what it counts the minutes since has never happened in its window; beside low, it may be that it never has.',
          examples: [true],
          type: 'boolean',
          const: true,
        },
        missing: { description: 'true: it has no value.', examples: [true], type: 'boolean', const: true },
        waits_for: {
          description: 'Observations without a value that it is made of, while it is a range.',
          examples: [['oxygen_saturation']],
          $ref: '#/$defs/names',
        },
        may_be_missing: {
          description: 'true: it may be that it has no value.',
          examples: [true],
          type: 'boolean',
          const: true,
        },
      },
      additionalProperties: false,
    },
    exact_fraction: {
      description: 'An exact number.',
      examples: ['200/3'],
      type: 'string',
      pattern: '^-?[0-9]+/[0-9]+$',
    },
    advice: {
      title: 'Advice',
      description: 'What one rule says.',
      examples: [
        {
          rule: 'fast_rate',
          title: 'Fast rate',
          level: 'look_again',
          says: 'The rate suggests that the heart makes up for something.',
          ask: [],
          do: ['Count the pulse by hand (own authority)'],
        },
      ],
      type: 'object',
      properties: {
        rule: { description: "The rule's name.", examples: ['fast_rate'], $ref: '#/$defs/name' },
        title: {
          description: 'Its name in plain words.',
          examples: ['Fast rate'],
          $ref: 'dictionary.schema.json#/$defs/text',
        },
        level: {
          description: 'The level that it calls for.',
          examples: ['look_again'],
          $ref: '#/$defs/name',
        },
        says: {
          description: 'What it suggests.',
          examples: ['The rate suggests that the heart makes up for something.'],
          $ref: 'dictionary.schema.json#/$defs/text',
        },
        because: {
          description: 'Why.',
          examples: ['Between beats only the tone of the vessels holds the pressure up.'],
          $ref: 'dictionary.schema.json#/$defs/text',
        },
        explained_by: {
          description: 'The explanation that is known to hold.',
          examples: ['A medicine that lowers pressure can do this; it does not rule out infection.'],
          $ref: '#/$defs/sentence',
        },
        ask: {
          description: 'What to ask or look for.',
          examples: [['Is there a source of infection?']],
          $ref: '#/$defs/sentences',
        },
        do: {
          description:
            'What to do, and on whose authority. What several rules ask for is said once, with the first of them.',
          examples: [['Take a full set now (own authority)']],
          $ref: '#/$defs/sentences',
        },
      },
      required: ['rule', 'title', 'ask', 'do'],
      additionalProperties: false,
    },
    without_value: {
      title: 'WithoutValue',
      description: 'An observation that has no value although somebody tried.',
      examples: [{ observation: 'oxygen_saturation', because: 'cold fingers' }],
      type: 'object',
      properties: {
        observation: {
          description: 'The observation.',
          examples: ['oxygen_saturation'],
          $ref: '#/$defs/name',
        },
        because: { description: 'Why, where that was said.', examples: ['cold fingers'], type: 'string' },
      },
      required: ['observation'],
      additionalProperties: false,
    },
    earlier: {
      title: 'EarlierValue',
      description: 'A value of an earlier set, with its time.',
      examples: [{ observation: 'temperature', at: '2026-03-02T10:00:00Z', value: 37.2, unit: 'Cel' }],
      type: 'object',
      properties: {
        observation: { description: 'The observation.', examples: ['temperature'], $ref: '#/$defs/name' },
        at: { description: 'When it was taken.', examples: ['2026-03-02T10:00:00Z'], type: 'string' },
        value: {
          description: 'The value.',
          examples: [37.2, 'alert'],
          type: ['number', 'string', 'array'],
          items: { $ref: '#/$defs/name' },
        },
        low: { description: 'The lowest that it can truly be.', examples: [96], type: 'number' },
        high: { description: 'The highest that it can truly be.', examples: [104], type: 'number' },
        unit: { description: 'Its unit.', examples: ['Cel'], $ref: '#/$defs/unit' },
      },
      required: ['observation', 'at'],
      additionalProperties: false,
    },
    fault: {
      title: 'OutcomeFault',
      description: 'A fault of technique that is known to be there.',
      examples: [
        {
          fault: 'arm_hangs',
          title: 'Arm below the heart',
          says: 'An arm below the heart makes the pressure read too high.',
          do: [],
          readings: [{ observation: 'systolic', read: 104, low: 94, high: 104, unit: 'mm[Hg]' }],
          changes: [],
        },
      ],
      type: 'object',
      properties: {
        fault: { description: "The fault's name.", examples: ['arm_hangs'], $ref: '#/$defs/name' },
        title: {
          description: 'The fault in plain words.',
          examples: ['Arm below the heart'],
          $ref: 'dictionary.schema.json#/$defs/text',
        },
        says: {
          description: 'What it does to the reading.',
          examples: ['An arm below the heart makes the pressure read too high.'],
          $ref: 'dictionary.schema.json#/$defs/text',
        },
        do: {
          description: 'What to do so that the next reading is free of it.',
          examples: [['Support the arm at heart level and take the pressure again (own authority)']],
          $ref: '#/$defs/sentences',
        },
        readings: {
          description: 'What was read, and what the truth may be: with all faults of the set together.',
          examples: [[{ observation: 'systolic', read: 104, low: 94, high: 104, unit: 'mm[Hg]' }]],
          type: 'array',
          items: { $ref: '#/$defs/reading' },
        },
        changes: {
          description:
            'Rules that would answer otherwise somewhere in that range, with the level that each calls for. Empty: the fault does not matter here.',
          examples: [[{ rule: 'systolic_lowish', title: 'Systolic on the low side', level: 'look_again' }]],
          type: 'array',
          items: { $ref: '#/$defs/doubted' },
        },
      },
      required: ['fault', 'title', 'says', 'do', 'readings', 'changes'],
      additionalProperties: false,
    },
    reading: {
      title: 'UnsureReading',
      description: 'What was read, and from where to where the truth may lie.',
      examples: [{ observation: 'systolic', read: 104, low: 94, high: 104, unit: 'mm[Hg]' }],
      type: 'object',
      properties: {
        observation: { description: 'The observation.', examples: ['systolic'], $ref: '#/$defs/name' },
        read: {
          description: 'The value that was read; left out where it was itself a range.',
          examples: [104],
          type: 'number',
        },
        low: { description: 'The lowest that it can truly be.', examples: [94], type: 'number' },
        high: { description: 'The highest that it can truly be.', examples: [104], type: 'number' },
        unit: { description: 'Its unit.', examples: ['mm[Hg]'], $ref: '#/$defs/unit' },
      },
      required: ['observation', 'low', 'high'],
      additionalProperties: false,
    },
    doubted: {
      title: 'DoubtedRule',
      description: 'A rule whose answer a fault puts in doubt.',
      examples: [{ rule: 'systolic_lowish', title: 'Systolic on the low side', level: 'look_again' }],
      type: 'object',
      properties: {
        rule: { description: "The rule's name.", examples: ['systolic_lowish'], $ref: '#/$defs/name' },
        title: {
          description: 'The rule in plain words.',
          examples: ['Systolic on the low side'],
          $ref: 'dictionary.schema.json#/$defs/text',
        },
        level: {
          description: 'The level that it calls for when it is met.',
          examples: ['look_again'],
          $ref: '#/$defs/name',
        },
      },
      required: ['rule', 'title'],
      additionalProperties: false,
    },
    in_force: {
      title: 'OutcomeInForce',
      description:
        'A level from earlier sets that still holds. Its words and times hold until its role agrees to step down.',
      examples: [
        {
          level: 'call_doctor',
          since: '2026-03-02T08:00:00Z',
          last_at: '2026-03-02T08:00:00Z',
          sets_below: 1,
          sets_asked: 2,
          minutes: 0,
          minutes_asked: 120,
          agreed_by: 'Nurse in charge',
          may_step_down: false,
        },
      ],
      type: 'object',
      properties: {
        level: { description: 'The level.', examples: ['call_doctor'], $ref: '#/$defs/name' },
        since: {
          description: 'When a set first reached it.',
          examples: ['2026-03-02T08:00:00Z'],
          type: 'string',
        },
        last_at: {
          description: 'When a set last called for it.',
          examples: ['2026-03-02T08:00:00Z'],
          type: 'string',
        },
        sets_below: {
          description: 'How many sets in a row lie below it, with nothing missing that could reach it.',
          examples: [1],
          type: 'integer',
        },
        sets_asked: { description: 'How many the ladder asks for.', examples: [2], type: 'integer' },
        minutes: {
          description: 'Minutes from the first to the latest of these sets.',
          examples: [60],
          type: 'integer',
        },
        minutes_asked: { description: 'How many the ladder asks for.', examples: [120], type: 'integer' },
        agreed_by: {
          description: 'The role that agrees to step down.',
          examples: ['Nurse in charge'],
          $ref: 'dictionary.schema.json#/$defs/text',
        },
        may_step_down: {
          description: 'Whether the sets show what the ladder asks for. The role still has to agree.',
          examples: [false],
          type: 'boolean',
        },
      },
      required: ['level', 'since', 'last_at', 'sets_below', 'minutes', 'may_step_down'],
      additionalProperties: false,
    },
    assumed: {
      title: 'AssumedValue',
      description: 'What a standing fact counts as while nobody has stated it.',
      examples: [{ observation: 'oxygen_scale', value: 'scale_1' }],
      type: 'object',
      properties: {
        observation: { description: 'The observation.', examples: ['oxygen_scale'], $ref: '#/$defs/name' },
        value: { description: 'What it counts as.', examples: ['scale_1'], type: ['number', 'string'] },
        unit: { description: 'Its unit.', examples: ['mm[Hg]'], $ref: '#/$defs/unit' },
      },
      required: ['observation', 'value'],
      additionalProperties: false,
    },
    limit: {
      title: 'ChangedLimit',
      description: 'A limit as it was changed for this patient.',
      examples: [
        {
          limit: 'mean_floor',
          value: 70,
          unit: 'mm[Hg]',
          by: 'Dr Ash',
          reason: 'long-standing high pressure',
          until: '2026-03-03T08:00:00.000Z',
        },
      ],
      type: 'object',
      properties: {
        limit: { description: 'The limit.', examples: ['mean_floor'], $ref: '#/$defs/name' },
        value: { description: 'What it is now.', examples: [70], type: 'number' },
        unit: { description: 'Its unit.', examples: ['mm[Hg]'], $ref: '#/$defs/unit' },
        by: { description: 'Who changed it.', examples: ['Dr Ash'], type: 'string' },
        reason: { description: 'Why.', examples: ['long-standing high pressure'], type: 'string' },
        until: {
          description: 'Until when; at that time it no longer holds.',
          examples: ['2026-03-03T08:00:00.000Z'],
          type: 'string',
        },
      },
      required: ['limit', 'value', 'by'],
      additionalProperties: false,
    },
    taken: {
      title: 'TakenValue',
      description: 'A value as it was given, and as it is used.',
      examples: [{ observation: 'temperature', given: '98.1 [degF]', as: '36.7 Cel' }],
      type: 'object',
      properties: {
        observation: {
          description: 'The observation, or the limit.',
          examples: ['temperature'],
          $ref: '#/$defs/name',
        },
        given: { description: 'As it was written.', examples: ['98.1 [degF]'], type: 'string' },
        as: { description: 'As it is used.', examples: ['36.7 Cel'], type: 'string' },
      },
      required: ['observation', 'given', 'as'],
      additionalProperties: false,
    },
    remark: {
      title: 'Remark',
      description: 'A value, and what is to be said of it.',
      examples: [
        {
          observation: 'systolic',
          given: '42',
          because: 'systolic pressure 42 mmHg is lower than 50, the lowest that is plausible; it is used',
        },
      ],
      type: 'object',
      properties: {
        observation: {
          description: 'The observation, or the limit.',
          examples: ['systolic'],
          $ref: '#/$defs/name',
        },
        given: { description: 'As it was written.', examples: ['42'], type: 'string' },
        because: {
          description: 'Why.',
          examples: ['systolic pressure 42 mmHg is lower than 50, the lowest that is plausible; it is used'],
          $ref: '#/$defs/sentence',
        },
      },
      required: ['observation', 'given', 'because'],
      additionalProperties: false,
    },
  },
};

export const protocol: Schema = {
  $schema: 'https://json-schema.org/draft/2020-12/schema',
  $id: 'protocol.schema.json',
  title: 'ProtocolFile',
  description: 'A protocol: how one unit reads a set of observations, and what it does about it.',
  examples: [
    {
      protocol: 'first_protocol',
      edition: 1,
      title: 'A first protocol',
      ladder: 'alder_ladder',
      observations: { needs: ['systolic'] },
      rules: [],
    },
  ],
  type: 'object',
  properties: {
    protocol: {
      description: "The protocol's own name. Its folder has the same name.",
      examples: ['pressure_reading'],
      $ref: '#/$defs/name',
    },
    edition: {
      description: 'The number of the edition; each change that is put in force has a higher one.',
      examples: [1],
      type: 'integer',
      minimum: 1,
      maximum: 100000,
    },
    title: {
      description: 'What the protocol is for, as a heading.',
      examples: ['Reading a blood pressure'],
      $ref: '#/$defs/text',
    },
    about: {
      description:
        'What the protocol does and does not do, in a few sentences; acknowledgements stand here too.',
      examples: ['Reads one adult pressure as output and tone.'],
      $ref: '#/$defs/text',
    },
    based_on: {
      description:
        'The protocol that this one adapts. Everything of it holds here too, but for what is changed or withdrawn here; what stands in this file is added to it.',
      examples: [
        {
          protocol: 'pressure_reading',
          edition: 1,
          limits: { mean_floor: { value: 70, because: "The ward's patients live at higher pressures." } },
        },
      ],
      $ref: '#/$defs/based_on',
    },
    ladder: {
      description:
        "The escalation ladder whose levels the rules call for. A protocol that is based on another has that one's ladder.",
      examples: ['alder_ladder'],
      $ref: '#/$defs/name',
    },
    applies_when: {
      description:
        'For whom the protocol is. Outside it no level is given. While this is unsure, nothing is settled and it is asked first. Of a protocol that is based on another, both must hold.',
      examples: [{ age: { at_least: '16 y' }, pregnancy: { is: 'not_pregnant' } }],
      $ref: '#/$defs/condition',
    },
    otherwise: {
      description: 'What to use for a patient for whom this protocol is not.',
      examples: ["For a child use the children's chart."],
      $ref: '#/$defs/text',
    },
    review_by: {
      description: 'The day by which the council looks at the protocol again: year-month-day.',
      examples: ['2027-09-30'],
      type: 'string',
      pattern: '^[0-9]{4}-[0-9]{2}-[0-9]{2}$',
    },
    owners: {
      description: 'Who answers for the protocol.',
      examples: [['Alder Bay practice council']],
      type: 'array',
      items: { $ref: '#/$defs/text' },
      minItems: 1,
      maxItems: 20,
    },
    sources: {
      description: 'Where the rules come from: published work, or "Common practice, no published source".',
      examples: [{ council: { cite: 'Common practice, agreed by the council; no published source' } }],
      type: 'object',
      propertyNames: { $ref: '#/$defs/name' },
      additionalProperties: { $ref: 'dictionary.schema.json#/$defs/source' },
    },
    observations: {
      description: 'What the protocol reads. Only a protocol that is based on another can do without.',
      examples: [{ needs: ['systolic', 'diastolic'], helps: ['vasodilator_last_6_h'] }],
      $ref: '#/$defs/observations',
    },
    standing: {
      description: 'Standing facts that the protocol reads: they hold until they are changed.',
      examples: [{ oxygen_scale: { set_by: 'prescriber', if_not_stated: 'scale_1' } }],
      type: 'object',
      propertyNames: { $ref: '#/$defs/name' },
      additionalProperties: { $ref: '#/$defs/standing_fact' },
    },
    limits: {
      description:
        'Named numbers that rules compare with. A ward, or a prescriber for one patient, may change them inside their bounds.',
      examples: [{ mean_floor: { value: 65, unit: 'mmHg', between: [55, 85], set_by: 'prescriber' } }],
      type: 'object',
      propertyNames: { $ref: '#/$defs/name' },
      additionalProperties: { $ref: '#/$defs/limit' },
    },
    faults: {
      description:
        'Faults of technique: what makes a reading unsure, in which direction and how far. A fault never lowers a level.',
      examples: [
        [
          {
            fault: 'arm_hangs',
            when: { technique_faults: { is: 'arm_below_heart' } },
            reads_high: { systolic: 10, diastolic: 10 },
            says: 'An arm below the heart makes the pressure read too high.',
            source: ['technique'],
          },
        ],
      ],
      type: 'array',
      items: { $ref: '#/$defs/fault' },
      maxItems: 200,
    },
    measures: {
      description: 'Numbers that are worked out from the observations.',
      examples: [{ pulse_pressure: { formula: 'systolic - diastolic', unit: 'mmHg' } }],
      type: 'object',
      propertyNames: { $ref: '#/$defs/name' },
      additionalProperties: { $ref: '#/$defs/measure' },
    },
    rules: {
      description:
        'The rules. Their order means nothing. Only a protocol that is based on another can do without.',
      examples: [
        [
          {
            rule: 'low_pressure',
            when: { systolic: { at_most: 90 } },
            level: 'call_doctor',
            says: 'The pressure is low.',
            source: ['council'],
          },
        ],
      ],
      type: 'array',
      items: { $ref: '#/$defs/rule' },
      maxItems: 10000,
    },
    exactly_one_of: {
      description:
        'Named partitions: for every possible set exactly one of the conditions holds. A hole or an overlap is a problem.',
      examples: [{ systolic_bands: [{ systolic: { at_most: 90 } }, { systolic: { above: 90 } }] }],
      type: 'object',
      propertyNames: { $ref: '#/$defs/name' },
      additionalProperties: { $ref: '#/$defs/conditions' },
    },
    hazards: {
      description:
        'The hazards that the safety requirements control: what can go wrong for a patient, by name.',
      examples: [
        {
          unseen_shock: {
            harm: 'A patient in shock waits, because no single number shouts.',
            severity: 'life_threatening',
            owner: 'Alder Bay practice council',
          },
        },
      ],
      type: 'object',
      propertyNames: { $ref: '#/$defs/name' },
      additionalProperties: { $ref: '#/$defs/hazard' },
    },
    must_always: {
      description:
        'Safety requirements: what must hold for every possible set, not only for the cases. vitalwright prove answers each; an edition is sealed only when all hold.',
      examples: [
        [
          {
            requirement: 'very_low_is_never_quiet',
            where: { systolic: { at_most: 90 } },
            level_at_least: 'call_doctor',
            controls: ['unseen_shock'],
          },
        ],
      ],
      type: 'array',
      items: { $ref: '#/$defs/requirement' },
      maxItems: 200,
    },
  },
  required: ['protocol', 'edition', 'title', 'ladder'],
  additionalProperties: false,
  $defs: {
    name: { $ref: 'dictionary.schema.json#/$defs/name' },
    text: { $ref: 'dictionary.schema.json#/$defs/text' },
    quantity: { $ref: 'dictionary.schema.json#/$defs/quantity' },
    duration: { $ref: 'dictionary.schema.json#/$defs/duration' },
    yes: { $ref: 'dictionary.schema.json#/$defs/yes' },
    names: {
      title: 'Names',
      description: 'A list of names.',
      examples: [['systolic', 'diastolic']],
      type: 'array',
      items: { $ref: '#/$defs/name' },
      maxItems: 200,
    },
    texts: {
      title: 'Texts',
      description: 'A list of sentences.',
      examples: [['Is there a source of infection?']],
      type: 'array',
      items: { $ref: '#/$defs/text' },
      minItems: 1,
      maxItems: 20,
    },
    observations: {
      title: 'ProtocolObservations',
      description: 'What the protocol reads: what it needs, and what helps.',
      examples: [{ needs: ['systolic'], helps: ['skin'] }],
      type: 'object',
      properties: {
        needs: {
          description: 'Observations without which the outcome is not settled, most telling first.',
          examples: [['systolic', 'diastolic']],
          $ref: '#/$defs/names',
        },
        helps: {
          description: 'Observations that would tell more. Without them the outcome can still be settled.',
          examples: [['vasodilator_last_6_h']],
          $ref: '#/$defs/names',
        },
        declares: {
          description:
            "Observations that the dictionary does not have, declared here in the dictionary's own form.",
          examples: [
            {
              drain_output: {
                title: 'drain output',
                kind: 'number',
                unit: 'mL/h',
                step: 1,
                possible: [0, 3000],
              },
            },
          ],
          type: 'object',
          propertyNames: { $ref: '#/$defs/name' },
          additionalProperties: { $ref: 'dictionary.schema.json#/$defs/observation' },
        },
      },
      additionalProperties: false,
    },
    based_on: {
      title: 'BasedOn',
      description: 'Which protocol is adapted, and what is changed of it.',
      examples: [
        {
          protocol: 'pressure_reading',
          edition: 1,
          withdraws: [
            { rule: 'head_injury_watch', because: 'The ward has a protocol of its own for head injuries.' },
          ],
        },
      ],
      type: 'object',
      properties: {
        protocol: {
          description: 'The name of the protocol that is adapted.',
          examples: ['pressure_reading'],
          $ref: '#/$defs/name',
        },
        edition: {
          description:
            'The edition of it that was read and agreed. While it is another one, this protocol is refused.',
          examples: [1],
          type: 'integer',
          minimum: 1,
          maximum: 100000,
        },
        limits: {
          description: 'Its limits that have another value here, each inside the bounds that it states.',
          examples: [{ mean_floor: { value: 70, because: "The ward's patients live at higher pressures." } }],
          type: 'object',
          propertyNames: { $ref: '#/$defs/name' },
          additionalProperties: { $ref: '#/$defs/other_value' },
          minProperties: 1,
        },
        withdraws: {
          description: 'Its rules that do not hold here.',
          examples: [
            [{ rule: 'head_injury_watch', because: 'The ward has a protocol of its own for head injuries.' }],
          ],
          type: 'array',
          items: { $ref: '#/$defs/withdrawal' },
          minItems: 1,
          maxItems: 1000,
        },
      },
      required: ['protocol', 'edition'],
      additionalProperties: false,
    },
    other_value: {
      title: 'OtherValue',
      description: 'Another value of a limit, and why.',
      examples: [{ value: 70, because: "The ward's patients live at higher pressures." }],
      type: 'object',
      properties: {
        value: {
          description: 'The number that holds here, in the unit of the limit.',
          examples: [70],
          $ref: '#/$defs/quantity',
        },
        because: {
          description: 'Why it is another one here.',
          examples: ["The ward's patients live at higher pressures."],
          $ref: '#/$defs/text',
        },
        source: {
          description:
            'Where the number comes from: names from the sources of either protocol. Without it the limit keeps its sources.',
          examples: [['council']],
          $ref: '#/$defs/names',
        },
      },
      required: ['value', 'because'],
      additionalProperties: false,
    },
    withdrawal: {
      title: 'Withdrawal',
      description: 'A rule that does not hold here, and why.',
      examples: [
        { rule: 'head_injury_watch', because: 'The ward has a protocol of its own for head injuries.' },
      ],
      type: 'object',
      properties: {
        rule: {
          description: "The rule's name. No rule that stays may name it.",
          examples: ['head_injury_watch'],
          $ref: '#/$defs/name',
        },
        because: {
          description: 'Why it does not hold here.',
          examples: ['The ward has a protocol of its own for head injuries.'],
          $ref: '#/$defs/text',
        },
      },
      required: ['rule', 'because'],
      additionalProperties: false,
    },
    standing_fact: {
      title: 'StandingFact',
      description: 'A standing fact: who may state it, and what it counts as while nobody has.',
      examples: [{ set_by: 'prescriber', if_not_stated: 'scale_1' }],
      type: 'object',
      properties: {
        set_by: { description: 'Who may state it.', examples: ['prescriber'], $ref: '#/$defs/text' },
        if_not_stated: {
          description:
            'What it counts as while nobody has stated it. Without this an unstated fact is missing.',
          examples: ['scale_1', 120, false],
          type: ['number', 'string', 'boolean'],
        },
      },
      additionalProperties: false,
    },
    limit: {
      title: 'Limit',
      description: 'A named number, and the bounds inside which it may be changed.',
      examples: [{ value: 65, unit: 'mmHg', between: [55, 85], set_by: 'prescriber' }],
      type: 'object',
      properties: {
        value: {
          description: 'The number that holds while nobody has changed it.',
          examples: [65],
          $ref: '#/$defs/quantity',
        },
        unit: {
          description: "Its unit, in the trade's words.",
          examples: ['mmHg'],
          type: 'string',
          maxLength: 20,
        },
        between: {
          description: 'The lowest and the highest number that it may be changed to, both included.',
          examples: [[55, 85]],
          type: 'array',
          items: { $ref: '#/$defs/quantity' },
          minItems: 2,
          maxItems: 2,
        },
        set_by: {
          description: 'Who may change it for one patient.',
          examples: ['prescriber'],
          $ref: '#/$defs/text',
        },
        title: {
          description: 'What it is, in plain words.',
          examples: ['lowest acceptable mean pressure'],
          $ref: '#/$defs/text',
        },
        source: {
          description: 'Where the number comes from.',
          examples: [['council']],
          $ref: '#/$defs/names',
        },
      },
      required: ['value'],
      additionalProperties: false,
    },
    condition: {
      title: 'Condition',
      description:
        'When something holds: names with comparisons. Several keys mean and. all, any, none and at_least_of hold further conditions.',
      examples: [
        { systolic: { below: 90 } },
        { any: [{ heart_rate: { above: 95 } }, { respiratory_rate: { at_least: 22 } }] },
      ],
      type: 'object',
      properties: {
        all: {
          description: 'Holds when every one of these holds.',
          examples: [[{ systolic: { below: 100 } }, { heart_rate: { above: 100 } }]],
          $ref: '#/$defs/conditions',
        },
        any: {
          description: 'Holds when at least one of these holds.',
          examples: [[{ heart_rate: { above: 95 } }, { respiratory_rate: { at_least: 22 } }]],
          $ref: '#/$defs/conditions',
        },
        none: {
          description: 'Holds when none of these holds.',
          examples: [[{ paced: { is: 'yes' } }]],
          $ref: '#/$defs/conditions',
        },
        at_least_of: {
          description: 'Holds when at least so many of these hold.',
          examples: [{ count: 2, of: [{ heart_rate: { above: 90 } }, { respiratory_rate: { above: 20 } }] }],
          $ref: '#/$defs/at_least_of',
        },
        rule: {
          description: 'Holds when the named rule is met.',
          examples: ['wide_for_this_systolic'],
          $ref: '#/$defs/name',
        },
      },
      additionalProperties: { $ref: '#/$defs/comparison' },
      minProperties: 1,
      maxProperties: 100,
    },
    conditions: {
      title: 'Conditions',
      description: 'A list of conditions.',
      examples: [[{ systolic: { below: 100 } }]],
      type: 'array',
      items: { $ref: '#/$defs/condition' },
      minItems: 1,
      maxItems: 200,
    },
    at_least_of: {
      title: 'AtLeastOf',
      description: 'How many of the conditions must hold.',
      examples: [{ count: 2, of: [{ heart_rate: { above: 90 } }, { respiratory_rate: { above: 20 } }] }],
      type: 'object',
      properties: {
        count: {
          description: 'How many of them, at least.',
          examples: [2],
          type: 'integer',
          minimum: 1,
          maximum: 200,
        },
        of: {
          description: 'The conditions that are counted.',
          examples: [[{ heart_rate: { above: 90 } }, { respiratory_rate: { above: 20 } }]],
          $ref: '#/$defs/conditions',
        },
      },
      required: ['count', 'of'],
      additionalProperties: false,
    },
    comparison: {
      title: 'Comparison',
      description:
        'What is asked of an observation or a measure. Several keys mean and. A number may carry its unit; the name of a limit, a measure or an observation may stand in its place.',
      examples: [{ at_least: 22 }, { below: 'mean_floor' }, { is: 'new_confusion' }],
      type: 'object',
      properties: {
        below: {
          description: 'Lower than this; this value itself does not count.',
          examples: [90],
          $ref: '#/$defs/quantity',
        },
        above: {
          description: 'Higher than this; this value itself does not count.',
          examples: [95],
          $ref: '#/$defs/quantity',
        },
        at_most: { description: 'This or lower.', examples: [90], $ref: '#/$defs/quantity' },
        at_least: { description: 'This or higher.', examples: [22], $ref: '#/$defs/quantity' },
        between: {
          description: 'From the first to the second, both included.',
          examples: [[36, 38]],
          type: 'array',
          items: { $ref: '#/$defs/quantity' },
          minItems: 2,
          maxItems: 2,
        },
        is: {
          description: 'Exactly this choice; or yes, or no.',
          examples: ['new_confusion', 'yes'],
          type: ['string', 'boolean'],
          maxLength: 60,
        },
        one_of: {
          description:
            'One of these choices. Of an observation that can hold several: at least one of these is among them.',
          examples: [['voice', 'pain', 'unresponsive']],
          $ref: '#/$defs/names',
        },
        known: {
          description: 'yes: a value was given. no: none was.',
          examples: ['yes'],
          $ref: '#/$defs/yes',
        },
        unobtainable: {
          description: 'yes: it was tried and could not be obtained.',
          examples: ['yes'],
          $ref: '#/$defs/yes',
        },
        accepted: {
          description: 'Why the council accepts what the check warns of here.',
          examples: ['The pacing clinic asked for this.'],
          $ref: '#/$defs/text',
        },
      },
      minProperties: 1,
      additionalProperties: false,
    },
    measure: {
      title: 'Measure',
      description:
        'A number that is worked out. It has exactly one of formula, curve, score, choose, first_known, highest, lowest, average, earliest, latest, change, count, minutes_since, held.',
      examples: [{ formula: 'systolic - diastolic', unit: 'mmHg' }],
      type: 'object',
      properties: {
        title: {
          description: 'What it is, in plain words, as it stands in a sentence.',
          examples: ['estimated mean'],
          $ref: '#/$defs/text',
        },
        meaning: {
          description: 'What the number tells.',
          examples: ['About what the organs are perfused with.'],
          $ref: '#/$defs/text',
        },
        unit: {
          description: "Its unit, in the trade's words.",
          examples: ['mmHg'],
          type: 'string',
          maxLength: 20,
        },
        source: { description: 'Where it comes from.', examples: [['council']], $ref: '#/$defs/names' },
        formula: {
          description:
            'Arithmetic with + - * / and ( ) over observations, limits and measures, on one line. A plain number that is added takes the unit of what it is added to.',
          examples: ['(systolic + 2 * diastolic) / 3'],
          type: ['string', 'number'],
          maxLength: 500,
        },
        curve: {
          description: 'Straight lines through points, for what a formula does not say.',
          examples: [
            {
              of: 'systolic',
              points: [
                [80, 53],
                [100, 66],
                [125, 82],
              ],
              beyond: 'missing',
            },
          ],
          $ref: '#/$defs/curve',
        },
        score: {
          description: 'Points for each observation or measure, added up.',
          examples: [{ respiratory_rate: [{ at_most: 8, points: 3 }, { points: 0 }] }],
          type: 'object',
          propertyNames: { $ref: '#/$defs/name' },
          additionalProperties: { $ref: '#/$defs/score_part' },
          minProperties: 1,
          maxProperties: 100,
        },
        choose: {
          description: 'The first entry whose condition holds; the last entry has no condition.',
          examples: [
            [{ when: { oxygen_scale: { is: 'scale_2' } }, use: 'points_scale_2' }, { use: 'points_scale_1' }],
          ],
          type: 'array',
          items: { $ref: '#/$defs/choose_part' },
          minItems: 2,
          maxItems: 100,
        },
        first_known: {
          description: 'The first of these that is known.',
          examples: [['mean_pressure', 'mean_estimate']],
          $ref: '#/$defs/names',
        },
        highest: {
          description: 'Look back: the highest value in the window.',
          examples: ['systolic'],
          $ref: '#/$defs/name',
        },
        lowest: {
          description: 'Look back: the lowest value in the window.',
          examples: ['systolic'],
          $ref: '#/$defs/name',
        },
        average: {
          description: 'Look back: the average of the values in the window.',
          examples: ['systolic'],
          $ref: '#/$defs/name',
        },
        earliest: {
          description: 'Look back: the earliest value in the window.',
          examples: ['systolic'],
          $ref: '#/$defs/name',
        },
        latest: {
          description: 'Look back: the latest value in the window.',
          examples: ['systolic'],
          $ref: '#/$defs/name',
        },
        change: {
          description: 'Look back: the latest value less the earliest in the window. It needs two values.',
          examples: ['systolic'],
          $ref: '#/$defs/name',
        },
        count: {
          description:
            'Look back: how many sets in the window have a value of this; of a yes-or-no observation, how many say yes.',
          examples: ['systolic'],
          $ref: '#/$defs/name',
        },
        minutes_since: {
          description:
            'Look back: minutes since there was last a value of this; of a yes-or-no observation, since it was last yes. What never happened in the window is never: beyond any number.',
          examples: ['vasodilator_last_6_h'],
          $ref: '#/$defs/name',
        },
        held: {
          description:
            'Look back: for how many minutes this has held without a break, up to the present set.',
          examples: [{ systolic: { below: 90 } }],
          $ref: '#/$defs/condition',
        },
        over: {
          description: 'How far the look back reaches. A set exactly as old as this is no longer in it.',
          examples: ['4 h'],
          $ref: '#/$defs/duration',
        },
        where: {
          description: 'Only the sets for which this holds count.',
          examples: [{ limb: { is: 'left_arm' } }],
          $ref: '#/$defs/condition',
        },
        present_set: {
          description: 'Whether the present set counts too: included (when nothing is said) or left_out.',
          examples: ['included'],
          type: 'string',
          enum: ['included', 'left_out'],
        },
        longest_gap: {
          description: 'Of held: a longer time between two sets breaks the run.',
          examples: ['30 min'],
          $ref: '#/$defs/duration',
        },
        not_reliable_when: {
          description:
            'What makes the measure blind. Rules that read it and are not met then reassure nobody.',
          examples: [{ paced: { is: 'yes' } }],
          $ref: '#/$defs/condition',
        },
      },
      additionalProperties: false,
    },
    curve: {
      title: 'Curve',
      description: 'Straight lines through points.',
      examples: [
        {
          of: 'systolic',
          points: [
            [80, 53],
            [100, 66],
            [125, 82],
          ],
          beyond: 'missing',
        },
      ],
      type: 'object',
      properties: {
        of: {
          description: 'The observation or measure that the curve is read at.',
          examples: ['systolic'],
          $ref: '#/$defs/name',
        },
        points: {
          description: 'The points, each as [at, value], rising.',
          examples: [
            [
              [80, 53],
              [100, 66],
              [125, 82],
            ],
          ],
          type: 'array',
          items: {
            description: 'One point: where, and the value there.',
            examples: [[100, 66]],
            type: 'array',
            items: { $ref: '#/$defs/quantity' },
            minItems: 2,
            maxItems: 2,
          },
          minItems: 2,
          maxItems: 100,
        },
        beyond: {
          description: 'Outside the points: missing (no value) or hold (the value of the nearest point).',
          examples: ['missing'],
          type: 'string',
          enum: ['missing', 'hold'],
        },
      },
      required: ['of', 'points'],
      additionalProperties: false,
    },
    score_part: {
      title: 'ScorePart',
      description:
        'Points of one part: a list of bands for a number, or the points for each choice, or for yes and no.',
      examples: [[{ at_most: 8, points: 3 }, { points: 0 }], { yes: 2, no: 0 }],
      type: ['array', 'object'],
      items: { $ref: '#/$defs/band' },
      additionalProperties: { type: 'integer', minimum: -1000, maximum: 1000 },
      minItems: 1,
      maxItems: 100,
    },
    band: {
      title: 'Band',
      description: 'One band of a score: up to where it reaches, and its points. The last band is open.',
      examples: [{ at_most: 8, points: 3 }],
      type: 'object',
      properties: {
        at_most: {
          description: 'The band reaches up to this value, which belongs to it.',
          examples: [8],
          $ref: '#/$defs/quantity',
        },
        below: {
          description: 'The band reaches up to this value, which belongs to the next.',
          examples: [9],
          $ref: '#/$defs/quantity',
        },
        points: { description: 'The points.', examples: [3], type: 'integer', minimum: -1000, maximum: 1000 },
      },
      required: ['points'],
      additionalProperties: false,
    },
    choose_part: {
      title: 'ChoosePart',
      description: 'A measure, an observation, a limit or a number to use, and when.',
      examples: [{ when: { oxygen_scale: { is: 'scale_2' } }, use: 'points_scale_2' }],
      type: 'object',
      properties: {
        when: {
          description: 'When it is used.',
          examples: [{ oxygen_scale: { is: 'scale_2' } }],
          $ref: '#/$defs/condition',
        },
        use: { description: 'What is used.', examples: ['points_scale_2', 0], $ref: '#/$defs/quantity' },
      },
      required: ['use'],
      additionalProperties: false,
    },
    fault: {
      title: 'Fault',
      description:
        'A fault of technique. While it is known to be there, the true value may lie on one side of what was read; every rule is then asked over that range, and the level that the numbers call for stands.',
      examples: [
        {
          fault: 'arm_hangs',
          when: { technique_faults: { is: 'arm_below_heart' } },
          reads_high: { systolic: 10, diastolic: 10 },
          says: 'An arm below the heart makes the pressure read too high.',
          source: ['technique'],
        },
      ],
      type: 'object',
      properties: {
        fault: { description: "The fault's name.", examples: ['arm_hangs'], $ref: '#/$defs/name' },
        title: {
          description: 'The fault in plain words.',
          examples: ['Arm below the heart'],
          $ref: '#/$defs/text',
        },
        when: {
          description:
            'When the fault is there, asked of the set itself: observations compared with numbers or choices. What is not known is no fault.',
          examples: [{ technique_faults: { is: 'arm_below_heart' } }],
          $ref: '#/$defs/condition',
        },
        reads_high: {
          description: 'How far it may read too high, for each observation: the truth may be as much lower.',
          examples: [{ systolic: 10, diastolic: '10 mmHg' }],
          $ref: '#/$defs/amounts',
        },
        reads_low: {
          description: 'How far it may read too low, for each observation: the truth may be as much higher.',
          examples: [{ systolic: 30 }],
          $ref: '#/$defs/amounts',
        },
        says: {
          description: 'What the fault does to the reading, in a sentence.',
          examples: ['An arm below the heart makes the pressure read too high.'],
          $ref: '#/$defs/text',
        },
        do: {
          description: 'What to do so that the next reading is free of it.',
          examples: [
            [
              {
                id: 'arm_at_heart',
                text: 'Support the arm at heart level and take the pressure again',
                under: 'own authority',
              },
            ],
          ],
          type: 'array',
          items: { $ref: '#/$defs/action' },
          minItems: 1,
          maxItems: 20,
        },
        source: {
          description: 'Where the direction and the size come from; names from sources.',
          examples: [['technique']],
          $ref: '#/$defs/names',
        },
      },
      required: ['fault', 'when', 'says', 'source'],
      additionalProperties: false,
    },
    amounts: {
      title: 'Amounts',
      description: 'An amount for each observation, in its unit.',
      examples: [{ systolic: 10, diastolic: 10 }],
      type: 'object',
      propertyNames: { $ref: '#/$defs/name' },
      additionalProperties: { $ref: '#/$defs/quantity' },
      minProperties: 1,
      maxProperties: 20,
    },
    rule: {
      title: 'Rule',
      description:
        'A rule: when something holds, what it suggests, why, what to ask, what to do, and the level that it calls for.',
      examples: [
        {
          rule: 'low_pressure',
          when: { systolic: { at_most: 90 } },
          level: 'call_doctor',
          says: 'The pressure is low.',
          source: ['council'],
        },
      ],
      type: 'object',
      properties: {
        rule: { description: "The rule's name.", examples: ['wide_for_this_systolic'], $ref: '#/$defs/name' },
        title: {
          description: "The rule's name in plain words.",
          examples: ['Wide for this systolic'],
          $ref: '#/$defs/text',
        },
        when: {
          description: 'When the rule is met.',
          examples: [{ diastolic_shortfall: { at_least: 14 } }],
          $ref: '#/$defs/condition',
        },
        unless: {
          description: 'An exception that takes the rule back. It counts only when it is known.',
          examples: [{ when: { vasodilator_last_6_h: { is: 'yes' } }, says: 'A medicine explains it.' }],
          $ref: '#/$defs/exception',
        },
        explained_by: {
          description:
            'An explanation: the rule stays met, the sentence is added, and the level may be lowered to a stated one, never to the lowest.',
          examples: [
            {
              when: { vasodilator_last_6_h: { is: 'yes' } },
              says: 'A medicine that lowers pressure can do this; it does not rule out infection.',
            },
          ],
          $ref: '#/$defs/explanation',
        },
        not_reliable_when: {
          description:
            'What makes the rule blind. When it is then not met, that reassures nobody, and the outcome says so.',
          examples: [{ paced: { is: 'yes' } }],
          $ref: '#/$defs/condition',
        },
        level: {
          description: 'The level of the ladder that the rule calls for.',
          examples: ['call_doctor'],
          $ref: '#/$defs/name',
        },
        says: {
          description: 'What it suggests, in a sentence: "suggests", never "is".',
          examples: ['It suggests that the vessels are dilated.'],
          $ref: '#/$defs/text',
        },
        because: {
          description: 'Why: the reasoning that a learner should see.',
          examples: ['Between beats only the tone of the vessels holds the pressure up.'],
          $ref: '#/$defs/text',
        },
        ask: {
          description: 'What to ask or look for.',
          examples: [['Is there a source of infection?']],
          $ref: '#/$defs/texts',
        },
        do: {
          description: 'What to do.',
          examples: [[{ id: 'full_set_now', text: 'Take a full set now', under: 'own authority' }]],
          type: 'array',
          items: { $ref: '#/$defs/action' },
          minItems: 1,
          maxItems: 20,
        },
        source: {
          description: 'Where the rule comes from: names from sources.',
          examples: [['council']],
          $ref: '#/$defs/names',
        },
        accepted: {
          description: 'Why the council accepts what the check warns of here.',
          examples: ['Agreed on 3 March: the senior nurse reviews each such patient.'],
          $ref: '#/$defs/text',
        },
      },
      required: ['rule', 'when'],
      additionalProperties: false,
    },
    requirement: {
      title: 'Requirement',
      description: 'A safety requirement: what must hold for every possible set. It has exactly one kind.',
      examples: [
        {
          requirement: 'very_low_is_never_quiet',
          where: { systolic: { at_most: 90 } },
          level_at_least: 'call_doctor',
          controls: ['unseen_shock'],
        },
      ],
      type: 'object',
      properties: {
        requirement: {
          description: "The requirement's name.",
          examples: ['very_low_is_never_quiet'],
          $ref: 'dictionary.schema.json#/$defs/name',
        },
        title: {
          description: 'The requirement in plain words.',
          examples: ['A very low systolic always calls the doctor'],
          $ref: 'dictionary.schema.json#/$defs/text',
        },
        controls: {
          description: 'The hazards that it controls: names from hazards.',
          examples: [['unseen_shock']],
          type: 'array',
          items: { $ref: 'dictionary.schema.json#/$defs/name' },
          minItems: 1,
          maxItems: 20,
        },
        because: {
          description: 'Why it must hold.',
          examples: ['Below 90 little is left for the kidneys and the brain.'],
          $ref: 'dictionary.schema.json#/$defs/text',
        },
        source: {
          description: 'Where it comes from: names from sources.',
          examples: [['council']],
          type: 'array',
          items: { $ref: 'dictionary.schema.json#/$defs/name' },
          maxItems: 200,
        },
        where: {
          description:
            'For which sets it must hold; without it for every one of the patients whom this is for. It may name whatever a rule may name.',
          examples: [{ systolic: { at_most: 90 } }],
          $ref: 'protocol.schema.json#/$defs/condition',
        },
        limits: {
          description:
            'as_written: it must hold at the limits as they are written. Without this it must hold for every value of each limit inside its bounds.',
          examples: ['as_written'],
          type: 'string',
          enum: ['as_written'],
        },
        level_at_least: {
          description: 'Kind: the level of the set is this one or a higher one.',
          examples: ['call_doctor'],
          $ref: 'dictionary.schema.json#/$defs/name',
        },
        level_at_most: {
          description: 'Kind: the level of the set is this one or a lower one, and could be no higher.',
          examples: ['look_again'],
          $ref: 'dictionary.schema.json#/$defs/name',
        },
        rule_met: {
          description: 'Kind: this rule is met.',
          examples: ['mean_too_low'],
          $ref: 'dictionary.schema.json#/$defs/name',
        },
        never_together: {
          description: 'Kind: these rules are never all met in one set.',
          examples: [['low_and_narrow', 'low_and_wide']],
          type: 'array',
          items: { $ref: 'dictionary.schema.json#/$defs/name' },
          minItems: 2,
          maxItems: 20,
        },
        getting_worse_never_lowers: {
          description:
            'Kind: of two sets that differ in one observation alone, the one with the worse value never has the lower level.',
          examples: [{ observation: 'respiratory_rate', going: 'up', between: [12, 60] }],
          $ref: 'protocol.schema.json#/$defs/getting_worse',
        },
        nothing_hides: {
          description:
            'Kind: what is left blank never gives a calmer headline than an answer would: what the level could be is never below the level with the answer.',
          examples: [{ blank: ['systolic', 'diastolic'] }, {}],
          $ref: 'protocol.schema.json#/$defs/nothing_hides',
        },
        no_level: {
          description: 'Kind: these sets never get a level, because this is not for such patients.',
          examples: ['yes'],
          type: ['string', 'boolean'],
          enum: ['yes', true],
        },
        fault_never_lowers: {
          description:
            'Kind: a fault of technique never lowers the level: with any fault it is no lower than without one.',
          examples: ['yes'],
          type: ['string', 'boolean'],
          enum: ['yes', true],
        },
        always_some_advice: {
          description: 'Kind: some rule that says, asks or does something is met.',
          examples: ['yes'],
          type: ['string', 'boolean'],
          enum: ['yes', true],
        },
      },
      required: ['requirement', 'controls'],
      additionalProperties: false,
    },
    hazard: {
      title: 'Hazard',
      description: 'What can go wrong for a patient, how bad that is, and who answers for it.',
      examples: [
        {
          harm: 'A patient in shock waits, because no single number shouts.',
          severity: 'life_threatening',
          owner: 'Alder Bay practice council',
        },
      ],
      type: 'object',
      properties: {
        harm: {
          description: 'What would happen to the patient.',
          examples: ['A patient in shock waits, because no single number shouts.'],
          $ref: 'dictionary.schema.json#/$defs/text',
        },
        severity: {
          description: 'How bad that is at its worst.',
          examples: ['life_threatening'],
          type: 'string',
          enum: ['slight', 'serious', 'life_threatening'],
        },
        owner: {
          description: 'Who answers for it.',
          examples: ['Alder Bay practice council'],
          $ref: 'dictionary.schema.json#/$defs/text',
        },
      },
      required: ['harm', 'severity', 'owner'],
      additionalProperties: false,
    },
    getting_worse: {
      title: 'GettingWorse',
      description:
        'The one observation in which two sets differ, and which way is worse: going with a number, through with choices.',
      examples: [
        { observation: 'respiratory_rate', going: 'up', between: [12, 60] },
        { observation: 'consciousness', through: ['alert', 'voice', 'pain', 'unresponsive'] },
      ],
      type: 'object',
      properties: {
        observation: {
          description: 'The observation that gets worse; everything else stays unchanged.',
          examples: ['respiratory_rate'],
          $ref: 'dictionary.schema.json#/$defs/name',
        },
        going: {
          description: 'Which way is worse, for a number.',
          examples: ['up', 'down'],
          type: 'string',
          enum: ['up', 'down'],
        },
        between: {
          description:
            'Inside which range, for a number: both ends included. Without it, over all that is possible.',
          examples: [[12, 60]],
          type: 'array',
          items: { $ref: 'dictionary.schema.json#/$defs/quantity' },
          minItems: 2,
          maxItems: 2,
        },
        through: {
          description: 'The choices, each worse than the one before; for yes or no as well.',
          examples: [
            ['alert', 'voice', 'pain', 'unresponsive'],
            ['no', 'yes'],
          ],
          type: 'array',
          items: { type: ['string', 'boolean'] },
          minItems: 2,
          maxItems: 20,
        },
      },
      required: ['observation'],
      additionalProperties: false,
    },
    nothing_hides: {
      title: 'NothingHides',
      description:
        'Which observations may be left blank. Without blank: all that are needed, what tells for whom this is, and what only an exception reads.',
      examples: [{ blank: ['systolic', 'diastolic'] }, { except: ['infection_suspected'] }],
      type: 'object',
      properties: {
        blank: {
          description: 'The observations that may be left blank, alone or together.',
          examples: [['systolic', 'diastolic']],
          type: 'array',
          items: { $ref: 'dictionary.schema.json#/$defs/name' },
          minItems: 1,
          maxItems: 200,
        },
        except: {
          description:
            'Of these, the ones that are not left blank, because a rule asks whether they are known, or a measure takes the first that is known. The answer shows the worst set of each.',
          examples: [['infection_suspected']],
          type: 'array',
          items: { $ref: 'dictionary.schema.json#/$defs/name' },
          minItems: 1,
          maxItems: 200,
        },
      },
      additionalProperties: false,
    },
    exception: {
      title: 'Exception',
      description: 'What takes a rule back, with the reason.',
      examples: [{ when: { paced: { is: 'yes' } }, says: 'A paced rate does not answer.' }],
      type: 'object',
      properties: {
        when: {
          description: 'When the rule is taken back.',
          examples: [{ paced: { is: 'yes' } }],
          $ref: '#/$defs/condition',
        },
        says: {
          description: 'Why the rule is taken back.',
          examples: ['A paced rate does not answer.'],
          $ref: '#/$defs/text',
        },
        accepted: {
          description:
            'Why the council accepts that the exception can bring the outcome down to the lowest level.',
          examples: ['Agreed on 3 March: the pacing clinic reviews each such patient.'],
          $ref: '#/$defs/text',
        },
      },
      required: ['when'],
      additionalProperties: false,
    },
    explanation: {
      title: 'Explanation',
      description: 'What explains a rule that stays met.',
      examples: [
        {
          when: { vasodilator_last_6_h: { is: 'yes' } },
          says: 'A medicine that lowers pressure can do this.',
        },
      ],
      type: 'object',
      properties: {
        when: {
          description: 'When the explanation holds.',
          examples: [{ vasodilator_last_6_h: { is: 'yes' } }],
          $ref: '#/$defs/condition',
        },
        says: {
          description: 'The sentence that is added.',
          examples: ['A medicine that lowers pressure can do this; it does not rule out infection.'],
          $ref: '#/$defs/text',
        },
        level: {
          description:
            "The level that the rule then calls for; never the lowest, never higher than the rule's own.",
          examples: ['tell_nurse_in_charge'],
          $ref: '#/$defs/name',
        },
      },
      required: ['when', 'says'],
      additionalProperties: false,
    },
    action: {
      title: 'Action',
      description: 'Something to do.',
      examples: [{ id: 'full_set_now', text: 'Take a full set now', under: 'own authority' }],
      type: 'object',
      properties: {
        id: {
          description: 'The name of the action; the same action named twice is advised once.',
          examples: ['full_set_now'],
          $ref: '#/$defs/name',
        },
        text: {
          description: 'What to do, in plain words.',
          examples: ['Take a full set now'],
          $ref: '#/$defs/text',
        },
        under: {
          description: 'On whose authority.',
          examples: ['own authority', "prescriber's order"],
          $ref: '#/$defs/text',
        },
        excludes: {
          description:
            'Actions of this protocol that must never be advised together with this one. The check looks for a set that would advise both.',
          examples: [['head_up']],
          $ref: '#/$defs/names',
        },
      },
      required: ['id', 'text'],
      additionalProperties: false,
    },
  },
};

export const record_entry: Schema = {
  $schema: 'https://json-schema.org/draft/2020-12/schema',
  $id: 'record_entry.schema.json',
  title: 'RecordEntry',
  description:
    'One entry of the record of a policy: who may approve, who approved, what is in force from when, what was withdrawn. A file of its own, never edited; each names the one before it. It has one of approvers, approved, in_force, withdrawn.',
  examples: [
    {
      record: 'alder_wing',
      entry: 1,
      before: null,
      at: '2026-03-02T12:05:00Z',
      approved: {
        edition: 1,
        digest: 'sha256:0000000000000000000000000000000000000000000000000000000000000000',
        seal: 'sha256:0000000000000000000000000000000000000000000000000000000000000000',
        by: 'Dr Ash',
        role: 'Doctor',
        minute: 'Minute 2026-14',
        on: '2026-03-02',
      },
      digest: 'sha256:0000000000000000000000000000000000000000000000000000000000000000',
    },
  ],
  type: 'object',
  properties: {
    record: {
      description: 'The protocol or ward policy that the record is of.',
      examples: ['alder_wing'],
      $ref: 'dictionary.schema.json#/$defs/name',
    },
    entry: {
      description: 'The number of the entry, from 1.',
      examples: [1],
      type: 'integer',
      minimum: 1,
      maximum: 99999,
    },
    before: {
      description: 'The digest of the entry before; null in the first.',
      examples: [null, 'sha256:0000000000000000000000000000000000000000000000000000000000000000'],
      type: ['string', 'null'],
      pattern: '^sha256:[0-9a-f]{64}$',
    },
    at: { description: 'When it was entered.', examples: ['2026-03-02T12:05:00Z'], $ref: '#/$defs/moment' },
    approvers: {
      description: 'Who may approve from now on.',
      examples: [
        {
          signing: 'no',
          needs: [{ role: 'Doctor', people: 1 }],
          people: [{ name: 'Dr Ash', roles: ['Doctor'] }],
          minute: 'Minute 2026-14',
          on: '2026-03-02',
          agreed_by: ['Dr Ash'],
        },
      ],
      $ref: '#/$defs/approvers_entry',
    },
    approved: {
      description: 'An approval.',
      examples: [
        {
          edition: 1,
          digest: 'sha256:0000000000000000000000000000000000000000000000000000000000000000',
          seal: 'sha256:0000000000000000000000000000000000000000000000000000000000000000',
          by: 'Dr Ash',
          role: 'Doctor',
          minute: 'Minute 2026-14',
          on: '2026-03-02',
        },
      ],
      $ref: '#/$defs/approved_entry',
    },
    in_force: {
      description: 'An edition is put in force.',
      examples: [
        {
          edition: 1,
          digest: 'sha256:0000000000000000000000000000000000000000000000000000000000000000',
          seal: 'sha256:0000000000000000000000000000000000000000000000000000000000000000',
          from: '2026-03-02T12:05:00Z',
          by: 'Dr Ash',
          because: 'Agreed by the council.',
        },
      ],
      $ref: '#/$defs/in_force_entry',
    },
    withdrawn: {
      description: 'What is in force is withdrawn.',
      examples: [
        {
          from: '2026-03-02T12:05:00Z',
          by: 'Dr Ash',
          because: 'A limit is misprinted.',
          instead: 'The paper policy.',
        },
      ],
      $ref: '#/$defs/withdrawn_entry',
    },
    signatures: {
      description: 'Where entries are signed: the signature of each person who makes the entry.',
      examples: [[{ by: 'Dr Ash', jws: 'e30..AA' }]],
      type: 'array',
      items: { $ref: '#/$defs/entry_signature' },
      minItems: 1,
      maxItems: 50,
    },
    digest: {
      description: 'SHA-256 over the rest of this entry.',
      examples: ['sha256:0000000000000000000000000000000000000000000000000000000000000000'],
      $ref: 'edition.schema.json#/$defs/digest',
    },
  },
  required: ['record', 'entry', 'before', 'at', 'digest'],
  additionalProperties: false,
  $defs: {
    moment: {
      description: 'A time with its offset.',
      examples: ['2026-03-02T12:05:00Z'],
      type: 'string',
      maxLength: 40,
      pattern: '^[0-9]{4}-[0-9]{2}-[0-9]{2}T',
    },
    minute: {
      description: 'Where the decision stands in the minutes.',
      examples: ['Minute 2026-14'],
      type: 'string',
      minLength: 1,
      maxLength: 200,
    },
    words: {
      description: 'In plain words.',
      examples: ['Two of its limits were misprinted.'],
      type: 'string',
      minLength: 1,
      maxLength: 1000,
    },
    approvers_entry: {
      title: 'ApproversEntry',
      description: 'Who may approve, agreed by those who could before.',
      examples: [
        {
          signing: 'no',
          needs: [{ role: 'Doctor', people: 1 }],
          people: [{ name: 'Dr Ash', roles: ['Doctor'] }],
          minute: 'Minute 2026-14',
          on: '2026-03-02',
          agreed_by: ['Dr Ash'],
        },
      ],
      type: 'object',
      properties: {
        signing: {
          description:
            'yes: every entry of the record is signed with the keys of those who make it. no: it names them.',
          examples: ['no'],
          $ref: 'dictionary.schema.json#/$defs/yes',
        },
        needs: {
          description:
            'Which roles approve an edition, and how many people of each. One person counts once. The same people agree on a change of this list.',
          examples: [[{ role: 'Doctor', people: 1 }]],
          type: 'array',
          items: { $ref: 'approvers.schema.json#/$defs/need' },
          minItems: 1,
          maxItems: 20,
        },
        people: {
          description: 'Who may approve, put in force and withdraw.',
          examples: [[{ name: 'Dr Ash', roles: ['Doctor'] }]],
          type: 'array',
          items: { $ref: 'approvers.schema.json#/$defs/approver' },
          minItems: 1,
          maxItems: 200,
        },
        minute: { description: 'The minute.', examples: ['Minute 2026-14'], $ref: '#/$defs/minute' },
        on: {
          description: 'The day of the decision.',
          examples: ['2026-03-02'],
          $ref: 'edition.schema.json#/$defs/calendar_day',
        },
        agreed_by: {
          description: 'Who agreed.',
          examples: [['Dr Ash']],
          type: 'array',
          items: { $ref: 'edition.schema.json#/$defs/person' },
          minItems: 1,
          maxItems: 50,
        },
      },
      required: ['signing', 'needs', 'people', 'minute', 'on', 'agreed_by'],
      additionalProperties: false,
    },
    approved_entry: {
      title: 'ApprovedEntry',
      description: 'One person approves one edition.',
      examples: [
        {
          edition: 1,
          digest: 'sha256:0000000000000000000000000000000000000000000000000000000000000000',
          seal: 'sha256:0000000000000000000000000000000000000000000000000000000000000000',
          by: 'Dr Ash',
          role: 'Doctor',
          minute: 'Minute 2026-14',
          on: '2026-03-02',
        },
      ],
      type: 'object',
      properties: {
        edition: {
          description: 'The number of the edition.',
          examples: [1],
          type: 'integer',
          minimum: 1,
          maximum: 9999,
        },
        digest: {
          description: 'Its digest.',
          examples: ['sha256:0000000000000000000000000000000000000000000000000000000000000000'],
          $ref: 'edition.schema.json#/$defs/digest',
        },
        seal: {
          description: 'Its seal.',
          examples: ['sha256:0000000000000000000000000000000000000000000000000000000000000000'],
          $ref: 'edition.schema.json#/$defs/digest',
        },
        by: { description: 'Who approves.', examples: ['Dr Ash'], $ref: 'edition.schema.json#/$defs/person' },
        role: {
          description: 'In which role.',
          examples: ['Doctor'],
          $ref: 'approvers.schema.json#/$defs/role',
        },
        minute: { description: 'The minute.', examples: ['Minute 2026-14'], $ref: '#/$defs/minute' },
        on: {
          description: 'The day of the approval.',
          examples: ['2026-03-02'],
          $ref: 'edition.schema.json#/$defs/calendar_day',
        },
      },
      required: ['edition', 'digest', 'seal', 'by', 'role', 'minute', 'on'],
      additionalProperties: false,
    },
    in_force_entry: {
      title: 'InForceEntry',
      description: 'An approved edition is in force from a time on, until another one is or it is withdrawn.',
      examples: [
        {
          edition: 1,
          digest: 'sha256:0000000000000000000000000000000000000000000000000000000000000000',
          seal: 'sha256:0000000000000000000000000000000000000000000000000000000000000000',
          from: '2026-03-02T12:05:00Z',
          by: 'Dr Ash',
          because: 'Agreed by the council.',
        },
      ],
      type: 'object',
      properties: {
        edition: {
          description: 'The number of the edition.',
          examples: [1],
          type: 'integer',
          minimum: 1,
          maximum: 9999,
        },
        digest: {
          description: 'Its digest.',
          examples: ['sha256:0000000000000000000000000000000000000000000000000000000000000000'],
          $ref: 'edition.schema.json#/$defs/digest',
        },
        seal: {
          description: 'Its seal.',
          examples: ['sha256:0000000000000000000000000000000000000000000000000000000000000000'],
          $ref: 'edition.schema.json#/$defs/digest',
        },
        from: {
          description: 'From when, included.',
          examples: ['2026-03-02T12:05:00Z'],
          $ref: '#/$defs/moment',
        },
        by: {
          description: 'Who puts it in force.',
          examples: ['Dr Ash'],
          $ref: 'edition.schema.json#/$defs/person',
        },
        because: { description: 'Why.', examples: ['Agreed by the council.'], $ref: '#/$defs/words' },
      },
      required: ['edition', 'digest', 'seal', 'from', 'by', 'because'],
      additionalProperties: false,
    },
    withdrawn_entry: {
      title: 'WithdrawnEntry',
      description: 'Nothing that was entered before is in force from this time on.',
      examples: [
        {
          from: '2026-03-02T12:05:00Z',
          by: 'Dr Ash',
          because: 'A limit is misprinted.',
          instead: 'The paper policy.',
        },
      ],
      type: 'object',
      properties: {
        from: {
          description: 'From when, included.',
          examples: ['2026-03-02T12:05:00Z'],
          $ref: '#/$defs/moment',
        },
        by: {
          description: 'Who withdraws.',
          examples: ['Dr Ash'],
          $ref: 'edition.schema.json#/$defs/person',
        },
        because: { description: 'Why.', examples: ['A limit is misprinted.'], $ref: '#/$defs/words' },
        instead: {
          description: 'What applies instead.',
          examples: ['The paper policy.'],
          $ref: '#/$defs/words',
        },
      },
      required: ['from', 'by', 'because', 'instead'],
      additionalProperties: false,
    },
    entry_signature: {
      title: 'EntrySignature',
      description:
        'A JSON Web Signature over the entry without its digest and signatures; the text that is signed is left out of it.',
      examples: [{ by: 'Dr Ash', jws: 'e30..AA' }],
      type: 'object',
      properties: {
        by: { description: 'Whose.', examples: ['Dr Ash'], $ref: 'edition.schema.json#/$defs/person' },
        jws: {
          description: 'Header and signature.',
          examples: ['e30..AA'],
          type: 'string',
          maxLength: 400,
          pattern: '^[A-Za-z0-9_-]+[.][.][A-Za-z0-9_-]+$',
        },
      },
      required: ['by', 'jws'],
      additionalProperties: false,
    },
  },
};

export const set: Schema = {
  $schema: 'https://json-schema.org/draft/2020-12/schema',
  $id: 'set.schema.json',
  title: 'SetFile',
  description: 'A set of observations, or a series: sets with their times, and what is known of the patient.',
  examples: [{ systolic: 104, diastolic: 48 }, { sets: [{ at: '2026-03-02T08:00:00Z', systolic: 118 }] }],
  type: 'object',
  properties: {
    at: {
      description:
        'Of one set: when it was taken. Of a series: the time for which the question is asked, by default the time of the last set.',
      examples: ['2026-03-02T12:05:00Z'],
      $ref: '#/$defs/time',
    },
    patient: {
      description: 'What holds for the patient until it is changed.',
      examples: [{ standing: { oxygen_scale: { value: 'scale_2', by: 'Dr Ash' } } }],
      $ref: '#/$defs/patient',
    },
    sets: {
      description: 'The sets of the series. Their order means nothing.',
      examples: [[{ at: '2026-03-02T08:00:00Z', systolic: 118 }]],
      type: 'array',
      items: { $ref: '#/$defs/timed_set' },
      maxItems: 100000,
    },
  },
  additionalProperties: { $ref: '#/$defs/observed' },
  $defs: {
    time: {
      description: 'A time with its offset (RFC 3339).',
      examples: ['2026-03-02T12:05:00Z', '2026-03-02T17:50:00+05:45'],
      type: 'string',
      maxLength: 40,
    },
    timed_set: {
      title: 'TimedSet',
      description: 'Observations taken together at one time.',
      examples: [{ at: '2026-03-02T08:00:00Z', systolic: 118 }],
      type: 'object',
      properties: {
        at: {
          description: 'When the set was taken.',
          examples: ['2026-03-02T08:00:00Z'],
          $ref: '#/$defs/time',
        },
      },
      required: ['at'],
      additionalProperties: { $ref: '#/$defs/observed' },
    },
    observed: {
      title: 'Observed',
      description:
        'What was observed: a number, a choice, several choices, yes or no (true or false); or what is known when there is no plain value.',
      examples: [104, 'alert', true, { value: 98.1, unit: '[degF]' }, { unobtainable: 'cold fingers' }],
      type: ['number', 'string', 'boolean', 'array', 'object'],
      properties: {
        value: {
          description: 'The value.',
          examples: [104],
          type: ['number', 'string', 'boolean', 'array'],
          items: { $ref: 'dictionary.schema.json#/$defs/name' },
        },
        unit: {
          description: "The unit of the value, as a UCUM code (in YAML: in the trade's words).",
          examples: ['[degF]'],
          type: 'string',
          maxLength: 40,
        },
        low: { description: 'The lowest that it can truly be.', examples: [96], type: 'number' },
        high: { description: 'The highest that it can truly be.', examples: [104], type: 'number' },
        unobtainable: {
          description: 'It was tried and could not be obtained: why, or yes.',
          examples: ['cold fingers'],
          type: ['string', 'boolean'],
          maxLength: 500,
        },
        declined: {
          description: 'The patient declined: why, or yes.',
          examples: ['asleep, asked not to be woken'],
          type: ['string', 'boolean'],
          maxLength: 500,
        },
        above_device: {
          description: 'The device showed only that it is above this.',
          examples: [250],
          type: 'number',
        },
        below_device: {
          description: 'The device showed only that it is below this.',
          examples: [30],
          type: 'number',
        },
      },
      additionalProperties: false,
      items: { $ref: 'dictionary.schema.json#/$defs/name' },
    },
    patient: {
      title: 'Patient',
      description: 'What holds for the patient until it is changed.',
      examples: [{ standing: { oxygen_scale: { value: 'scale_2', by: 'Dr Ash' } } }],
      type: 'object',
      properties: {
        standing: {
          description: 'Standing facts.',
          examples: [{ oxygen_scale: { value: 'scale_2', by: 'Dr Ash', until: '2026-03-09T00:00:00Z' } }],
          type: 'object',
          propertyNames: { $ref: 'dictionary.schema.json#/$defs/name' },
          additionalProperties: { $ref: '#/$defs/stated' },
        },
        limits: {
          description: 'Limits of the protocol, changed for this patient.',
          examples: [{ mean_floor: { value: 70, by: 'Dr Ash', reason: 'long-standing high pressure' } }],
          type: 'object',
          propertyNames: { $ref: 'dictionary.schema.json#/$defs/name' },
          additionalProperties: { $ref: '#/$defs/stated' },
        },
      },
      additionalProperties: false,
    },
    stated: {
      title: 'Stated',
      description: 'A fact or a limit, with who stated it and until when it holds.',
      examples: [{ value: 'scale_2', by: 'Dr Ash', until: '2026-03-09T00:00:00Z' }],
      type: 'object',
      properties: {
        value: {
          description: 'The value.',
          examples: ['scale_2', 70],
          type: ['number', 'string', 'boolean', 'array'],
          items: { $ref: 'dictionary.schema.json#/$defs/name' },
        },
        unit: { description: 'Its unit.', examples: ['mm[Hg]'], type: 'string', maxLength: 40 },
        by: {
          description: 'Who stated it.',
          examples: ['Dr Ash'],
          $ref: 'dictionary.schema.json#/$defs/text',
        },
        reason: {
          description: 'Why.',
          examples: ['long-standing high pressure'],
          $ref: 'dictionary.schema.json#/$defs/text',
        },
        at: {
          description: 'From when it holds; without this it has always held.',
          examples: ['2026-03-02T08:00:00Z'],
          $ref: '#/$defs/time',
        },
        until: {
          description: 'Until when it holds; at that time it no longer does.',
          examples: ['2026-03-09T00:00:00Z'],
          $ref: '#/$defs/time',
        },
      },
      required: ['value', 'by'],
      additionalProperties: false,
    },
  },
};

export const ward: Schema = {
  $schema: 'https://json-schema.org/draft/2020-12/schema',
  $id: 'ward.schema.json',
  title: 'WardFile',
  description:
    'A ward policy: the protocols that a ward reads with, together, on one ladder, and what changes for a patient with a plan.',
  examples: [
    {
      ward: 'alder_wing',
      edition: 1,
      title: 'Alder Wing',
      ladder: 'alder_ladder',
      reads_with: [{ protocol: 'pressure_reading', edition: 1 }],
    },
  ],
  type: 'object',
  properties: {
    ward: {
      description: "The ward's name. Its folder has the same name.",
      examples: ['alder_wing'],
      $ref: 'dictionary.schema.json#/$defs/name',
    },
    edition: {
      description: 'The number of the edition; each change that is put in force has a higher one.',
      examples: [1],
      type: 'integer',
      minimum: 1,
      maximum: 100000,
    },
    title: {
      description: 'The ward, as a heading.',
      examples: ['Alder Wing'],
      $ref: 'dictionary.schema.json#/$defs/text',
    },
    about: {
      description: 'What kind of ward it is and what the policy does not do, in a few sentences.',
      examples: ['An adult step-down ward. Invented.'],
      $ref: 'dictionary.schema.json#/$defs/text',
    },
    ladder: {
      description:
        'The ladder of the ward. Every protocol that it reads with is on this ladder; another ladder is refused, never mapped.',
      examples: ['alder_ladder'],
      $ref: 'dictionary.schema.json#/$defs/name',
    },
    time_zone: {
      description:
        'Where the ward is, as a name of the time zone database. It decides who is on duty at the hours of the ladder.',
      examples: ['Europe/London'],
      type: 'string',
      minLength: 1,
      maxLength: 60,
    },
    review_by: {
      description: 'The day by which the ward looks at its policy again: year-month-day.',
      examples: ['2027-09-30'],
      type: 'string',
      pattern: '^[0-9]{4}-[0-9]{2}-[0-9]{2}$',
    },
    owners: {
      description: 'Who answers for the policy.',
      examples: [['Alder Bay practice council']],
      type: 'array',
      items: { $ref: 'dictionary.schema.json#/$defs/text' },
      minItems: 1,
      maxItems: 20,
    },
    sources: {
      description: 'Where the policy comes from: published work, or "Common practice, no published source".',
      examples: [{ council: { cite: 'Common practice, no published source' } }],
      type: 'object',
      propertyNames: { $ref: 'dictionary.schema.json#/$defs/name' },
      additionalProperties: { $ref: 'dictionary.schema.json#/$defs/source' },
    },
    reads_with: {
      description: 'The protocols that the ward reads with.',
      examples: [[{ protocol: 'pressure_reading', edition: 1 }]],
      type: 'array',
      items: { $ref: '#/$defs/reads_with' },
      minItems: 1,
      maxItems: 100,
    },
    plans: {
      description:
        'What changes for a patient with an escalation plan, by the choice of escalation_plan: whom to tell and how soon. The level that is shown does not change.',
      examples: [
        {
          comfort_care: {
            says: 'Comfort comes first.',
            levels: { emergency_call: { tell: [{ who: 'Palliative team' }], respond: '1 h' } },
            source: ['council'],
          },
        },
      ],
      type: 'object',
      propertyNames: { $ref: 'dictionary.schema.json#/$defs/name' },
      additionalProperties: { $ref: '#/$defs/plan' },
    },
    never_together: {
      description:
        'Pairs of actions, of whatever protocol, that must never be advised together. The check looks for a set that would advise both.',
      examples: [[['head_up', 'lie_flat']]],
      type: 'array',
      items: { $ref: '#/$defs/pair' },
      maxItems: 200,
    },
    hazards: {
      description:
        'The hazards that the safety requirements control: what can go wrong for a patient, by name.',
      examples: [
        {
          unseen_shock: {
            harm: 'A patient in shock waits, because no single number shouts.',
            severity: 'life_threatening',
            owner: 'Alder Bay practice council',
          },
        },
      ],
      type: 'object',
      propertyNames: { $ref: 'dictionary.schema.json#/$defs/name' },
      additionalProperties: { $ref: 'protocol.schema.json#/$defs/hazard' },
    },
    must_always: {
      description:
        'Safety requirements of all protocols together: what must hold for every possible set of every patient whom one of them is for.',
      examples: [
        [
          {
            requirement: 'very_low_is_never_quiet',
            where: { systolic: { at_most: 90 } },
            level_at_least: 'call_doctor',
            controls: ['unseen_shock'],
          },
        ],
      ],
      type: 'array',
      items: { $ref: '#/$defs/requirement' },
      maxItems: 200,
    },
  },
  required: ['ward', 'edition', 'title', 'ladder', 'reads_with'],
  additionalProperties: false,
  $defs: {
    reads_with: {
      title: 'ReadsWith',
      description: 'One protocol of the ward.',
      examples: [{ protocol: 'bleeding_watch', edition: 1, when: { head_injury: { is: 'no' } } }],
      type: 'object',
      properties: {
        protocol: {
          description: "The protocol's name.",
          examples: ['pressure_reading'],
          $ref: 'dictionary.schema.json#/$defs/name',
        },
        edition: {
          description: 'Which edition of it was read and agreed. Another one is a problem.',
          examples: [1],
          type: 'integer',
          minimum: 1,
          maximum: 100000,
        },
        when: {
          description:
            "For which patients the ward reads with it, beside the protocol's own applies_when: observations compared with numbers or choices.",
          examples: [{ age: { at_least: '16 y' } }],
          $ref: 'protocol.schema.json#/$defs/condition',
        },
      },
      required: ['protocol', 'edition'],
      additionalProperties: false,
    },
    plan: {
      title: 'Plan',
      description: 'What one escalation plan changes.',
      examples: [
        {
          says: 'Comfort comes first.',
          levels: { emergency_call: { tell: [{ who: 'Palliative team' }], respond: '1 h' } },
          source: ['council'],
        },
      ],
      type: 'object',
      properties: {
        says: {
          description: 'What the plan means at the bedside, in a sentence.',
          examples: ['Comfort comes first; the emergency team is not called.'],
          $ref: 'dictionary.schema.json#/$defs/text',
        },
        levels: {
          description:
            "By level: whom to tell and how soon in place of the ladder's own. A level that is not named stays as it is.",
          examples: [{ emergency_call: { tell: [{ who: 'Palliative team' }], respond: '1 h' } }],
          type: 'object',
          propertyNames: { $ref: 'dictionary.schema.json#/$defs/name' },
          additionalProperties: { $ref: '#/$defs/plan_level' },
        },
        source: {
          description: 'Where it comes from; names from sources.',
          examples: [['council']],
          type: 'array',
          items: { $ref: 'dictionary.schema.json#/$defs/name' },
          maxItems: 200,
        },
      },
      required: ['says', 'levels', 'source'],
      additionalProperties: false,
    },
    plan_level: {
      title: 'PlanLevel',
      description:
        "What a plan puts in place of a level's own words. What is not named stays as it is on the ladder.",
      examples: [{ tell: [{ who: 'Palliative team' }], respond: '1 h' }],
      type: 'object',
      properties: {
        says: {
          description: 'What the level asks for.',
          examples: ['The palliative team comes.'],
          $ref: 'dictionary.schema.json#/$defs/text',
        },
        tell: {
          description: 'Whom to tell.',
          examples: [[{ who: 'Palliative team' }]],
          type: 'array',
          items: { $ref: 'ladder.schema.json#/$defs/tell' },
          minItems: 1,
          maxItems: 20,
        },
        respond: {
          description: 'How soon they come.',
          examples: ['1 h'],
          $ref: 'dictionary.schema.json#/$defs/duration',
        },
        reassess: {
          description: 'When the next full set is taken.',
          examples: ['4 h'],
          $ref: 'dictionary.schema.json#/$defs/duration',
        },
        if_no_answer: {
          description: 'What to do when nobody answers.',
          examples: [{ after: '15 min', tell: 'Registrar on call' }],
          $ref: 'ladder.schema.json#/$defs/no_answer',
        },
      },
      additionalProperties: false,
      minProperties: 1,
    },
    pair: {
      title: 'ActionPair',
      description: 'Two actions, by their names.',
      examples: [['head_up', 'lie_flat']],
      type: 'array',
      items: { $ref: 'dictionary.schema.json#/$defs/name' },
      minItems: 2,
      maxItems: 2,
    },
    requirement: {
      title: 'WardRequirement',
      description:
        'A safety requirement of the whole ward policy: what must hold for every possible set. It has exactly one kind.',
      examples: [
        {
          requirement: 'very_low_is_never_quiet',
          where: { systolic: { at_most: 90 } },
          level_at_least: 'call_doctor',
          controls: ['unseen_shock'],
        },
      ],
      type: 'object',
      properties: {
        requirement: {
          description: "The requirement's name.",
          examples: ['very_low_is_never_quiet'],
          $ref: 'dictionary.schema.json#/$defs/name',
        },
        title: {
          description: 'The requirement in plain words.',
          examples: ['A very low systolic always calls the doctor'],
          $ref: 'dictionary.schema.json#/$defs/text',
        },
        controls: {
          description: 'The hazards that it controls: names from hazards.',
          examples: [['unseen_shock']],
          type: 'array',
          items: { $ref: 'dictionary.schema.json#/$defs/name' },
          minItems: 1,
          maxItems: 20,
        },
        because: {
          description: 'Why it must hold.',
          examples: ['Below 90 little is left for the kidneys and the brain.'],
          $ref: 'dictionary.schema.json#/$defs/text',
        },
        source: {
          description: 'Where it comes from: names from sources.',
          examples: [['council']],
          type: 'array',
          items: { $ref: 'dictionary.schema.json#/$defs/name' },
          maxItems: 200,
        },
        where: {
          description:
            'For which sets it must hold; without it for every one of the patients whom this is for. It reads observations against numbers and choices.',
          examples: [{ systolic: { at_most: 90 } }],
          $ref: 'protocol.schema.json#/$defs/condition',
        },
        limits: {
          description:
            'as_written: it must hold at the limits as they are written. Without this it must hold for every value of each limit inside its bounds.',
          examples: ['as_written'],
          type: 'string',
          enum: ['as_written'],
        },
        level_at_least: {
          description: 'Kind: the level of the set is this one or a higher one.',
          examples: ['call_doctor'],
          $ref: 'dictionary.schema.json#/$defs/name',
        },
        level_at_most: {
          description: 'Kind: the level of the set is this one or a lower one, and could be no higher.',
          examples: ['look_again'],
          $ref: 'dictionary.schema.json#/$defs/name',
        },
        getting_worse_never_lowers: {
          description:
            'Kind: of two sets that differ in one observation alone, the one with the worse value never has the lower level.',
          examples: [{ observation: 'respiratory_rate', going: 'up', between: [12, 60] }],
          $ref: 'protocol.schema.json#/$defs/getting_worse',
        },
        nothing_hides: {
          description:
            'Kind: what is left blank never gives a calmer headline than an answer would: what the level could be is never below the level with the answer.',
          examples: [{ blank: ['systolic', 'diastolic'] }, {}],
          $ref: 'protocol.schema.json#/$defs/nothing_hides',
        },
        no_level: {
          description: 'Kind: these sets never get a level, because this is not for such patients.',
          examples: ['yes'],
          type: ['string', 'boolean'],
          enum: ['yes', true],
        },
        fault_never_lowers: {
          description:
            'Kind: a fault of technique never lowers the level: with any fault it is no lower than without one.',
          examples: ['yes'],
          type: ['string', 'boolean'],
          enum: ['yes', true],
        },
        always_some_advice: {
          description: 'Kind: some rule that says, asks or does something is met.',
          examples: ['yes'],
          type: ['string', 'boolean'],
          enum: ['yes', true],
        },
      },
      required: ['requirement', 'controls'],
      additionalProperties: false,
    },
  },
};

export const ward_cases: Schema = {
  $schema: 'https://json-schema.org/draft/2020-12/schema',
  $id: 'ward_cases.schema.json',
  title: 'WardCasesFile',
  description:
    'Cases of one ward policy: stories, observations, and the outcome that the ward expects of all its protocols together.',
  examples: [{ ward: 'alder_wing', cases: [] }],
  type: 'object',
  properties: {
    ward: {
      description: 'The ward policy that the cases are for.',
      examples: ['alder_wing'],
      $ref: 'dictionary.schema.json#/$defs/name',
    },
    cases: {
      description: 'The cases.',
      examples: [
        [
          {
            case: 'Septic, badly cuffed',
            source: 'council',
            given: { systolic: 104 },
            expect: { level: { at_least: 'call_doctor' } },
          },
        ],
      ],
      type: 'array',
      items: { $ref: '#/$defs/case' },
      maxItems: 100000,
    },
  },
  required: ['ward', 'cases'],
  additionalProperties: false,
  $defs: {
    case: {
      title: 'WardCase',
      description: 'One case: what is given, and what is expected. It has either given or series.',
      examples: [
        {
          case: 'Septic, badly cuffed',
          source: 'council',
          given: { systolic: 104 },
          expect: { level: { at_least: 'call_doctor' } },
        },
      ],
      type: 'object',
      properties: {
        case: {
          description: 'The case in a few words.',
          examples: ['Septic, badly cuffed'],
          $ref: 'dictionary.schema.json#/$defs/text',
        },
        story: {
          description: 'The story around it.',
          examples: ['He says that he is fine.'],
          $ref: 'dictionary.schema.json#/$defs/text',
        },
        source: {
          description: "Where the expectation comes from: a name from the policy's sources.",
          examples: ['council'],
          $ref: 'dictionary.schema.json#/$defs/name',
        },
        given: {
          description: 'One set: observations with their values.',
          examples: [{ systolic: 104, age: '58 y' }],
          $ref: 'set.schema.json',
        },
        series: {
          description: 'A series of sets with their times.',
          examples: [{ sets: [{ at: '2026-03-02T08:00:00Z', systolic: 118 }] }],
          $ref: 'set.schema.json',
        },
        expect: {
          description: 'What the ward expects.',
          examples: [{ level: { at_least: 'call_doctor' } }],
          $ref: '#/$defs/expect',
        },
        teach: {
          description: 'For the drill.',
          examples: [{ ask_first: 'What keeps the diastolic up between beats?' }],
          $ref: 'cases.schema.json#/$defs/teach',
        },
      },
      required: ['case', 'expect'],
      additionalProperties: false,
    },
    expect: {
      title: 'WardExpect',
      description: 'What is expected of all protocols together, and of each of them.',
      examples: [
        { level: { at_least: 'call_doctor' }, protocols: { pressure_reading: { met: ['mean_too_low'] } } },
      ],
      type: 'object',
      properties: {
        level: {
          description: 'The level of the ward.',
          examples: [{ at_least: 'call_doctor', settled: 'yes' }],
          $ref: 'cases.schema.json#/$defs/expected_level',
        },
        tell: {
          description: 'Who is told: exactly these, in this order.',
          examples: [['Night doctor']],
          type: 'array',
          items: { $ref: 'dictionary.schema.json#/$defs/text' },
          minItems: 1,
          maxItems: 20,
        },
        plan: {
          description: 'The escalation plan that changes the answer; none when none does.',
          examples: ['comfort_care'],
          $ref: 'dictionary.schema.json#/$defs/name',
        },
        in_force: {
          description: 'The higher level that is still in force from earlier sets; none when there is none.',
          examples: ['call_doctor'],
          $ref: 'dictionary.schema.json#/$defs/name',
        },
        may_step_down: {
          description: 'Whether the sets show what the ladder asks for to step down from the level in force.',
          examples: ['no'],
          $ref: 'dictionary.schema.json#/$defs/yes',
        },
        protocols: {
          description: 'What is expected of each protocol.',
          examples: [{ pressure_reading: { met: ['mean_too_low'] } }],
          type: 'object',
          propertyNames: { $ref: 'dictionary.schema.json#/$defs/name' },
          additionalProperties: { $ref: 'cases.schema.json#/$defs/expect' },
        },
      },
      minProperties: 1,
      additionalProperties: false,
    },
  },
};

export const ward_outcome: Schema = {
  $schema: 'https://json-schema.org/draft/2020-12/schema',
  $id: 'ward_outcome.schema.json',
  title: 'WardOutcome',
  description:
    'What a ward policy says about a set in its series: one level of all its protocols, how it is answered here, each piece of advice once, and the outcome of each protocol.',
  examples: [
    {
      ward: 'alder_wing',
      edition: 1,
      title: 'Alder Wing',
      digest: 'sha256:0000000000000000000000000000000000000000000000000000000000000000',
      at: null,
      level: null,
      reads: [],
      advice: [],
      ask_first: [],
      take_first: [],
      missing: [],
      unobtainable: [],
      declined: [],
      would_tell_more: [],
      refused: [],
      questioned: [],
      caution: 'This supports the judgement of a licensed clinician and never replaces it.',
    },
  ],
  type: 'object',
  properties: {
    ward: {
      description: "The ward's name.",
      examples: ['alder_wing'],
      $ref: 'dictionary.schema.json#/$defs/name',
    },
    edition: { description: 'The edition of the policy.', examples: [1], type: 'integer' },
    title: { description: 'The ward.', examples: ['Alder Wing'], $ref: 'dictionary.schema.json#/$defs/text' },
    digest: {
      description: 'SHA-256 over the policy, its protocols and its ladder.',
      examples: ['sha256:0000000000000000000000000000000000000000000000000000000000000000'],
      type: 'string',
    },
    policy: {
      description:
        'Of a policy that is read because it is in force: since when, and what must be said of it. Left out when a policy is read that may be in force nowhere.',
      examples: [{ in_force_from: '2026-03-02T08:00:00Z', by: 'Dr Ash' }],
      $ref: '#/$defs/policy',
    },
    at: {
      description: 'The time that was asked about; null when no time is known.',
      examples: ['2026-03-02T12:05:00Z'],
      type: ['string', 'null'],
    },
    level: {
      description: 'The highest level of all protocols; null when none of them is for this patient.',
      examples: [{ at_least: 'call_doctor', could_be: 'call_doctor', settled: true }],
      $ref: 'outcome.schema.json#/$defs/level',
    },
    plan: {
      description: 'The escalation plan that changes whom to tell and how soon. Left out when none does.',
      examples: [{ plan: 'comfort_care', title: 'comfort care', says: 'Comfort comes first.' }],
      $ref: '#/$defs/plan',
    },
    response: {
      description:
        'How the level is answered here, or the higher one that is still in force: with the plan, and with those who are on duty. Left out while there is no level.',
      examples: [{ level: 'call_doctor', tell: [{ who: 'Night doctor' }], respond: '30 min' }],
      $ref: '#/$defs/response',
    },
    in_force: {
      description:
        'A higher level that an earlier set reached and that has not been stepped down from. Left out when there is none.',
      examples: [
        {
          level: 'call_doctor',
          since: '2026-03-02T08:00:00Z',
          last_at: '2026-03-02T08:00:00Z',
          sets_below: 1,
          sets_asked: 2,
          minutes: 60,
          minutes_asked: 120,
          agreed_by: 'Nurse in charge',
          may_step_down: false,
        },
      ],
      $ref: 'outcome.schema.json#/$defs/in_force',
    },
    reads: {
      description:
        'The outcome of each protocol, in the order of the policy; also of those that are not for this patient.',
      examples: [[]],
      type: 'array',
      items: { $ref: 'outcome.schema.json' },
    },
    advice: {
      description:
        'What the rules say that are met or count, the highest level first, each action and each question once.',
      examples: [
        [
          {
            protocol: 'pressure_reading',
            rule: 'mean_too_low',
            title: 'Mean too low',
            level: 'call_doctor',
            says: 'Organs may not be perfused.',
            ask: [],
            do: [],
          },
        ],
      ],
      type: 'array',
      items: { $ref: '#/$defs/advice' },
    },
    ask_first: {
      description: 'What to ask first.',
      examples: [['pregnancy']],
      $ref: 'outcome.schema.json#/$defs/names',
    },
    take_first: {
      description: 'What to take first.',
      examples: [['respiratory_rate']],
      $ref: 'outcome.schema.json#/$defs/names',
    },
    missing: {
      description: 'What is missing of what the protocols need.',
      examples: [['respiratory_rate']],
      $ref: 'outcome.schema.json#/$defs/names',
    },
    unobtainable: {
      description: 'What was tried and could not be obtained.',
      examples: [[{ observation: 'oxygen_saturation', because: 'cold fingers' }]],
      type: 'array',
      items: { $ref: 'outcome.schema.json#/$defs/without_value' },
    },
    declined: {
      description: 'What the patient declined.',
      examples: [[{ observation: 'temperature' }]],
      type: 'array',
      items: { $ref: 'outcome.schema.json#/$defs/without_value' },
    },
    would_tell_more: {
      description: 'What only helps, is missing, and could still decide something.',
      examples: [['vasodilator_last_6_h']],
      $ref: 'outcome.schema.json#/$defs/names',
    },
    faults: {
      description:
        'Faults of technique that are known to be there, with the rules of all protocols that each puts in doubt. Left out when there are none.',
      examples: [[]],
      type: 'array',
      items: { $ref: '#/$defs/fault' },
    },
    refused: {
      description: 'Values that are not used.',
      examples: [[{ observation: 'systolic', given: '1040', because: 'no body gives this value' }]],
      type: 'array',
      items: { $ref: 'outcome.schema.json#/$defs/remark' },
    },
    questioned: {
      description: 'Values that are used although they are hardly plausible.',
      examples: [
        [
          {
            observation: 'systolic',
            given: '42',
            because: 'systolic pressure 42 mmHg is lower than 50, the lowest that is plausible; it is used',
          },
        ],
      ],
      type: 'array',
      items: { $ref: 'outcome.schema.json#/$defs/remark' },
    },
    caution: {
      description: 'What the outcome is not.',
      examples: ['This supports the judgement of a licensed clinician and never replaces it.'],
      $ref: 'dictionary.schema.json#/$defs/text',
    },
  },
  required: [
    'ward',
    'edition',
    'title',
    'digest',
    'at',
    'level',
    'reads',
    'advice',
    'ask_first',
    'take_first',
    'missing',
    'unobtainable',
    'declined',
    'would_tell_more',
    'refused',
    'questioned',
    'caution',
  ],
  additionalProperties: false,
  $defs: {
    plan: {
      title: 'WardPlan',
      description: 'The plan that holds.',
      examples: [{ plan: 'comfort_care', title: 'comfort care', says: 'Comfort comes first.' }],
      type: 'object',
      properties: {
        plan: {
          description: 'The choice of escalation_plan.',
          examples: ['comfort_care'],
          $ref: 'dictionary.schema.json#/$defs/name',
        },
        title: {
          description: 'The plan in plain words.',
          examples: ['comfort care'],
          $ref: 'dictionary.schema.json#/$defs/text',
        },
        says: {
          description: 'What it means at the bedside.',
          examples: ['Comfort comes first.'],
          $ref: 'dictionary.schema.json#/$defs/text',
        },
      },
      required: ['plan', 'title', 'says'],
      additionalProperties: false,
    },
    response: {
      title: 'WardResponse',
      description: 'How a level is answered.',
      examples: [{ level: 'call_doctor', tell: [{ who: 'Night doctor' }], respond: '30 min' }],
      type: 'object',
      properties: {
        level: {
          description: 'The level.',
          examples: ['call_doctor'],
          $ref: 'dictionary.schema.json#/$defs/name',
        },
        says: {
          description: 'What it asks for.',
          examples: ['A doctor sees the patient within half an hour.'],
          $ref: 'dictionary.schema.json#/$defs/text',
        },
        tell: {
          description: 'Whom to tell: those who are on duty at this time.',
          examples: [[{ who: 'Night doctor', from: '20:00', to: '08:00' }]],
          type: 'array',
          items: { $ref: 'ladder.schema.json#/$defs/tell' },
        },
        respond: {
          description: 'How soon they come.',
          examples: ['30 min'],
          $ref: 'dictionary.schema.json#/$defs/duration',
        },
        reassess: {
          description: 'When the next full set is due.',
          examples: ['30 min'],
          $ref: 'dictionary.schema.json#/$defs/duration',
        },
        if_no_answer: {
          description: 'What to do when nobody answers.',
          examples: [{ after: '15 min', tell: 'Registrar on call' }],
          $ref: 'ladder.schema.json#/$defs/no_answer',
        },
        step_down: {
          description: 'How the patient comes down from this level.',
          examples: [{ sets_in_a_row: 2, over: '1 h', agreed_by: 'Nurse in charge' }],
          $ref: 'ladder.schema.json#/$defs/step_down',
        },
      },
      required: ['level', 'tell'],
      additionalProperties: false,
    },
    advice: {
      title: 'WardAdvice',
      description: 'What one rule of one protocol says.',
      examples: [
        {
          protocol: 'pressure_reading',
          rule: 'mean_too_low',
          title: 'Mean too low',
          level: 'call_doctor',
          says: 'Organs may not be perfused.',
          ask: [],
          do: [],
        },
      ],
      type: 'object',
      properties: {
        protocol: {
          description: 'The protocol that the rule stands in.',
          examples: ['pressure_reading'],
          $ref: 'dictionary.schema.json#/$defs/name',
        },
        rule: {
          description: "The rule's name.",
          examples: ['fast_rate'],
          $ref: 'outcome.schema.json#/$defs/name',
        },
        title: {
          description: 'Its name in plain words.',
          examples: ['Fast rate'],
          $ref: 'dictionary.schema.json#/$defs/text',
        },
        level: {
          description: 'The level that it calls for.',
          examples: ['look_again'],
          $ref: 'outcome.schema.json#/$defs/name',
        },
        says: {
          description: 'What it suggests.',
          examples: ['The rate suggests that the heart makes up for something.'],
          $ref: 'dictionary.schema.json#/$defs/text',
        },
        because: {
          description: 'Why.',
          examples: ['Between beats only the tone of the vessels holds the pressure up.'],
          $ref: 'dictionary.schema.json#/$defs/text',
        },
        explained_by: {
          description: 'The explanation that is known to hold.',
          examples: ['A medicine that lowers pressure can do this; it does not rule out infection.'],
          $ref: 'outcome.schema.json#/$defs/sentence',
        },
        ask: {
          description: 'What to ask or look for.',
          examples: [['Is there a source of infection?']],
          $ref: 'outcome.schema.json#/$defs/sentences',
        },
        do: {
          description:
            'What to do, and on whose authority. What several rules ask for is said once, with the first of them.',
          examples: [['Take a full set now (own authority)']],
          $ref: 'outcome.schema.json#/$defs/sentences',
        },
      },
      required: ['protocol', 'rule', 'title', 'ask', 'do'],
      additionalProperties: false,
    },
    fault: {
      title: 'WardFault',
      description: 'A fault of technique that is known to be there.',
      examples: [
        {
          fault: 'arm_hangs',
          title: 'Arm below the heart',
          says: 'An arm below the heart makes the pressure read too high.',
          do: [],
          readings: [],
          changes: [],
        },
      ],
      type: 'object',
      properties: {
        fault: {
          description: "The fault's name.",
          examples: ['arm_hangs'],
          $ref: 'outcome.schema.json#/$defs/name',
        },
        title: {
          description: 'The fault in plain words.',
          examples: ['Arm below the heart'],
          $ref: 'dictionary.schema.json#/$defs/text',
        },
        says: {
          description: 'What it does to the reading.',
          examples: ['An arm below the heart makes the pressure read too high.'],
          $ref: 'dictionary.schema.json#/$defs/text',
        },
        do: {
          description: 'What to do so that the next reading is free of it.',
          examples: [['Support the arm at heart level and take the pressure again (own authority)']],
          $ref: 'outcome.schema.json#/$defs/sentences',
        },
        readings: {
          description: 'What was read, and what the truth may be: with all faults of the set together.',
          examples: [[{ observation: 'systolic', read: 104, low: 94, high: 104, unit: 'mm[Hg]' }]],
          type: 'array',
          items: { $ref: 'outcome.schema.json#/$defs/reading' },
        },
        changes: {
          description:
            'Rules that would answer otherwise somewhere in that range, with the level that each calls for. Empty: the fault does not matter here.',
          examples: [
            [
              {
                protocol: 'pressure_reading',
                rule: 'systolic_lowish',
                title: 'Systolic on the low side',
                level: 'look_again',
              },
            ],
          ],
          type: 'array',
          items: { $ref: '#/$defs/doubted' },
        },
      },
      required: ['fault', 'title', 'says', 'do', 'readings', 'changes'],
      additionalProperties: false,
    },
    doubted: {
      title: 'WardDoubtedRule',
      description: 'A rule of one protocol whose answer a fault puts in doubt.',
      examples: [
        { protocol: 'pressure_reading', rule: 'systolic_lowish', title: 'Systolic on the low side' },
      ],
      type: 'object',
      properties: {
        protocol: {
          description: 'The protocol that the rule stands in.',
          examples: ['pressure_reading'],
          $ref: 'dictionary.schema.json#/$defs/name',
        },
        rule: {
          description: "The rule's name.",
          examples: ['systolic_lowish'],
          $ref: 'outcome.schema.json#/$defs/name',
        },
        title: {
          description: 'The rule in plain words.',
          examples: ['Systolic on the low side'],
          $ref: 'dictionary.schema.json#/$defs/text',
        },
        level: {
          description: 'The level that it calls for when it is met.',
          examples: ['look_again'],
          $ref: 'outcome.schema.json#/$defs/name',
        },
      },
      required: ['protocol', 'rule', 'title'],
      additionalProperties: false,
    },
    policy: {
      title: 'WardPolicyInForce',
      description: 'What must be said of a policy that is in force.',
      examples: [{ in_force_from: '2026-03-02T08:00:00Z', by: 'Dr Ash' }],
      type: 'object',
      properties: {
        in_force_from: {
          description: 'Since when it is in force.',
          examples: ['2026-03-02T08:00:00Z'],
          type: 'string',
          maxLength: 40,
        },
        by: { description: 'Who put it in force.', examples: ['Dr Ash'], type: 'string', maxLength: 80 },
        review_overdue: {
          description: 'The day by which its review was due, when it is overdue. It still answers.',
          examples: ['2027-09-30'],
          type: 'string',
          maxLength: 10,
        },
        warning: {
          description:
            'What failed when it was checked, and what is read with instead. It comes before everything else.',
          examples: [
            'The record of this policy was changed. This answer is from what was checked here last.',
          ],
          type: 'string',
          maxLength: 2000,
        },
      },
      required: ['in_force_from', 'by'],
      additionalProperties: false,
    },
  },
};
