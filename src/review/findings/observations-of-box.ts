import type { Protocol } from '../../protocol/protocol.ts';
import type { Box } from '../box.ts';

/** The observations that a set gives, in the order of the protocol. */
export const observationsOfBox = ({ absent }: Box, { observations }: Protocol): string[] =>
  [...observations.keys()].filter((name) => !absent?.has(name));
