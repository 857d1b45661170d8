import { Box } from '@mui/material';
import type { ForecastView } from '../../../server/planning/forecast/forecast.dto.ts';
import { useServer } from '../../api/use-server.ts';
import { Reading } from '../../show/reading.tsx';
import { Section } from '../../show/section.tsx';
import type { Contract } from '../types.ts';
import { forecastGround, forecastSentences } from './forecast-words.ts';

/** How many more mentions are likely, where some are promised whenever something happens. */
export function ForecastPanel({ contract }: { contract: Contract }) {
  const hasMentions = contract.commitments.some((one) => one.counting === 'onOccurrence');
  return contract.term.state === 'signed' && contract.hold === null && hasMentions ? <Forecasts contract={contract} /> : null;
}

function Forecasts({ contract }: { contract: Contract }) {
  const asked = useServer<{ data: ForecastView[] }>(`/seasons/${contract.term.seasonId}/forecasts`);
  return (
    <Section title="Mentions still likely" lead="Nobody knows when it happens, so these are chances and no places.">
      <Reading of={asked}>
        {({ data }) => (
          <>
            {data.filter((one) => one.contractId === contract.id).map((one) => (
              <Box key={one.commitmentId} sx={{ mb: 2 }}>
                <Box component="h3" sx={{ m: 0, fontSize: '1rem' }}>{one.readKindName}</Box>
                <Box component="p" sx={{ my: 0.5 }}>{forecastSentences(one).join(' ')}</Box>
                <Box component="p" sx={{ my: 0, color: 'text.secondary', fontSize: '0.875rem' }}>{forecastGround(one)}</Box>
              </Box>
            ))}
          </>
        )}
      </Reading>
    </Section>
  );
}
