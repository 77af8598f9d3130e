/** A part of an outcome while it is made: keys that are there only sometimes are added one by one, as spreading costs more. */
export type Writable<T> = { -readonly [K in keyof T]: T[K] };
