/** Whether two pieces of a checked protocol are the same through and through: values, order, and what is lacking. */
export function same(left: unknown, right: unknown): boolean {
  if (Object.is(left, right)) return true;
  if (typeof left !== 'object' || typeof right !== 'object' || left === null || right === null) return false;
  if (left instanceof Map || right instanceof Map)
    return left instanceof Map && right instanceof Map && same([...left], [...right]);
  if (Array.isArray(left) !== Array.isArray(right)) return false;
  const [own, other] = [Object.entries(left), new Map(Object.entries(right))];
  return (
    own.length === other.size && own.every(([key, value]) => other.has(key) && same(value, other.get(key)))
  );
}

/** What was read, when it would be said in exactly these sentences; else null: nothing is read that is nearly right. */
export const wordForWord = <Read>(
  read: Read | null,
  sentences: unknown,
  say: (read: Read) => unknown,
): Read | null => (read !== null && same(say(read), sentences) ? read : null);
