import type { Logic } from '../../logic/logic.ts';
import { answersAlone } from '../../logic/used-steps.ts';
import type { Protocol } from '../../protocol/protocol.ts';
import { boundsFunction, measuresFunction } from './calculations.ts';
import { Code, code } from './code.ts';
import { writeHead } from './write-head.ts';
import { moduleInputs } from './module-inputs.ts';
import { reading } from './runtime.ts';
import { toBounds } from './runtime-bounds.ts';
import { toRows } from './runtime-rows.ts';
import { faultFunctions } from './write-faults.ts';
import { writeCalls } from './write-calls.ts';
import {
  refuseFunction,
  takeSetFunction,
  writeBoundsFunction,
  writeLookBacksFunction,
} from './write-reading.ts';
import { writeTypes } from './write-types.ts';

/**
 * A protocol as a TypeScript module that needs nothing beside itself. A complete set goes straight through; any other over its bounds.
 *
 * What the protocol is based on is already worked in.
 */
export function logicToTypescript(logic: Logic, protocol: Protocol): string {
  const inputs = moduleInputs(answersAlone(logic), protocol);
  const own = [
    takeSetFunction(inputs),
    refuseFunction(inputs),
    writeBoundsFunction(inputs),
    writeLookBacksFunction(inputs),
    boundsFunction(inputs),
    measuresFunction(inputs),
    ...faultFunctions(inputs),
    ...writeCalls(inputs),
  ];
  const parts = [writeHead(inputs), writeTypes(inputs), ...used(own), ...own];
  return `${Code.joined(parts, '\n\n').text.replaceAll(/\n{3,}/g, '\n\n')}\n`;
}

/** A function stands after those that it calls. */
const shared = [...reading, ...toRows, ...toBounds];

/** The shared functions that are called, directly or by each other. */
function used(own: readonly Code[]): readonly Code[] {
  let text = code`${Code.joined(own, '\n')}`.text;
  const chosen = new Set<string>();
  for (const [name, body] of [...shared].reverse()) {
    if (!text.includes(`${name}(`)) continue;
    chosen.add(name);
    text += body.text;
  }
  return shared.filter(([name]) => chosen.has(name)).map(([, body]) => body);
}
