import { Alert } from '@mui/material';
import { CheckboxGroupInput, RadioButtonGroupInput, required } from 'react-admin';
import { useWatch } from 'react-hook-form';
import { useServer } from '../api/use-server.ts';
import { CommandButton } from '../forms/command-button.tsx';
import { FormGrid } from '../forms/form-grid.tsx';
import { dayText } from '../format/day.ts';
import { moneyText } from '../format/money.ts';
import { CountInput } from '../inputs/count-input.tsx';
import { DayInput } from '../inputs/day-input.tsx';
import { FlagInput } from '../inputs/flag-input.tsx';
import { WordsInput } from '../inputs/words-input.tsx';
import { count } from '../words/count.ts';
import { missedDay } from './standing.tsx';
import type { LineShortfall, MissedRead, RepairOption } from './types.ts';

const nameOf = ({ nightId, missedOn, gameLabel, windowName, why }: MissedRead): string => `${missedDay(nightId, missedOn)}${[gameLabel, windowName].filter(Boolean).map((word) => `, ${word}`).join('')}: ${why}`;

const keyOf = (option: RepairOption): string => (option.remedy === 'otherKind' ? `otherKind/${option.readKindId}` : option.remedy);

function optionName({ remedy, replacements, readKindName, freePlaces, costCents, fits }: RepairOption): string {
  const places = freePlaces ? count(freePlaces, 'free place') : 'no place is free now';
  const free = fits ? places : `${places}; ${freePlaces ? 'the rest is' : 'they are'} placed later`;
  if (remedy === 'moreReads') return `${count(replacements!, 'more read')} of the same kind – costs nothing (${free})`;
  if (remedy === 'otherKind') return `${replacements} × ${readKindName} – worth ${moneyText(costCents)} by the rate card (${free})`;
  if (remedy === 'carryOver') return `Carried into the next contract, with their value of ${moneyText(costCents)}`;
  return `A credit of ${moneyText(costCents)} before tax`;
}

/** Priced for as many reads as are ticked. */
function Remedies({ line }: { line: LineShortfall }) {
  const { keys = [] } = useWatch() as { keys?: string[] };
  const { data } = useServer<{ data: RepairOption[] }>(keys.length === 0 ? null : `/contracts/${line.contractId}/repair-options?commitmentId=${line.commitmentId}&reads=${keys.length}`);
  if (keys.length === 0) return <Alert severity="info" icon={false}>Tick the reads it is for to see what can be done about them.</Alert>;
  if (!data) return <Alert severity="info" icon={false}>Working it out…</Alert>;
  return (
    <RadioButtonGroupInput source="remedy" label={`What is proposed for ${count(keys.length, 'missed read')}`} row={false} validate={[required('Choose one.')]} helperText={false} choices={data.data.map((option) => ({ id: keyOf(option), name: optionName(option) }))} />
  );
}

function Instead() {
  const { remedy } = useWatch() as { remedy?: string };
  return remedy?.startsWith('otherKind') ? <CountInput source="replacementReads" label="How many instead" min={1} max={1000} helperText="Left empty: as few as are worth no less" /> : null;
}

/** Missed reads of one line that stand in no proposal; those of one game, where it is counted by the game. */
export function ProposeButton({ line, slotId, isInKind }: { line: LineShortfall; slotId: string | null; isInKind: boolean }) {
  const open = line.missed.filter((read) => read.isOpen && read.slotId === slotId);
  return (
    <CommandButton
      label={slotId === null ? 'Propose a remedy' : `Propose for ${open[0]?.gameLabel ?? 'this game'}, ${dayText(open[0]!.missedOn)}`}
      title={`Missed: ${line.readKindName}`}
      explains="Nothing is booked before the sponsor has agreed. The reads stay owed until then."
      path="/makegood-proposals"
      defaults={{ keys: open.map((read) => read.key), isShown: true }}
      body={({ keys, remedy, replacementReads, isShown, answerBy, note }) => {
        const [kind, readKindId] = String(remedy).split('/');
        return {
          contractId: line.contractId, commitmentId: line.commitmentId, missed: (keys as string[]).map((key) => ({ key })), remedy: kind,
          ...(readKindId ? { replacementReadKindId: readKindId, replacementReads: replacementReads ?? null } : {}), ...(kind === 'credit' && isInKind ? { insists: true } : {}),
          isShown: isShown === true, answerBy: answerBy || null, note: note || null,
        };
      }}
      confirmLabel="Propose it"
      success="It is proposed."
      variant="contained"
      wide
    >
      <CheckboxGroupInput source="keys" label="Missed reads" row={false} choices={open.map((read) => ({ id: read.key, name: nameOf(read) }))} validate={[required('Tick at least one.')]} helperText={false} />
      <Remedies line={line} />
      <Instead />
      <FormGrid>
        <FlagInput source="isShown" label="The sponsor sees it by its link at once" />
        <DayInput source="answerBy" label="Answer by" />
      </FormGrid>
      <WordsInput source="note" label="Note for the office" longest={500} lines={2} />
    </CommandButton>
  );
}
