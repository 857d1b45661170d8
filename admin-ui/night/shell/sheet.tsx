import { useContext, useLayoutEffect, useRef } from 'react';
import type { ReactNode } from 'react';
import { KeyLayer, keyName, useLayerInFront } from '../keys.ts';

/** A sheet in front of the desk, opened and closed by the person alone. */
export function Sheet({ title, onClose, children }: { title: string; onClose: () => void; children: ReactNode }) {
  const layer = useContext(KeyLayer) + 1;
  const dialog = useRef<HTMLDialogElement>(null);
  const pressedBeside = useRef(false);
  useLayerInFront(layer);
  useLayoutEffect(() => {
    const shown = dialog.current!;
    if (!shown.open) shown.showModal();
    return () => shown.close();
  }, []);
  return (
    <KeyLayer value={layer}>
      <dialog
        ref={dialog}
        className="desk-sheet"
        aria-label={title}
        onCancel={(event) => {
          event.preventDefault();
          onClose();
        }}
        onPointerDown={(event) => {
          pressedBeside.current = event.target === event.currentTarget && isBeside(event.currentTarget, event);
        }}
        // The empty part of a sheet belongs to it: what is typed there is not lost by a tap.
        onClick={(event) => event.target === event.currentTarget && pressedBeside.current && isBeside(event.currentTarget, event) && onClose()}
      >
        <div className="desk-sheet-inside">
          <div className="desk-sheet-head">
            <h2>{title}</h2>
            <button type="button" className="desk-button" onClick={onClose}>Close <kbd>{keyName('Escape')}</kbd></button>
          </div>
          {children}
        </div>
      </dialog>
    </KeyLayer>
  );
}

/** Whether a tap came down on the backdrop, outside the sheet's own box. */
function isBeside(sheet: HTMLElement, { clientX, clientY }: { clientX: number; clientY: number }): boolean {
  const { left, right, top, bottom } = sheet.getBoundingClientRect();
  return clientX < left || clientX > right || clientY < top || clientY > bottom;
}
