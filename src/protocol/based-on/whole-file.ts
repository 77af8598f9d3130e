import type * as File from '../../shape/generated/types.ts';

/** A protocol's file with what it is based on worked in: it lists observations and has rules of its own or of its parent. */
export type WholeFile = File.ProtocolFile & Required<Pick<File.ProtocolFile, 'observations' | 'rules'>>;
