import { SetMetadata } from '@nestjs/common';

export const OPEN = 'open';

/** Anyone, signed in or not. */
export const Open = () => SetMetadata(OPEN, true);
