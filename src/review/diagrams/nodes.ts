/** That a function of sets has too many pieces to be held. Caught where the question is asked; nobody else sees it. */
export class TooManyPieces extends Error {}

/** So many stretches of values are held in all. */
const mostStretches = 3_000_000;

/** The place of an end among variables: after every one of them. */
export const atEnd = 0x7fffffff;

/** Not there. */
const nothing = -1;

/**
 * The nodes of decision diagrams, each held once: two that are built alike have one number. They stand one after the other in flat
 * arrays, because hundreds of thousands of small lists take several times as long and as much memory.
 */
export class Nodes {
  #variables = new Int32Array(1024);
  /** Where the stretches of each node begin; they end where those of the next one do. */
  #starts = new Int32Array(1025);
  #values = new Float64Array(1024);
  #ends = new Int32Array(4096);
  #kids = new Int32Array(4096);
  #count = 0;
  /** The numbers of the nodes by how they are built; as many places as a power of two. */
  #table = new Int32Array(2048).fill(nothing);
  /** Stretches of the nodes that are being put together, the innermost last. */
  #newEnds = new Int32Array(1024);
  #newKids = new Int32Array(1024);
  #top = 0;

  /** Which variable is asked first; `atEnd` when none is. */
  variableOf(node: number): number {
    return this.#variables[node] as number;
  }

  /** The number of an end; of anything else it means nothing. */
  valueOf(node: number): number {
    return this.#values[node] as number;
  }

  /** Where the first stretch of a node stands, for `endAt` and `kidAt`; its last one stands before `first(node + 1)`. */
  first(node: number): number {
    return this.#starts[node] as number;
  }

  /** The last piece of a stretch. */
  endAt(stretch: number): number {
    return this.#ends[stretch] as number;
  }

  kidAt(stretch: number): number {
    return this.#kids[stretch] as number;
  }

  /** An end with a value; whoever makes it sees to it that there is one of each value. */
  addEnd(value: number): number {
    this.#makeRoom(this.#count + 1, 0);
    return this.#add(atEnd, 0, value);
  }

  /** Begins a node; what it returns is given back to `made`. Another one may be put together before that. */
  begin(): number {
    return this.#top;
  }

  /** The next stretch of the innermost node that was begun. One that goes on as the one before it is one with it. */
  push(begun: number, end: number, kid: number): void {
    if (this.#top > begun && this.#newKids[this.#top - 1] === kid) {
      this.#newEnds[this.#top - 1] = end;
      return;
    }
    if (this.#top === this.#newEnds.length) {
      this.#newEnds = twiceAsLong(this.#newEnds);
      this.#newKids = twiceAsLong(this.#newKids);
    }
    this.#newEnds[this.#top] = end;
    this.#newKids[this.#top] = kid;
    this.#top += 1;
  }

  /** The node of the stretches since it was begun. */
  made(begun: number, variable: number): number {
    const length = this.#top - begun;
    this.#top = begun;
    if (length === 1) return this.#newKids[begun] as number;
    this.#makeRoom(this.#count + 1, this.first(this.#count) + length);
    let at = this.#hash(variable, this.#newEnds, this.#newKids, begun, length);
    for (let known = nothing; (known = this.#table[at] as number) !== nothing;) {
      if (this.#isMade(known, variable, begun, length)) return known;
      at = (at + 1) & (this.#table.length - 1);
    }
    const node = this.#add(variable, length, NaN);
    this.#table[at] = node;
    return node;
  }

  #isMade(node: number, variable: number, begun: number, length: number): boolean {
    const start = this.first(node);
    if (this.#variables[node] !== variable || this.first(node + 1) - start !== length) return false;
    for (let index = 0; index < length; index += 1) {
      if (this.#kids[start + index] !== this.#newKids[begun + index]) return false;
      if (this.#ends[start + index] !== this.#newEnds[begun + index]) return false;
    }
    return true;
  }

  /** Adds a node of the stretches that stand above the top. */
  #add(variable: number, length: number, value: number): number {
    const node = this.#count;
    const start = this.first(node);
    if (start + length + node > mostStretches) throw new TooManyPieces();
    this.#ends.set(this.#newEnds.subarray(this.#top, this.#top + length), start);
    this.#kids.set(this.#newKids.subarray(this.#top, this.#top + length), start);
    this.#variables[node] = variable;
    this.#values[node] = value;
    this.#starts[node + 1] = start + length;
    this.#count += 1;
    return node;
  }

  #makeRoom(nodes: number, stretches: number): void {
    while (stretches > this.#ends.length) {
      this.#ends = twiceAsLong(this.#ends);
      this.#kids = twiceAsLong(this.#kids);
    }
    if (nodes < this.#variables.length) return;
    this.#variables = twiceAsLong(this.#variables);
    this.#starts = twiceAsLong(this.#starts);
    const values = new Float64Array(this.#values.length * 2);
    values.set(this.#values);
    this.#values = values;
    this.#rehash();
  }

  /** Twice as many places for twice as many nodes. */
  #rehash(): void {
    const old = this.#table;
    this.#table = new Int32Array(old.length * 2).fill(nothing);
    for (const node of old) {
      if (node === nothing) continue;
      const start = this.first(node);
      const length = this.first(node + 1) - start;
      let at = this.#hash(this.variableOf(node), this.#ends, this.#kids, start, length);
      while (this.#table[at] !== nothing) at = (at + 1) & (this.#table.length - 1);
      this.#table[at] = node;
    }
  }

  #hash(variable: number, ends: Int32Array, kids: Int32Array, from: number, length: number): number {
    let hash = variable;
    for (let at = from; at < from + length; at += 1)
      hash = (Math.imul(hash, 31) + (ends[at] as number) + Math.imul(kids[at] as number, 0x9e3779b1)) | 0;
    return (hash ^ (hash >>> 15)) & (this.#table.length - 1);
  }
}

function twiceAsLong(list: Int32Array<ArrayBuffer>): Int32Array<ArrayBuffer> {
  const made = new Int32Array(list.length * 2);
  made.set(list);
  return made;
}
