import { Alert, TextField } from '@mui/material';
import { Go } from '../../fields/go.tsx';
import { Actions } from '../../forms/command-button.tsx';
import { today } from '../../format/day.ts';
import { EmptyList } from '../../lists/empty-list.tsx';
import { Figures } from '../../show/figures.tsx';
import { Reading } from '../../show/reading.tsx';
import { Section } from '../../show/section.tsx';
import { iMay } from '../../session/rights.ts';
import { numberText } from '../../words/count.ts';
import type { Night, NightTidy } from '../types.ts';
import { AmendmentList, EveningKnew, Shortfalls } from './after-words.tsx';
import { Attendance } from './attendance.tsx';
import { Matters, countOrNot, howItStands } from './matters.tsx';
import { PlannedList } from './planned-list.tsx';
import { SignOffButton } from './sign-off-button.tsx';
import { useTidy } from './use-tidy.ts';
import type { Settling } from './use-tidy.ts';

function Head({ night, tidy, reason, setReason, asksReason }: { night: Night; tidy: NightTidy } & Pick<ReturnType<typeof useTidy>, 'reason' | 'setReason' | 'asksReason'>) {
  const { tally } = tidy;
  return (
    <Section title="The night in numbers" lead={tidy.tallySentence}>
      <Figures
        figures={[
          { label: 'Planned', value: numberText(tally.planned) },
          { label: 'Read', value: numberText(tally.read) },
          { label: 'Cut short', value: numberText(tally.cutShort) },
          { label: 'Not read', value: numberText(tally.notRead) },
          { label: 'Nothing logged', value: numberText(tally.unlogged) },
          { label: 'Mentions', value: numberText(tally.mentions) },
        ]}
      />
      {night.state === 'open' && tally.unlogged > 0 && (
        <Alert severity="warning" icon={false} sx={{ my: 1 }}>Some planned reads have no entry. They stay owed. <Go to={`/nights/${night.id}/show?tab=log`}>Log what happened</Go> first, if you know it.</Alert>
      )}
      {tidy.requestsOpen > 0 && <p>{tidy.requestsOpen === 1 ? '1 request was neither read nor declined; it expires' : `${tidy.requestsOpen} requests were neither read nor declined; they expire`} at sign-off.</p>}
      {night.state === 'open' && iMay('sign-off', 'edit') && <Actions><SignOffButton night={night} /></Actions>}
      {asksReason && (
        <TextField label="Why something is changed now" value={reason} onChange={(event) => setReason(event.target.value)} fullWidth helperText="This night is signed off: the answers below wait for a reason, and are booked at once with it." slotProps={{ htmlInput: { maxLength: 300 } }} sx={{ mt: 1 }} />
      )}
    </Section>
  );
}

function ToSettle({ tidy, settling }: { tidy: NightTidy; settling: Settling }) {
  return (
    <>
      <Matters title="One or two?" lead="Two devices logged something that may be the same, and a clock or a player is missing." matters={tidy.questions} settling={settling}
        choicesOf={({ entryIds }) => [{ label: 'The same', answer: { answer: 'sameAs', sameAsEntryId: entryIds[0]! } }, { label: 'Two of them', answer: { answer: 'different' } }]} />
      <Matters title="Cut short" lead="A read counts where the sponsor’s name and main line were voiced." matters={tidy.cutShort} settling={settling} stateOf={howItStands} choicesOf={countOrNot} />
      <Matters title="Mentions for nothing logged" lead="A mention counts for something that happened. Where the happening was forgotten in the log, say that the mention counts." matters={tidy.withoutHappening} settling={settling} stateOf={howItStands} choicesOf={countOrNot} />
      <Matters title="Held and never read" lead="These happened, and their mention did not follow. They stay owed." matters={tidy.held} settling={settling} choicesOf={() => []} />
      <Matters title="Logged twice" lead="Two people logged the same read. It counts once; nothing has to be done." matters={tidy.doubled} settling={settling} choicesOf={() => []} />
      <Matters title="Taken as one" lead="Two devices logged the same with nearly the same clock." matters={tidy.takenAsOne} settling={settling} choicesOf={() => [{ label: 'These are two', answer: { answer: 'different' } }]} />
    </>
  );
}

/** Nothing is left over of a night that has not been. */
const isToCome = (night: Night, { tally }: NightTidy): boolean => night.state === 'open' && today() < night.heldOn && tally.unlogged === tally.planned && tally.mentions === 0;

/** The morning after: what the night came to, and everything that a person may still settle. */
export function TidySheet({ night }: { night: Night }) {
  const { tidy, settling, ...asking } = useTidy(night);
  return (
    <Reading of={tidy}>
      {(found) => isToCome(night, found) ? (
        <Section title="The night in numbers">
          <EmptyList>This night is still to come. Once it was held, this page says what was read, what was not and why, and what is left to settle.</EmptyList>
        </Section>
      ) : (
        <>
          <Head night={night} tidy={found} {...asking} />
          <ToSettle tidy={found} settling={settling} />
          <PlannedList planned={found.planned} />
          <Shortfalls shortfalls={found.shortfalls} />
          {night.state === 'signedOff' && <Attendance night={night} />}
          <EveningKnew tidy={found} />
          <AmendmentList amendments={found.amendments} />
        </>
      )}
    </Reading>
  );
}
