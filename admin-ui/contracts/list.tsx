import { BooleanInput } from 'react-admin';
import { Go } from '../fields/go.tsx';
import { Tag } from '../fields/tag.tsx';
import { moneyText } from '../format/money.ts';
import { choiceFilter, findFilter, pickFilter } from '../lists/filters.tsx';
import { ListPage } from '../lists/list-page.tsx';
import { TERM_STATE_WORDS, TERM_STATES, wordFor } from '../words/choices.ts';
import { numberText } from '../words/count.ts';
import type { Contract } from './types.ts';

export const Behind = ({ behind }: { behind: number | undefined }) =>
  behind ? <Tag mood="care">{numberText(behind)} behind</Tag> : <Tag mood="good">On pace</Tag>;

export const ContractList = () => (
  <ListPage<Contract>
    title="Contracts"
    addLabel="New contract"
    sort={{ field: 'title', order: 'ASC' }}
    filters={[findFilter(), choiceFilter('state', 'State', TERM_STATES), pickFilter('seasonId', 'seasons', 'Season'), <BooleanInput key="behind" source="behind" label="Only those behind" alwaysOn helperText={false} parse={(on: boolean) => on || null} />]}
    empty="A contract holds what was promised to a sponsor, for how much, and when it is billed. Signing it makes the reads owed. You can also import contracts, or enter one in mid-season with what was given before."
    columns={[
      { label: 'Contract', sortBy: 'title', show: (contract) => <Go resource="contracts" id={contract.id}>{contract.title}</Go> },
      { label: 'Sponsor', sortBy: 'sponsorName', show: (contract) => contract.sponsorName },
      { label: 'State', show: (contract) => wordFor(TERM_STATE_WORDS, contract.term.state) },
      { label: 'Price', numeric: true, show: (contract) => (contract.term.pricing === 'perRead' ? 'Per read' : moneyText(contract.term.priceCents)) },
      { label: 'Given', numeric: true, show: (contract) => contract.standing && contract.term.state !== 'draft' ? `${numberText(contract.standing.given)} of ${numberText(contract.standing.promised)}` : '–' },
      { label: 'Pace', show: (contract) => (contract.term.state === 'draft' ? '–' : <Behind behind={contract.standing?.behind} />) },
    ]}
  />
);
