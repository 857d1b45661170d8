import { MenuItem, TextField } from '@mui/material';
import { useState } from 'react';
import { Title } from 'react-admin';
import { useLocation } from 'react-router';
import { useServer } from '../api/use-server.ts';
import { EmptyList } from '../lists/empty-list.tsx';
import { takenByMe } from '../session/taken-by-me.ts';
import { BackLink } from '../show/back-link.tsx';
import { Reading } from '../show/reading.tsx';
import { Section } from '../show/section.tsx';
import { sellersOf, type Given } from './chosen.ts';
import { CountForm } from './count-form.tsx';
import { DrawerRows } from './drawer-rows.tsx';
import type { DrawerLine } from './types.ts';

function Slip({ lines, given }: { lines: readonly DrawerLine[]; given: Given }) {
  const sellers = sellersOf(lines);
  const [sellerId, setSellerId] = useState(sellers.some(({ id }) => id === given.sellerId) ? given.sellerId! : sellers[0]!.id);
  const [leftOut, setLeftOut] = useState<ReadonlySet<string>>(new Set(given.paymentIds ? lines.filter(({ id }) => !given.paymentIds!.includes(id)).map(({ id }) => id) : []));
  const mine = lines.filter((line) => line.sellerId === sellerId);
  const chosen = mine.filter((line) => !leftOut.has(line.id) && !takenByMe(line));
  const turn = (id: string) => setLeftOut(new Set(leftOut.has(id) ? [...leftOut].filter((one) => one !== id) : [...leftOut, id]));
  return (
    <>
      <Section title="In the drawer" lead="What is ticked goes to the bank on one slip. A receipt goes there through other hands than those that took it, unless the department says otherwise.">
        {sellers.length > 1 && (
          <TextField select label="Seller of record" value={sellerId} onChange={(event) => setSellerId(event.target.value)} sx={{ minWidth: 240, mb: 2 }} helperText="Each seller’s drawer has a slip of its own">
            {sellers.map(({ id, name }) => <MenuItem key={id} value={id}>{name}</MenuItem>)}
          </TextField>
        )}
        <DrawerRows lines={mine} leftOut={leftOut} onTurn={turn} />
      </Section>
      <Section title="Counted">
        {chosen.length === 0 ? <EmptyList>{mine.every(takenByMe) ? 'You took all of it yourself; another makes the slip.' : 'Tick at least one payment above.'}</EmptyList> : <CountForm key={sellerId} sellerId={sellerId} lines={chosen} />}
      </Section>
    </>
  );
}

/** Takes what lies in the drawer of one seller to the bank. */
export function DepositSlipCreate() {
  const { state } = useLocation() as { state: Given | null };
  const asked = useServer<{ data: DrawerLine[] }>('/drawer');
  return (
    <>
      <Title title="Make a deposit slip" />
      <BackLink />
      <Reading of={asked}>
        {({ data }) => (data.length === 0 ? <EmptyList>The drawer is empty: everything that was taken in is at the bank. Receipts and checks entered in a row come to lie here.</EmptyList> : <Slip lines={data} given={state ?? {}} />)}
      </Reading>
    </>
  );
}
