import { dayText } from './day.ts';

/** A sentence of the server's with its days as they are read here: "Due through Nov 30, 2026." */
export const sentenceText = (sentence: string): string => sentence.replace(/\b\d{4}-\d{2}-\d{2}\b/g, (day) => dayText(day));
