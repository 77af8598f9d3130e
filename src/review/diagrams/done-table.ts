/** So many results are remembered: 16 bytes each. */
const most = 1 << 20;

/**
 * What was worked out already, by an operation and the two diagrams that it was asked of: whole numbers all. A table of its own,
 * because a map of such keys takes several times as long and as much memory. Once it is full a result takes the place of another, which
 * is worked out again where it is asked for.
 */
export class DoneTable {
  #rows = new Int32Array(4 * 1024).fill(-1);
  #count = 0;

  /** −1 when it is not known. */
  get(operation: number, left: number, right: number): number {
    const rows = this.#rows;
    const place = this.#placeOf(operation, left, right);
    return rows[place] === operation && rows[place + 1] === left && rows[place + 2] === right
      ? (rows[place + 3] as number)
      : -1;
  }

  set(operation: number, left: number, right: number, made: number): void {
    this.#count += 1;
    if (this.#count * 8 > this.#rows.length && this.#rows.length < most * 4) this.#grow();
    this.#put(operation, left, right, made);
  }

  #put(operation: number, left: number, right: number, made: number): void {
    const rows = this.#rows;
    const place = this.#placeOf(operation, left, right);
    rows[place] = operation;
    rows[place + 1] = left;
    rows[place + 2] = right;
    rows[place + 3] = made;
  }

  #placeOf(operation: number, left: number, right: number): number {
    const mixed =
      Math.imul(left, 0x9e3779b1) ^ Math.imul(right, 0x85ebca6b) ^ Math.imul(operation, 0xc2b2ae35);
    return ((mixed ^ (mixed >>> 15)) & (this.#rows.length / 4 - 1)) * 4;
  }

  #grow(): void {
    const before = this.#rows;
    this.#rows = new Int32Array(before.length * 4).fill(-1);
    for (let at = 0; at < before.length; at += 4) {
      if (before[at + 3] === -1) continue;
      this.#put(
        before[at] as number,
        before[at + 1] as number,
        before[at + 2] as number,
        before[at + 3] as number,
      );
    }
  }
}
