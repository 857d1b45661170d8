import { Checkbox, FormControlLabel } from '@mui/material';
import { dayText } from '../format/day.ts';
import { moneyText } from '../format/money.ts';
import { Rows } from '../lists/rows.tsx';
import { takenByMe } from '../session/taken-by-me.ts';
import { byWhat } from '../words/choices.ts';
import type { DrawerLine } from './types.ts';

/** What lies in the drawer, the oldest first; what is ticked goes on the slip. */
export function DrawerRows({ lines, leftOut, onTurn }: { lines: readonly DrawerLine[]; leftOut: ReadonlySet<string>; onTurn: (id: string) => void }) {
  return (
    <Rows<DrawerLine>
      label="In the drawer"
      rows={lines}
      columns={[
        {
          label: 'On the slip',
          show: (line) => (
            <FormControlLabel
              disabled={takenByMe(line)}
              control={<Checkbox checked={!leftOut.has(line.id) && !takenByMe(line)} onChange={() => onTurn(line.id)} slotProps={{ input: { 'aria-label': `${line.number} of ${line.payerName}, ${moneyText(line.amountCents)}` } }} />}
              label={line.fromWhom ?? line.payerName}
              sx={{ '& .MuiFormControlLabel-label': { fontWeight: 600 } }}
            />
          ),
        },
        { label: 'In', show: byWhat },
        { label: 'Received', show: (line) => dayText(line.receivedOn) },
        { label: 'Taken by', show: (line) => (takenByMe(line) ? 'You took this; another deposits it' : (line.takenByName ?? '–')) },
        { label: 'Receipt', show: (line) => line.receiptNumber ?? '–' },
        { label: 'Amount', numeric: true, show: (line) => moneyText(line.amountCents) },
      ]}
    />
  );
}
