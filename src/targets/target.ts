import type { Operator } from '../logic/operators.ts';

/** What a target makes of each operator. A target that forgets one does not compile. */
export type PerOperator<Part> = { readonly [O in Operator]: (parts: readonly Part[]) => Part };
