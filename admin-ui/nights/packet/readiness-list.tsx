import { Alert, Box } from '@mui/material';
import { addressOf } from '../../../server/domain/packet/readiness-line.ts';
import type { ReadinessLine } from '../../../server/domain/packet/readiness.ts';
import { Go } from '../../fields/go.tsx';
import { iMay } from '../../session/rights.ts';

/** Only a link that will open for whoever looks. */
const opensFor = (line: ReadinessLine): boolean => iMay(line.resource, line.id === null ? 'list' : line.tab === 'edit' ? 'edit' : 'show');

function Lines({ lines }: { lines: readonly ReadinessLine[] }) {
  return (
    <Box component="ul" sx={{ m: 0, pl: 2.5 }}>
      {lines.map((line, place) => (
        <Box component="li" key={place} sx={{ overflowWrap: 'anywhere' }}>
          {line.sentence}
          {opensFor(line) && <> <Go to={addressOf(line)}>Mend it</Go></>}
        </Box>
      ))}
    </Box>
  );
}

/** What has to be mended before the packet is printed, and what is worth knowing; each line leads to where it is mended. */
export function ReadinessList({ lines }: { lines: readonly ReadinessLine[] }) {
  if (lines.length === 0) return <Alert severity="success" icon={false}>Nothing is missing. The packet can be issued.</Alert>;
  const must = lines.filter((line) => line.grade === 'mustFix');
  const know = lines.filter((line) => line.grade !== 'mustFix');
  return (
    <>
      {must.length > 0 && <Alert severity="warning" icon={false} sx={{ mb: 1 }}><strong>To mend before you print</strong><Lines lines={must} /></Alert>}
      {know.length > 0 && <Alert severity="info" icon={false}><strong>Worth knowing</strong><Lines lines={know} /></Alert>}
    </>
  );
}
