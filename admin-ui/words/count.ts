import { department } from '../session/me.ts';

/** A number with its noun: "1 read", "24 reads", "no reads". */
export function count(number: number, one: string, many = `${one}s`): string {
  if (number === 0) return `no ${many}`;
  return `${new Intl.NumberFormat(department().locale).format(number)} ${number === 1 ? one : many}`;
}

export const numberText = (number: number | null | undefined): string =>
  number === null || number === undefined ? '–' : new Intl.NumberFormat(department().locale).format(number);
