const numberFrom = (name: string, otherwise: number): number => Number(process.env[name] ?? otherwise);

/** How many protocols. */
export const runs = numberFrom('AGREEMENT_RUNS', 300);
/** How many sets each. */
export const sets = numberFrom('AGREEMENT_SETS', 10);
export const seed = numberFrom('AGREEMENT_SEED', 20_260_302);
