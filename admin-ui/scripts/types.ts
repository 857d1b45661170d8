export type { ScriptView as Script } from '../../server/packet/script.dto.ts';
