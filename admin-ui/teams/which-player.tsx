import { Box } from '@mui/material';
import { useWrappedSource } from 'react-admin';
import { useWatch } from 'react-hook-form';
import { playersCalled } from '../../server/domain/season/players-called.ts';
import type { PlayerView } from '../../server/season/player.dto.ts';
import { useServer } from '../api/use-server.ts';
import { ChoiceInput } from '../inputs/choice-input.tsx';

const SOMEBODY_NEW = 'new';

/** What was chosen among players of one name goes as the form of the server has it. */
export function withChoice<Line extends object>(line: Line): Line {
  const { which, ...rest } = line as Line & { which?: string };
  if (!which) return line;
  return (which === SOMEBODY_NEW ? { ...rest, isNew: true } : { ...rest, playerId: which }) as unknown as Line;
}

/** Whom a name that is written down belongs to: known from before, or one of several who have it. */
export function WhichPlayer({ schoolId }: { schoolId: string }) {
  const [name, id] = useWatch({ name: [useWrappedSource('name'), useWrappedSource('id')] }) as [string | undefined, string | undefined];
  const asks = !id && (name ?? '').trim().length > 2;
  const { data } = useServer<{ data: PlayerView[] }>(asks ? `/players?schoolId=${schoolId}&perPage=100&q=${encodeURIComponent(name!.trim())}` : null);
  const fitting = asks ? playersCalled(name!, (data?.data ?? []).filter((player) => player.erasedAt === null)) : [];
  if (fitting.length === 0) return null;
  if (fitting.length === 1) {
    const said = fitting[0]!.sayAs ? `, said ${fitting[0]!.sayAs}` : '';
    return <Box role="status" sx={{ width: '100%', color: 'text.secondary' }}>Known from before{fitting[0]!.lastSeen ? ` (${fitting[0]!.lastSeen})` : ''}{said}. How the name is said and the family’s choice are kept.</Box>;
  }
  return (
    <Box sx={{ width: '100%' }}>
      <ChoiceInput source="which" label={`Which ${name!.trim()}?`} required choices={[...fitting.map((player) => ({ id: player.id, name: player.lastSeen ?? 'On no list' })), { id: SOMEBODY_NEW, name: 'Somebody new' }]} />
    </Box>
  );
}
