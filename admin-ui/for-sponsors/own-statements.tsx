import { Box, Link } from '@mui/material';
import type { OwnStatementView } from '../../server/reports/performance/performance.dto.ts';
import { useServer } from '../api/use-server.ts';
import { Part } from './part.tsx';
import { useWritten } from './written.tsx';

/** The statements of performance that were issued; none is said of before there is one. */
export function OwnStatements({ id }: { id: string }) {
  const { data } = useServer<{ data: OwnStatementView[] }>('/sponsor-page/performance-statements');
  const { day } = useWritten();
  if (!data || data.data.length === 0) return null;
  return (
    <Part id={id} title="Statements of performance" lead="The proof of the season on paper, signed by the school.">
      <Box component="ul" sx={{ listStyle: 'none', p: 0, m: 0 }}>
        {data.data.map((one) => (
          <Box component="li" key={one.id} sx={{ display: 'flex', flexWrap: 'wrap', columnGap: 2, rowGap: 0.5, alignItems: 'baseline', py: 1, borderBottom: 1, borderColor: 'divider', breakInside: 'avoid' }}>
            <Link href={`/api/sponsor-page/performance-statements/${one.id}/statement.pdf`} target="_blank" rel="noopener" sx={{ display: 'inline-block', py: 1, fontWeight: 600, overflowWrap: 'anywhere' }}>Statement {one.number}, {one.contractTitle} (PDF)</Link>
            <span>{day(one.issuedOn)}</span>
            <span>told through {day(one.throughOn)}</span>
            {one.replacedBy && <span>Replaced by statement {one.replacedBy.number} of {day(one.replacedBy.issuedOn)}</span>}
          </Box>
        ))}
      </Box>
    </Part>
  );
}
