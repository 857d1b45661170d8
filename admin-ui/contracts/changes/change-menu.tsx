import { Button, Menu, MenuItem } from '@mui/material';
import { useId, useState } from 'react';
import { Link } from 'react-router';
import type { Contract } from '../types.ts';
import { CHANGE_KINDS } from './change-kinds.tsx';

/** Every change that this contract can have now, each with a page of its own. */
export function ChangeMenu({ contract }: { contract: Contract }) {
  const [anchor, setAnchor] = useState<HTMLElement | null>(null);
  const id = useId();
  const kinds = CHANGE_KINDS.filter((kind) => kind.isOffered(contract));
  if (kinds.length === 0) return null;
  return (
    <>
      <Button variant="outlined" id={`${id}-button`} aria-haspopup="menu" aria-expanded={anchor !== null} aria-controls={anchor ? `${id}-menu` : undefined} onClick={(event) => setAnchor(event.currentTarget)}>
        Change the contract
      </Button>
      <Menu id={`${id}-menu`} anchorEl={anchor} open={anchor !== null} onClose={() => setAnchor(null)} slotProps={{ list: { 'aria-labelledby': `${id}-button` } }}>
        {kinds.map((kind) => (
          <MenuItem key={kind.key} component={Link} to={`/contracts/${contract.id}/${kind.key}`} sx={{ minHeight: 44 }} onClick={() => setAnchor(null)}>
            {kind.label}
          </MenuItem>
        ))}
      </Menu>
    </>
  );
}
