import { Box, Typography } from '@mui/material';
import { useLocation, Link } from 'react-router';
import { iMay } from '../session/rights.ts';
import { ROOMS } from './rooms.ts';

/** The rooms and their pages, two in a row so that the last room is on the screen too; a page the person may not see is not drawn. */
export function Navigation({ onGo }: { onGo?: () => void }) {
  const { pathname } = useLocation();
  const isHere = (to: string) => (to === '/' ? pathname === '/' : pathname === to || pathname.startsWith(`${to}/`));
  return (
    <Box component="nav" aria-label="Rooms" sx={{ py: 1.5, px: 1 }}>
      {ROOMS.map((room) => {
        const pages = room.pages.filter((page) => iMay(page.resource, 'list'));
        if (pages.length === 0) return null;
        return (
          <Box key={room.title} sx={{ mb: 0.75 }}>
            <Typography component="p" sx={{ px: 1.25, m: 0, color: 'text.secondary', fontWeight: 600, fontSize: '0.9rem' }}>
              {room.title}
            </Typography>
            <Box component="ul" sx={{ listStyle: 'none', m: 0, p: 0, display: 'grid', gridTemplateColumns: '1fr 1fr', columnGap: 0.5 }}>
              {pages.map((page) => (
                <li key={page.to}>
                  <Box
                    component={Link}
                    to={page.to}
                    {...(onGo ? { onClick: onGo } : {})}
                    aria-current={isHere(page.to) ? 'page' : undefined}
                    sx={{
                      display: 'flex', alignItems: 'center', minHeight: 44, px: 0.75, color: 'text.primary', textDecoration: 'none', borderRadius: 1, lineHeight: 1.15, fontSize: '1rem',
                      borderLeft: '5px solid transparent',
                      '&:hover': { bgcolor: 'background.paper', textDecoration: 'underline' },
                      '&[aria-current]': { bgcolor: 'background.paper', borderLeftColor: '#f2b134', fontWeight: 700 },
                    }}
                  >
                    {page.label}
                  </Box>
                </li>
              ))}
            </Box>
          </Box>
        );
      })}
    </Box>
  );
}
