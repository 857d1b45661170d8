import { department, knownMe } from './me.ts';

/** Whether the person signed in took this money, so that another deposits it, applies it and pays it back; not where the department lets one do both. */
export function takenByMe({ takenByPersonId }: { takenByPersonId: string | null }): boolean {
  return takenByPersonId !== null && takenByPersonId === knownMe()?.person.id && department().settings?.takerMayPost !== true;
}
