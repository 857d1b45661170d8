/** What belongs together, in the order in which it first appears. */
export function grouped<Of, Key>(all: Iterable<Of>, keyOf: (one: Of) => Key): Map<Key, Of[]> {
  const groups = new Map<Key, Of[]>();
  for (const one of all) {
    const key = keyOf(one);
    const group = groups.get(key);
    if (group === undefined) groups.set(key, [one]);
    else group.push(one);
  }
  return groups;
}
