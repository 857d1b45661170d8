import { useServer } from '../../api/use-server.ts';
import { Reading } from '../../show/reading.tsx';
import type { Contract } from '../types.ts';
import { BenefitsSection } from './benefits-section.tsx';
import { LinesSection } from './lines-section.tsx';
import { NightsSection } from './nights-section.tsx';
import { SumSection } from './sum-section.tsx';
import type { Fulfillment } from './types.ts';
import { WindowsSection } from './windows-section.tsx';

/** What was promised, what was given and what comes next. */
export function FulfillmentSheet({ contract }: { contract: Contract }) {
  const asked = useServer<Fulfillment>(`/contracts/${contract.id}/fulfillment`);
  return (
    <Reading of={asked}>
      {(fulfillment) => (
        <>
          <SumSection fulfillment={fulfillment} />
          <LinesSection fulfillment={fulfillment} />
          <NightsSection fulfillment={fulfillment} />
          <WindowsSection windows={fulfillment.windows} />
          {fulfillment.benefits.length > 0 && <BenefitsSection benefits={fulfillment.benefits} />}
        </>
      )}
    </Reading>
  );
}
