import { SponsorCreate } from './create.tsx';
import { SponsorEdit } from './edit.tsx';
import { SponsorList } from './list.tsx';
import { SponsorShow } from './show.tsx';

export const sponsors = { name: 'sponsors', create: SponsorCreate, edit: SponsorEdit, list: SponsorList, show: SponsorShow, recordRepresentation: 'name' };
