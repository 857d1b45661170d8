import type { ReactNode } from 'react';
import { InnerBrowserWarning } from './inner-browser-warning.tsx';

/** The page before a night is open. */
export function Frame({ children }: { children: ReactNode }) {
  return (
    <>
      <header className="desk-bar"><span className="desk-title">Rafterline table</span></header>
      <main className="desk-opening">
        <InnerBrowserWarning />
        {children}
      </main>
    </>
  );
}
