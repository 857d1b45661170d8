export type { SloganView as Slogan } from '../../server/sponsorship/slogan.dto.ts';
