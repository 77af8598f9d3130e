import type { Input } from '../../logic/inputs.ts';
import type { Logic } from '../../logic/logic.ts';
import { logicToJson } from '../../logic/logic-to-json.ts';
import { answersAlone } from '../../logic/used-steps.ts';
import type { Protocol } from '../../protocol/protocol.ts';
import { withFaults, type TargetFault } from '../with-faults.ts';
import { inputOf, readingOf, widenedInput } from './reading.ts';

/**
 * A protocol as a file that any JSON Logic library can run, after schema/logic.schema.json; `reader.mjs` makes inputs from a set
 * and reads the answers. One input or step a line, so that a change of a rule is a change of its lines.
 */
export function logicToArtefact(logic: Logic, protocol: Protocol): string {
  const { faults, ...whole } = withFaults(answersAlone(logic), protocol);
  const { inputs, steps, answers, ...head } = logicToJson(whole.logic, whole.protocol);
  const file = {
    ...head,
    reading: readingOf(whole.protocol),
    inputs: inputs.map((input, place) => {
      const own = whole.logic.inputs[place] as Input;
      const [is, wide] = [
        inputOf(own, input.otherwise, whole.protocol),
        widenedInput(own, faults, whole.protocol),
      ];
      return { ...input, ...(is === null ? {} : { is }), ...(wide === null ? {} : { wide }) };
    }),
    steps,
    faults: faults.map(faultToJson),
    answers,
  };
  const lines = Object.entries(file).map(([key, value]) => `  ${JSON.stringify(key)}: ${shown(value)}`);
  return `{\n${lines.join(',\n')}\n}\n`;
}

const faultToJson = ({ name, isThere, readsHigh, readsLow }: TargetFault): object => ({
  fault: name,
  is_there: isThere,
  reads_high: Object.fromEntries(readsHigh),
  reads_low: Object.fromEntries(readsLow),
});

function shown(value: unknown): string {
  if (!Array.isArray(value) || value.length === 0) return JSON.stringify(value);
  return `[\n${value.map((each) => `    ${JSON.stringify(each)}`).join(',\n')}\n  ]`;
}
