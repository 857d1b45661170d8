/** A solver counts a row as kept that it breaks by a millionth, and a sum of them is off by more. Common practice, no source. */
const UNSURE = 1e-3;

/** What whole costs cannot go below, from a bound that was worked out in floating point: rather one too low than one that is not true. */
export const wholeBound = (bound: number): number => Math.max(0, Math.ceil(bound - UNSURE));
