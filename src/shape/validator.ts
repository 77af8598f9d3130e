/** One failure that a generated validator reports. */
export interface Failure {
  /** Where the value stands, as a JSON Pointer. */
  readonly instancePath: string;
  /** The word of the schema that does not hold: `type`, `required`, … */
  readonly keyword: string;
  readonly params: Readonly<Record<string, unknown>>;
}

/** A generated validator: whether a plain value has the shape. What failed stands under `errors`, until the next call. */
export interface Validator {
  (plain: unknown): boolean;
  readonly errors?: readonly Failure[] | null;
}
