/** Things with a cost, the cheapest first; of equals the one that was put in last. */
export class Heap<T> {
  readonly #items: { readonly item: T; readonly cost: number; readonly turn: number }[] = [];
  #turn = 0;

  push(item: T, cost: number): void {
    const items = this.#items;
    let at = items.push({ item, cost, turn: (this.#turn += 1) }) - 1;
    while (at > 0) {
      const above = (at - 1) >> 1;
      if (!this.#before(at, above)) return;
      this.#swap(at, above);
      at = above;
    }
  }

  pop(): T | undefined {
    const items = this.#items;
    const last = items.length - 1;
    if (last < 0) return undefined;
    this.#swap(0, last);
    const taken = items.pop();
    for (let at = 0; ;) {
      const [left, right] = [2 * at + 1, 2 * at + 2];
      let first = at;
      if (left < items.length && this.#before(left, first)) first = left;
      if (right < items.length && this.#before(right, first)) first = right;
      if (first === at) return taken?.item;
      this.#swap(at, first);
      at = first;
    }
  }

  #before(left: number, right: number): boolean {
    const [one, two] = [this.#items[left], this.#items[right]] as [
      { cost: number; turn: number },
      { cost: number; turn: number },
    ];
    return one.cost < two.cost || (one.cost === two.cost && one.turn > two.turn);
  }

  #swap(left: number, right: number): void {
    const items = this.#items;
    [items[left], items[right]] = [items[right] as never, items[left] as never];
  }
}
