/** What a text may have; beyond it the text is refused before anything else is looked at. */
export const limits = Object.freeze({
  /** 1 MiB, in UTF-8; a text of exactly this size is read. */
  bytes: 1_048_576,
  /** Maps and lists inside each other; a part this deep is read. */
  depth: 64,
  /** Keys, values, marks and line ends of a YAML text. A protocol of a thousand rules has about 120,000. */
  parts: 150_000,
  /** Digits of a number, without zeros in front: what a computer keeps exactly. */
  digits: 15,
  /** So many problems of one text are told at once. */
  problems: 100,
});
