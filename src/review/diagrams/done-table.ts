/**
 * What was worked out already, by an operation and the two diagrams that it was asked of: whole numbers all. A table of its own,
 * because a map of such keys takes several times as long and as much memory.
 */
export class DoneTable {
  #rows = new Int32Array(4 * 1024).fill(-1);
  #count = 0;

  /** −1 when it was not. */
  get(operation: number, left: number, right: number): number {
    return this.#rows[this.#placeOf(operation, left, right) + 3] as number;
  }

  set(operation: number, left: number, right: number, made: number): void {
    if (this.#count * 8 > this.#rows.length) this.#grow();
    const place = this.#placeOf(operation, left, right);
    if (this.#rows[place + 3] === -1) this.#count += 1;
    this.#rows.set([operation, left, right, made], place);
  }

  /** Where an entry stands, or would stand. */
  #placeOf(operation: number, left: number, right: number): number {
    const rows = this.#rows;
    const mask = rows.length / 4 - 1;
    let at =
      (Math.imul(left, 0x9e3779b1) ^ Math.imul(right, 0x85ebca6b) ^ Math.imul(operation, 0xc2b2ae35)) >>> 0;
    for (at = (at ^ (at >>> 15)) & mask; ; at = (at + 1) & mask) {
      const place = at * 4;
      if (rows[place + 3] === -1) return place;
      if (rows[place] === operation && rows[place + 1] === left && rows[place + 2] === right) return place;
    }
  }

  #grow(): void {
    const before = this.#rows;
    this.#rows = new Int32Array(before.length * 2).fill(-1);
    for (let at = 0; at < before.length; at += 4) {
      if (before[at + 3] === -1) continue;
      const [operation, left, right] = [
        before[at] as number,
        before[at + 1] as number,
        before[at + 2] as number,
      ];
      this.#rows.set(before.subarray(at, at + 4), this.#placeOf(operation, left, right));
    }
  }
}
