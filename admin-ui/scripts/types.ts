export type { PreviewedText, PreviewView as Preview, ScriptVersionView as ScriptVersion, ScriptView as Script } from '../../server/packet/script.dto.ts';
