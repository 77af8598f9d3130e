/** The two texts of a folder: what is decided, and what is expected of it. */
export const parts = ['protocol', 'cases'] as const;

export type Part = (typeof parts)[number];

export type Texts = Readonly<Record<Part, string>>;

/** As the file is called; a ward policy stands where a protocol stands. */
export const fileOf = (part: Part, kind: 'protocol' | 'ward'): string =>
  part === 'cases' ? 'cases.yaml' : `${kind}.yaml`;
