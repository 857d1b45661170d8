type Fields = Record<string, unknown>;

const same = (left: unknown, right: unknown): boolean => JSON.stringify(left ?? null) === JSON.stringify(right ?? null);

/** The fields of a form that differ from the record it started with; an emptied field is null. */
export function changesOf(data: Fields, before: Fields = {}): Fields {
  const changed: Fields = {};
  for (const [key, value] of Object.entries(data)) {
    if (!same(value, before[key])) changed[key] = value === undefined || value === '' ? null : value;
  }
  return changed;
}

/** A new record without the fields left empty, down to the rows of its lists. */
export function withoutNothing<T>(value: T): T {
  if (Array.isArray(value)) return value.map((one) => withoutNothing(one)) as T;
  if (value === null || typeof value !== 'object') return value;
  const kept: Fields = {};
  for (const [key, field] of Object.entries(value as Fields)) {
    if (field !== undefined && field !== null && field !== '') kept[key] = withoutNothing(field);
  }
  return kept as T;
}

/** Only the named fields of a record, empty ones left out. */
export function only<T extends object>(value: T, ...keys: readonly string[]): Fields {
  const fields = value as Fields;
  return withoutNothing(Object.fromEntries(keys.map((key) => [key, fields[key]])));
}
