import { useContext, useLayoutEffect, useRef } from 'react';
import type { ReactNode } from 'react';
import { KeyLayer, keyName, useLayerInFront } from '../keys.ts';

/** A sheet in front of the desk, opened and closed by the person alone. */
export function Sheet({ title, onClose, children }: { title: string; onClose: () => void; children: ReactNode }) {
  const layer = useContext(KeyLayer) + 1;
  const dialog = useRef<HTMLDialogElement>(null);
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
        onClick={(event) => event.target === dialog.current && onClose()}
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
