import { Box, Drawer } from '@mui/material';
import { Suspense, useState, type ReactNode } from 'react';
import { TitlePortal } from 'react-admin';
import { useLocation } from 'react-router';
import { Bar } from './bar.tsx';
import { Busy } from './busy.tsx';
import { ErrorWall } from './error-wall.tsx';
import { Navigation } from './navigation.tsx';
import { Waiting } from './waiting.tsx';

const skip = { position: 'absolute', left: -9999, zIndex: 2000, p: 1.5, bgcolor: 'background.paper', color: 'text.primary', '&:focus': { left: 8, top: 8 } } as const;

/** The frame of every page: bar, rooms, heading, page. */
export function Layout({ children }: { children: ReactNode }) {
  const [open, setOpen] = useState(false);
  const { pathname } = useLocation();
  return (
    <Box sx={{ minHeight: '100vh', bgcolor: 'background.default', color: 'text.primary' }}>
      <Box component="button" sx={skip} onClick={() => document.getElementById('page')?.focus()}>
        Skip to the page
      </Box>
      <Bar onRooms={() => setOpen(true)} />
      <Busy />
      <Drawer open={open} onClose={() => setOpen(false)} slotProps={{ paper: { sx: { width: 272, bgcolor: 'background.default' } } }}>
        <Navigation onGo={() => setOpen(false)} />
      </Drawer>
      <Box sx={{ display: 'flex', alignItems: 'flex-start' }}>
        <Box sx={{ display: { xs: 'none', md: 'block' }, width: 256, flexShrink: 0, position: 'sticky', top: 64, maxHeight: 'calc(100vh - 64px)', overflowY: 'auto' }}>
          <Navigation />
        </Box>
        <Box component="main" id="page" tabIndex={-1} sx={{ flex: 1, minWidth: 0, px: { xs: 1.5, sm: 3 }, py: { xs: 2, sm: 3 }, maxWidth: 1240, outline: 'none' }}>
          <TitlePortal component="h1" variant="h1" sx={{ whiteSpace: 'normal', mb: 1.5, overflowWrap: 'anywhere' }} />
          <ErrorWall key={pathname}>
            <Suspense fallback={<Waiting />}>{children}</Suspense>
          </ErrorWall>
        </Box>
      </Box>
    </Box>
  );
}
