import { useSearchParams } from 'react-router';

/** What a report is asked for; it stands in the address, so that a link opens the same report. */
export function useAsked<Name extends string>(names: readonly Name[]): { asked: Partial<Record<Name, string>>; query: string; change: (name: Name, value: string) => void } {
  const [search, setSearch] = useSearchParams();
  const given = names.flatMap((name) => {
    const value = search.get(name);
    return value ? [[name, value] as const] : [];
  });
  return {
    asked: Object.fromEntries(given) as Partial<Record<Name, string>>,
    query: new URLSearchParams(given as unknown as [string, string][]).toString(),
    change: (name, value) =>
      setSearch(
        (before) => {
          const after = new URLSearchParams(before);
          if (value) after.set(name, value);
          else after.delete(name);
          return after;
        },
        { replace: true },
      ),
  };
}
