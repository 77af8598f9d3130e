import { lookForUnguarded, type UnguardedChange, type UnguardedSearch } from '../../../../src/index.ts';
import type { UnguardedSoFar } from '../messages.ts';

/** So long, in milliseconds, is looked before an answer is given, so that the page hears how far it is. */
const slice = 200;

type Guarded = Parameters<typeof lookForUnguarded>[0];

/** A search for unguarded changes that goes on from question to question, until the texts are others. */
export class UnguardedSteps {
  private version = -1;
  private search: UnguardedSearch | null = null;
  private looked = 0;
  private found: UnguardedChange[] = [];

  goOn(version: number, guarded: () => Guarded | null): UnguardedSoFar {
    if (version !== this.version) {
      const given = guarded();
      this.search = given && lookForUnguarded(given);
      this.version = version;
      this.looked = 0;
      this.found = [];
    }
    const { search } = this;
    if (!search) return { looked: 0, of: 0, found: [] };
    const end = performance.now() + slice;
    while (this.looked < search.of && performance.now() < end) {
      const step = search.steps.next();
      if (step.done === true) break;
      this.looked += 1;
      if (step.value) this.found.push(step.value);
    }
    return { looked: this.looked, of: search.of, found: [...this.found] };
  }
}
