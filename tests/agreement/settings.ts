const numberFrom = (name: string, otherwise: number): number => Number(process.env[name] ?? otherwise);

/** How many protocols. */
export const runs = numberFrom('AGREEMENT_RUNS', 270);
/** How many of them for the targets, which agree with each other quickly or not at all. */
export const targetRuns = numberFrom('AGREEMENT_RUNS', 60);
/** How many sets each. */
export const sets = numberFrom('AGREEMENT_SETS', 10);
export const seed = numberFrom('AGREEMENT_SEED', 20_260_302);
