import { createContext, useContext, useMemo } from 'react';
import type { ReactNode } from 'react';
import type { SponsorPage } from './types.ts';

/** Days, hours and amounts as the department writes them, wherever the sponsor's phone is. */
export interface Written {
  /** "December 4, 2026" */
  day: (day: string) => string;
  /** "Fri, Dec 4, 2026" */
  night: (day: string) => string;
  /** "December 2026" of a month or a day of it */
  month: (month: string) => string;
  /** "7:14 PM" */
  clock: (at: string) => string;
  /** "December 4, 2026" of a moment, in the department's zone */
  dayOf: (at: string) => string;
  money: (amountCents: number) => string;
}

type Place = Pick<SponsorPage, 'locale' | 'zone' | 'currency'>;

const noon = (day: string): number => Date.parse(`${day.slice(0, 10)}T12:00:00Z`);

export function writtenIn({ locale, zone, currency }: Place): Written {
  const long = new Intl.DateTimeFormat(locale, { day: 'numeric', month: 'long', year: 'numeric', timeZone: 'UTC' });
  const weekday = new Intl.DateTimeFormat(locale, { weekday: 'short', day: 'numeric', month: 'short', year: 'numeric', timeZone: 'UTC' });
  const month = new Intl.DateTimeFormat(locale, { month: 'long', year: 'numeric', timeZone: 'UTC' });
  const clock = new Intl.DateTimeFormat(locale, { hour: 'numeric', minute: '2-digit', timeZone: zone });
  const here = new Intl.DateTimeFormat(locale, { day: 'numeric', month: 'long', year: 'numeric', timeZone: zone });
  const money = new Intl.NumberFormat(locale, { style: 'currency', currency });
  return {
    day: (day) => long.format(noon(day)),
    night: (day) => weekday.format(noon(day)),
    month: (of) => month.format(noon(`${of.slice(0, 7)}-15`)),
    clock: (at) => clock.format(Date.parse(at)),
    dayOf: (at) => here.format(Date.parse(at)),
    money: (amountCents) => money.format(amountCents / 100),
  };
}

const Here = createContext<Written>(writtenIn({ locale: 'en-US', zone: 'UTC', currency: 'USD' }));

export const useWritten = (): Written => useContext(Here);

export function WrittenAt({ place: { locale, zone, currency }, children }: { place: Place; children: ReactNode }) {
  const written = useMemo(() => writtenIn({ locale, zone, currency }), [locale, zone, currency]);
  return <Here.Provider value={written}>{children}</Here.Provider>;
}

/** "1 night", "12 nights". */
export const many = (count: number, one: string, several = `${one}s`): string => `${count} ${count === 1 ? one : several}`;
