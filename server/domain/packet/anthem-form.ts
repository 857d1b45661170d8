import type { PacketSettings } from './night-for-packet.ts';

type Forms = Pick<PacketSettings, 'anthem' | 'flag'>;

/**
 * How the anthem is given tonight: as the night says itself; else sung where a singer is named and the
 * colors presented where a color guard is; else as the department usually does.
 */
export function anthemForms(own: { readonly [F in keyof Forms]: Forms[F] | null }, roles: ReadonlySet<string>, usual: Forms): Forms {
  return {
    anthem: own.anthem ?? (roles.has('singer') ? 'sung' : usual.anthem),
    flag: own.flag ?? (roles.has('colourGuard') ? 'colourGuard' : usual.flag),
  };
}
