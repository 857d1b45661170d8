import { MARKS_EXPLAINED } from '../../server/domain/sponsorship/copy-mark.ts';
import { Tag } from '../fields/tag.tsx';
import type { Copy } from './types.ts';

/** What the check says of the newest version, in a list. */
export const CheckTag = ({ copy }: { copy: Copy }) =>
  copy.marked.length === 0 ? <>Nothing marked</> : <Tag mood="care">{copy.marked.map((kind) => MARKS_EXPLAINED[kind].title).join(', ')}</Tag>;
