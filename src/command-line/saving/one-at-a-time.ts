/**
 * Lets one task after another run, in the order in which they asked. A task that fails does not stop those after it.
 *
 * `const inTurn = oneAtATime(); inTurn(first); inTurn(second)`: `second` begins once `first` has ended.
 */
export function oneAtATime(): <T>(task: () => Promise<T>) => Promise<T> {
  let last: Promise<unknown> = Promise.resolve();
  return async (task) => {
    const mine = last.then(task, task);
    last = mine;
    return mine;
  };
}
