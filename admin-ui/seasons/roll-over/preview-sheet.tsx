import { Alert, Box } from '@mui/material';
import { Go } from '../../fields/go.tsx';
import { dayText, daysText } from '../../format/day.ts';
import { moneyText } from '../../format/money.ts';
import { Rows } from '../../lists/rows.tsx';
import { Facts } from '../../show/facts.tsx';
import { Figures } from '../../show/figures.tsx';
import { Section } from '../../show/section.tsx';
import { count, numberText } from '../../words/count.ts';
import { ContractRows } from './contract-rows.tsx';
import type { ContractChoice, RolledPrice, RollOverView } from './types.ts';

const Prices = ({ label, name, rows }: { label: string; name: string; rows: readonly RolledPrice[] }) => (
  <Box sx={{ mt: 2 }}><Rows<RolledPrice>
    label={label}
    rows={rows}
    keyOf={(line) => line.name}
    columns={[
      { label: name, show: (line) => line.name },
      { label: 'Now', numeric: true, show: (line) => moneyText(line.beforeCents) },
      { label: 'Next', numeric: true, show: (line) => moneyText(line.priceCents) },
    ]}
  /></Box>
);

function EndedCopies({ seen }: { seen: RollOverView }) {
  if (seen.endedCopies.length === 0) return null;
  return (
    <Alert severity="warning" icon={false} sx={{ mt: 2 }}>
      {count(seen.endedCopies.length, 'approved text')} {seen.endedCopies.length === 1 ? 'ends' : 'end'} before the next season begins and {seen.endedCopies.length === 1 ? 'needs' : 'need'} a new last day or a new approval:
      <ul>
        {seen.endedCopies.map((copy) => <li key={copy.copyId}><Go resource="copies" id={copy.copyId}>{copy.title}</Go>, {copy.sponsorName}, until {dayText(copy.endsOn)}</li>)}
      </ul>
    </Alert>
  );
}

/** What will be made, what carries on as it is, and what becomes of each contract. */
export function PreviewSheet({ seen, onChoice }: { seen: RollOverView; onChoice: (contractId: string, choice: ContractChoice) => void }) {
  const { carriesOn } = seen;
  const ours = seen.teams.filter((team) => team.isOurs);
  const of = (choice: ContractChoice) => seen.contracts.filter((contract) => contract.choice === choice).length;
  return (
    <>
      <Section title={seen.name} lead={`${daysText(seen.startsOn, seen.endsOn)}. ${seen.fromSeasonName} stays as it is: its contracts, invoices and statements can be read as ever.`}>
        <Figures
          figures={[
            { label: 'Signed at once', value: numberText(seen.contracts.filter((contract) => contract.isSigned).length) },
            { label: 'Agreed years as drafts', value: numberText(seen.contracts.filter((contract) => contract.choice === 'carryOn' && !contract.isSigned).length) },
            { label: 'Renewals as drafts', value: numberText(of('renew')) },
            { label: 'Left', value: numberText(of('leave')) },
          ]}
        />
      </Section>
      <Section title="Contracts"><ContractRows contracts={seen.contracts} onChoice={onChoice} /></Section>
      <Section title="Made anew">
        <Facts
          facts={[
            ['Our teams, without players', ours.map((team) => `${team.name}, ${team.schoolName}${team.headCoach ? `, coach ${team.headCoach}` : ''}`).join('\n') || 'None'],
            ['Teams of opponents', seen.teams.length === ours.length ? 'None' : seen.teams.filter((team) => !team.isOurs).map((team) => `${team.schoolName}, ${team.name}`).join('\n')],
            ['Rate card', seen.rateCard.length === 0 ? 'No prices to copy' : count(seen.rateCard.length, 'price')],
            ['Packages', seen.packages.length === 0 ? 'None to copy' : count(seen.packages.length, 'package')],
          ]}
        />
        {seen.rateCard.length > 0 && <Prices label="Prices of the rate card" name="Rate card" rows={seen.rateCard} />}
        {seen.packages.length > 0 && <Prices label="Prices of the packages" name="Package" rows={seen.packages} />}
      </Section>
      <Section title="Carries on as it is" lead="These belong to the department and not to a season.">
        <Facts
          facts={[
            ['The department', [count(carriesOn.schools, 'school'), count(carriesOn.venues, 'venue'), count(carriesOn.readKinds, 'read kind'), count(carriesOn.scripts, 'script'), `${count(carriesOn.windowPlaces, 'place in windows', 'places in windows')} said otherwise than the sport`].join(', ')],
            ['Players', `${count(carriesOn.players, 'player')}, ${numberText(carriesOn.playersWithSayAs)} with how the name is said. Rosters begin empty; a player who comes back is known again by name.`],
            ['Families’ choices', carriesOn.playersKeptQuiet === 0 ? 'Every player may be announced by name' : `${count(carriesOn.playersKeptQuiet, 'player')} not announced by full name: that stays so`],
            ['Approved copy', 'Stays with its sponsor'],
          ]}
        />
        <EndedCopies seen={seen} />
      </Section>
    </>
  );
}
