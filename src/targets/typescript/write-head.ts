import { rulesInWord } from './packed-answers.ts';
import { Code, code } from './code.ts';
import type { ModuleInputs } from './module-inputs.ts';

/** What a module says of itself, its names, and the lists that it works with. */
export function writeHead({ protocol, logic, observations }: ModuleInputs): Code {
  const { name, edition, digest, ladder, rules } = protocol;
  const list = (names: Iterable<string>): Code =>
    Code.joined(
      [...names].map((each) => code`  ${each},`),
      '\n',
    );
  const words = 1 + 2 * Math.ceil(rules.length / rulesInWord);
  return code`${Code.comment(
    `${protocol.title}: protocol ${name}, edition ${edition}, as a program. Generated; do not edit.`,
    digest,
    '',
    'Missing is never normal: what was not taken stays open, and the level then says how high it could be. It reads one set; what',
    'earlier sets say is given to it.',
    ...(protocol.basedOn.length === 0 ? [] : ['What the protocol is based on is already worked in.']),
    'Truths in it are 0 or 1, joined by & and |, so that a processor need not foresee them.',
    'Implausible values are used and not questioned here, and the words of the rules stand in the protocol.',
    '',
    'It supports licensed judgement and local policy. It is not a medical device, and the paper policy wins.',
  )}

export const protocol = ${name};
export const edition = ${edition};
export const digest = ${digest};

/** The levels of the ladder, lowest first. */
export const levels: readonly LevelId[] = [
${list(ladder.levels.map((level) => level.name))}
];

/** The rules, in the order of the file: the order of their bits in packed answers. */
export const rules: readonly RuleId[] = [
${list(rules.map((rule) => rule.name))}
];

/** How many whole numbers one packed answer takes. */
export const words = ${words};

const observations: readonly ObservationId[] = [
${list(observations.map(({ entry }) => entry.name))}
];
const low = new Float64Array(${observations.length});
const high = new Float64Array(${observations.length});
/** 0 nothing, 1 a value, 2 unobtainable, 3 refused. */
const state = new Uint8Array(${observations.length});
const clashes = new Uint8Array(${observations.length});
let least = 0;
let most = 0;
let isRow = true;
const bounds = new Float64Array(${logic.inputs.length});
const narrowAnswer = new Int32Array(${words + 3});
const wideAnswer = new Int32Array(${words + 3});
const single = new Int32Array(${words});`;
}
