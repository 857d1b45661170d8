import { MoveDialog } from './move-dialog.tsx';
import { ReasonDialog } from './reason-dialog.tsx';
import type { BoardView } from './types.ts';
import type { Asking, Deeds } from './use-deeds.ts';

/** The dialog that the board has open, if it has one. */
export function BoardDialogs({ asking, view, deeds, onClose }: { asking: Asking | null; view: BoardView; deeds: Deeds; onClose: () => void }) {
  if (asking === null) return null;
  if ('reasonFor' in asking) {
    const { card, to, sentences } = asking.reasonFor;
    return <ReasonDialog sentences={sentences} onClose={onClose} onReason={(reason) => { onClose(); deeds.move(card, to, reason); }} />;
  }
  const what = 'move' in asking ? { card: asking.move } : asking.place;
  return <MoveDialog what={what} view={view} onClose={onClose} onChosen={(to, reason) => { onClose(); deeds.place(what, to, reason); }} />;
}
