import { Box, Button } from '@mui/material';
import { BarBox } from '../find/bar-box.tsx';
import { department } from '../session/me.ts';
import { BAR } from '../theme/palette.ts';
import { PersonMenu } from './person-menu.tsx';
import { Wordmark } from './wordmark.tsx';

export const barButton = { color: BAR.ink, borderColor: BAR.softInk, '&.Mui-focusVisible': { outlineColor: BAR.amber } } as const;

/** The bar above every page: whose department this is and who is signed in. */
export function Bar({ onRooms }: { onRooms: () => void }) {
  return (
    <Box component="header" sx={{ bgcolor: BAR.ground, color: BAR.ink, borderBottom: `4px solid ${BAR.amber}`, position: 'sticky', top: 0, zIndex: 1100 }}>
      <Box sx={{ display: 'flex', alignItems: 'center', gap: { xs: 1, sm: 2 }, px: { xs: 1, sm: 2.5 }, minHeight: 60 }}>
        <Button onClick={onRooms} variant="outlined" sx={{ ...barButton, display: { md: 'none' }, px: 1.5, minWidth: 0 }}>
          Rooms
        </Button>
        <Wordmark />
        <Box sx={{ flex: 1, minWidth: 0, color: BAR.softInk, display: { xs: 'none', sm: 'block' }, overflow: 'hidden', textOverflow: 'ellipsis', whiteSpace: 'nowrap' }}>{department().name}</Box>
        <Box sx={{ flex: 1, display: { sm: 'none' } }} />
        <BarBox />
        <PersonMenu />
      </Box>
    </Box>
  );
}
