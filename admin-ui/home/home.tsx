import { Box } from '@mui/material';
import { Title } from 'react-admin';
import { useServer } from '../api/use-server.ts';
import { iMay } from '../session/rights.ts';
import { Reading } from '../show/reading.tsx';
import { AskedSheet } from './asked-sheet.tsx';
import { AtRiskSheet } from './at-risk-sheet.tsx';
import { BehindSheet } from './behind-sheet.tsx';
import { HeldSheet } from './held-sheet.tsx';
import { NextNights } from './next-nights.tsx';
import { ProofSheet } from './proof-sheet.tsx';
import { RecentSheet } from './recent-sheet.tsx';
import { SeasonFigures } from './season-figures.tsx';
import type { Home } from './types.ts';
import { UnpaidSheet } from './unpaid-sheet.tsx';

/** Four questions: which nights are next, who is behind, what is unpaid, what changed. */
export function HomePage() {
  const asked = useServer<Home>('/home');
  return (
    <>
      <Title title="Home" />
      <Reading of={asked}>
        {(home) => (
          <>
            <NextNights nights={home.nights ?? []} />
            {iMay('invoices', 'list') && home.figures && <SeasonFigures figures={home.figures} />}
            <Box sx={{ display: 'grid', gap: 2, gridTemplateColumns: { xs: '1fr', lg: '1fr 1fr' }, alignItems: 'start' }}>
              <Box sx={{ minWidth: 0 }}>
                {iMay('at-risk', 'list') && <AtRiskSheet />}
                {iMay('contracts', 'list') && <BehindSheet lines={home.behind ?? []} />}
                {iMay('read-disputes', 'list') && <AskedSheet lines={home.asked ?? []} />}
                <ProofSheet proof={home.proof} />
                {iMay('contracts', 'list') && <HeldSheet lines={home.held ?? []} />}
                {iMay('invoices', 'list') && <UnpaidSheet lines={home.unpaid ?? []} openMoney={home.openMoney} />}
              </Box>
              <RecentSheet lines={home.recent ?? []} />
            </Box>
          </>
        )}
      </Reading>
    </>
  );
}
