import { CommandButton } from '../forms/command-button.tsx';
import { CountInput } from '../inputs/count-input.tsx';
import { windowName } from '../seasons/sports.ts';
import { count } from '../words/count.ts';
import type { WindowPlaces } from './types.ts';

interface Props {
  sport: string;
  windowKind: string;
  /** null: all reads of the window */
  group: string | null;
  said: WindowPlaces | undefined;
  /** what holds while nothing is said */
  otherwise: number;
}

/** Says how many reads the window holds, changes it, or goes back to what holds otherwise. */
export function SayButtons({ sport, windowKind, group, said, otherwise }: Props) {
  const what = group === null ? windowName(windowKind) : `${windowName(windowKind)}, ${group}`;
  const body = (values: Record<string, unknown>) => ({ places: values['places'], ...(said ? {} : { sport, windowKind, placeGroup: group }) });
  return (
    <>
      <CommandButton
        label={said ? 'Change' : 'Say otherwise'}
        title={`How many reads: ${what}`}
        explains="Plans, placements and what is left to sell go by it from now on. Reads that have a place keep it."
        path={said ? `/window-places/${said.id}` : '/window-places'}
        method={said ? 'PATCH' : 'POST'}
        {...(said ? { version: said.version } : {})}
        defaults={{ places: said?.places ?? otherwise }}
        body={body}
        confirmLabel="Keep it"
        success="It is kept."
        variant="text"
      >
        <CountInput source="places" label="Reads in one such window" max={20} required />
      </CommandButton>
      {said && (
        <CommandButton
          label="Go back"
          title={`Go back for ${what}?`}
          explains={`It holds ${count(otherwise, 'read')} again.`}
          path={`/window-places/${said.id}`}
          method="DELETE"
          success="It is as it was."
          variant="text"
        />
      )}
    </>
  );
}
