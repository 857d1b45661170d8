import { Box, TextField } from '@mui/material';
import { Go } from '../../fields/go.tsx';
import { moneyText } from '../../format/money.ts';
import { EmptyList } from '../../lists/empty-list.tsx';
import { Rows } from '../../lists/rows.tsx';
import type { ContractChoice, RolledContract } from './types.ts';

const CHOICE_WORDS: Record<ContractChoice, string> = { carryOn: 'Carry on', renew: 'Renew as a draft', leave: 'Leave it' };

interface Props {
  contracts: readonly RolledContract[];
  onChoice: (contractId: string, choice: ContractChoice) => void;
}

function Choice({ contract, onChoice }: { contract: RolledContract } & Pick<Props, 'onChoice'>) {
  if (contract.choices.length === 1) return <>{CHOICE_WORDS[contract.choice]}</>;
  return (
    <TextField
      select size="small" label={`For ${contract.title}`} value={contract.choice} sx={{ width: { xs: '100%', md: 200 }, minWidth: 0, maxWidth: '100%' }}
      onChange={(event) => onChoice(contract.contractId, event.target.value as ContractChoice)}
      slotProps={{ select: { native: true } }}
    >
      {contract.choices.map((choice) => <option key={choice} value={choice}>{CHOICE_WORDS[choice]}</option>)}
    </TextField>
  );
}

function outcome(contract: RolledContract): string {
  if (contract.choice === 'leave') return contract.because;
  if (contract.choice === 'renew') return contract.choices[0] === 'renew' ? contract.because : 'A draft of a renewal. Nothing is signed by it.';
  const year = `Year ${contract.nextYearNumber} of ${contract.years}`;
  return contract.isSigned ? `${year}, signed at once as it was agreed.` : `${year}. ${contract.waits.join(' ')}`;
}

/** Sentences, a line each. */
const Words = ({ contract }: { contract: RolledContract }) => (
  <Box sx={{ maxWidth: '52ch' }}>
    {[outcome(contract), ...contract.notes].map((sentence) => <Box key={sentence}>{sentence}</Box>)}
  </Box>
);

/** What becomes of each contract, and what may be chosen. */
export function ContractRows({ contracts, onChoice }: Props) {
  if (contracts.length === 0) return <EmptyList>There is no contract in this season.</EmptyList>;
  return (
    <Rows<RolledContract>
      label="What becomes of each contract"
      rows={contracts}
      keyOf={(contract) => contract.contractId}
      columns={[
        { label: 'Contract', show: (contract) => <><Go resource="contracts" id={contract.contractId}>{contract.number ?? 'Draft'}</Go><Box>{contract.sponsorName}</Box><Box sx={{ color: 'text.secondary' }}>{contract.title}</Box></> },
        { label: 'Choice', show: (contract) => <Choice contract={contract} onChoice={onChoice} /> },
        { label: 'What becomes of it', show: (contract) => <Words contract={contract} /> },
        { label: 'Price now', numeric: true, show: (contract) => moneyText(contract.priceCents) },
        { label: 'Price next', numeric: true, show: (contract) => (contract.nextPriceCents === null ? '–' : moneyText(contract.nextPriceCents)) },
        { label: 'At the new rate card', numeric: true, show: (contract) => (contract.cardCents === null ? '–' : moneyText(contract.cardCents)) },
      ]}
    />
  );
}
