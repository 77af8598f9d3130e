import type { Code, Facts } from '../problems/catalogue.ts';
import type { Cell } from './text-to-table.ts';

/** Tells what is wrong with a cell of a table. */
export type TellAt = <C extends Code>(code: C, cell: Cell, facts: Facts<C>, near?: string | null) => void;
