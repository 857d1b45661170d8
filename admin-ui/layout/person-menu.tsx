import { Box, Button, Divider, Menu, MenuItem } from '@mui/material';
import { useState } from 'react';
import { useLogout, useTheme } from 'react-admin';
import { Link } from 'react-router';
import { ask } from '../api/http.ts';
import { knownMe } from '../session/me.ts';
import { ROLE_WORDS, wordFor } from '../words/choices.ts';
import { barButton } from './bar.tsx';

/** Who is signed in, in which department, and the way out. */
export function PersonMenu() {
  const [anchor, setAnchor] = useState<HTMLElement | null>(null);
  const logout = useLogout();
  const [theme, setTheme] = useTheme();
  const me = knownMe();
  if (!me) return null;
  const close = () => setAnchor(null);
  const moveTo = async (departmentId: string) => {
    await ask('/me/department', { method: 'POST', body: { departmentId } });
    window.location.assign('/');
  };
  const others = me.memberships.filter((one) => one.departmentId !== me.department.id);
  return (
    <>
      <Button onClick={(event) => setAnchor(event.currentTarget)} aria-haspopup="menu" aria-expanded={anchor !== null} variant="outlined" sx={{ ...barButton, px: 1.5, maxWidth: { xs: 130, sm: 260 } }}>
        <Box component="span" sx={{ overflow: 'hidden', textOverflow: 'ellipsis', whiteSpace: 'nowrap' }}>{me.person.name}</Box>
      </Button>
      <Menu anchorEl={anchor} open={anchor !== null} onClose={close}>
        <MenuItem component={Link} to="/me" onClick={close} sx={{ minHeight: 44 }}>
          {me.roles.map((role) => wordFor(ROLE_WORDS, role)).join(', ')} – change password
        </MenuItem>
        <MenuItem onClick={() => { setTheme(theme === 'dark' ? 'light' : 'dark'); close(); }} sx={{ minHeight: 44 }}>
          {theme === 'dark' ? 'Light screen, for sunlight' : 'Dark screen, for a dim gym'}
        </MenuItem>
        {others.map((one) => (
          <MenuItem key={one.departmentId} onClick={() => void moveTo(one.departmentId)} sx={{ minHeight: 44 }}>
            Go to {one.departmentName}
          </MenuItem>
        ))}
        <Divider />
        <MenuItem onClick={() => void logout()} sx={{ minHeight: 44 }}>Sign out</MenuItem>
      </Menu>
    </>
  );
}
