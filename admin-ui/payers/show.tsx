import { ReferenceField, TextField } from 'react-admin';
import { dayText } from '../format/day.ts';
import { Facts } from '../show/facts.tsx';
import { Section } from '../show/section.tsx';
import { ShowPage } from '../show/show-page.tsx';
import { Certificates } from './certificates.tsx';
import { iMay } from '../session/rights.ts';
import { ChargeButton } from './charge-button.tsx';
import type { Payer } from './types.ts';

export const PayerShow = () => (
  <ShowPage<Payer> title={(payer) => payer.name} actions={(payer) => iMay('invoices', 'create') && <ChargeButton payer={payer} />}>
    {(payer) => (
      <>
      <Section title="Payer">
        <Facts
          facts={[
            ['Name on the invoice', payer.name],
            ['Pays for', payer.sponsorId && <ReferenceField key="sponsor" source="sponsorId" reference="sponsors" link="show"><TextField source="name" sx={{ fontSize: 'inherit' }} /></ReferenceField>],
            ['E-mail', payer.email],
            ['Address', payer.address],
            ['Exemption number', payer.exemptionNumber],
            ['Exemption ends', payer.exemptionExpiresOn && dayText(payer.exemptionExpiresOn)],
          ]}
        />
      </Section>
      <Certificates payer={payer} />
      </>
    )}
  </ShowPage>
);
