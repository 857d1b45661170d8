import { Autocomplete, Box, createFilterOptions, TextField } from '@mui/material';
import type { RefObject } from 'react';
import { moneyText } from '../format/money.ts';
import { count } from '../words/count.ts';
import type { OpenPayer } from './types.ts';

const filterOptions = createFilterOptions<OpenPayer>({ stringify: (payer) => `${payer.name} ${payer.sponsorName ?? ''}`, limit: 50 });

const openWords = (payer: OpenPayer): string => (payer.openCount === 0 ? 'nothing open' : `${count(payer.openCount, 'invoice')} open, ${moneyText(payer.openCents)}`);

interface Props {
  payers: readonly OpenPayer[];
  value: OpenPayer | null;
  inputRef: RefObject<HTMLInputElement | null>;
  onPick: (payer: OpenPayer | null) => void;
}

/** Found by a few letters of the payer’s or the sponsor’s name; Enter takes the first. */
export function PayerBox({ payers, value, inputRef, onPick }: Props) {
  const options = [...payers].sort((one, other) => Number(other.openCount > 0) - Number(one.openCount > 0));
  return (
    <Autocomplete
      options={options}
      value={value}
      autoHighlight
      filterOptions={filterOptions}
      getOptionLabel={(payer) => payer.name}
      getOptionKey={(payer) => payer.id}
      isOptionEqualToValue={(one, other) => one.id === other.id}
      noOptionsText="No payer of that name. Add one under Payers."
      onChange={(_, payer) => onPick(payer)}
      renderOption={({ key, ...props }, payer) => (
        <Box component="li" key={key} {...props} sx={{ display: 'block !important' }}>
          <Box component="span" sx={{ display: 'block', fontWeight: 600 }}>{payer.name}</Box>
          <Box component="span" sx={{ display: 'block', color: 'text.secondary' }}>{openWords(payer)}</Box>
        </Box>
      )}
      renderInput={(params) => <TextField {...params} inputRef={inputRef} label="From" required margin="dense" />}
    />
  );
}
