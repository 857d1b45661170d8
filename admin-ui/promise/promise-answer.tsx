import { Alert, Box, Button } from '@mui/material';
import { Waiting } from '../layout/waiting.tsx';
import { Section } from '../show/section.tsx';
import { Answer } from './answer.tsx';
import { usePromiseCheck } from './use-promise-check.ts';

interface Props {
  /** `/offers/<id>/promise-checks` or `/contracts/<id>/promise-checks` */
  path: string;
  /** of the offer or contract: another version is another question */
  version?: number;
  title?: string;
}

/** On the page of an offer or of a draft contract: whether its reads fit, as the season stands now. */
export function PromiseAnswer({ path, version = 0, title = 'Can we promise this?' }: Props) {
  const check = usePromiseCheck(path, {}, version);
  return (
    <Section title={title} actions={<Button onClick={() => void check.refetch()} disabled={check.isFetching}>{check.isFetching ? 'Looking…' : 'Look again'}</Button>}>
      <Box role="status" aria-live="polite" aria-busy={check.isFetching}>
        {check.error && <Alert severity="error" icon={false}>{check.error.message}</Alert>}
        {!check.error && (check.data ? <Answer check={check.data} /> : <Waiting what="Working out whether it fits" />)}
      </Box>
    </Section>
  );
}
