import type { Protocol } from '../protocol/protocol.ts';
import type { Input } from './inputs.ts';
import type { Logic } from './logic.ts';
import { contradictionsToJson, observationsToJson, otherwiseToJson } from './set-to-json.ts';

interface InputAsJson extends Readonly<Record<string, unknown>> {
  readonly otherwise?: number;
}

/** The document, as far as those who add to it need to know. */
interface LogicAsJson extends Readonly<Record<string, unknown>> {
  readonly inputs: readonly InputAsJson[];
  readonly steps: readonly object[];
  readonly answers: object;
}

/**
 * Logic as a JSON document of its own, after schema/logic.schema.json: all that is needed to ask it about a set.
 *
 * What the protocol is based on is already worked in.
 */
export function logicToJson(logic: Logic, protocol: Protocol): LogicAsJson {
  const { applies, levels, rules, measures } = logic;
  return {
    logic: 1,
    protocol: logic.protocol,
    edition: logic.edition,
    digest: logic.digest,
    levels: protocol.ladder.levels.map(({ name }) => name),
    observations: observationsToJson(protocol),
    contradictions: contradictionsToJson(protocol),
    inputs: logic.inputs.map((input) => inputToJson(input, protocol)),
    steps: logic.steps.map(({ name, is }) => ({ step: name, is })),
    answers: {
      applies,
      levels,
      rules: Object.fromEntries(
        rules.map(({ rule, certain, possible, counts, could, explained, notReliable }) => [
          rule,
          { certain, possible, counts, could, explained, not_reliable: notReliable },
        ]),
      ),
      measures: Object.fromEntries(
        measures.map(({ measure, low, high, topScale, bottomLow, bottomHigh, bottomScale, sure, maybe }) => [
          measure,
          {
            low,
            high,
            scale: String(topScale),
            bottom_low: bottomLow,
            bottom_high: bottomHigh,
            bottom_scale: String(bottomScale),
            sure,
            maybe,
          },
        ]),
      ),
    },
  };
}

function inputToJson({ name, of, owner, part, choice }: Input, protocol: Protocol): InputAsJson {
  const entry =
    of === 'limit'
      ? protocol.limits.get(owner)
      : of === 'observation'
        ? protocol.observations.get(owner)
        : undefined;
  const isNumber = part === 'low' || part === 'high' || part === 'value';
  return {
    input: name,
    of,
    name: owner,
    part,
    ...(choice === null ? {} : { choice }),
    ...(isNumber && entry?.unit ? { unit: entry.unit.ucum } : {}),
    ...(isNumber && entry ? { steps_per_unit: entry.stepsPerUnit.toFraction() } : {}),
    ...otherwiseToJson({ name, of, owner, part, choice }, protocol),
  };
}
