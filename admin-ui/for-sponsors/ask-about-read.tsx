import type { NightOfSponsor, ReadOfSponsor } from './types.ts';

/** A sponsor who heard it otherwise asks here. */
export function AskAboutRead(_: { read: ReadOfSponsor; night: NightOfSponsor; onAsked: (sentence: string) => void }) {
  return null;
}
