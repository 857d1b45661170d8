import { readFileSync } from 'node:fs';
import { createRequire } from 'node:module';
import { parentPort } from 'node:worker_threads';
import { NodeCompiler } from '@myriaddreamin/typst-ts-node-compiler';
import { charactersOf, settableData } from './character-set.ts';
import type { TypesetAnswer, TypesetOrder } from './typeset-order.ts';
import invoiceTemplate from './templates/invoice.typ?raw';
import packetTemplate from './templates/packet.typ?raw';
import statementTemplate from './templates/statement.typ?raw';

const TEMPLATES = { packet: packetTemplate, invoice: invoiceTemplate, statement: statementTemplate };
const FACES = ['400Regular', '400Regular_Italic', '600SemiBold', '600SemiBold_Italic', '700Bold'];
/** Compilations a memoised result is kept for. */
const KEPT_FOR = 3;

const require = createRequire(import.meta.url);
const fonts = FACES.map((face) => readFileSync(require.resolve(`@expo-google-fonts/source-sans-3/${face}/SourceSans3_${face}.ttf`)));
const characters = charactersOf(fonts[0] as Buffer);
const compiler = NodeCompiler.create({ fontArgs: [{ fontBlobs: fonts }] });

function typeset(order: TypesetOrder): TypesetAnswer {
  const missing = new Set<string>();
  const data = settableData(order.data, characters, missing);
  if (order.template === null) return { id: order.id, missing: [...missing], pdf: null, error: null };
  const inputs = { data: JSON.stringify(data), missing: missing.size > 0 ? 'yes' : '' };
  const compiled = compiler.compile({ mainFileContent: TEMPLATES[order.template], inputs });
  if (compiled.result === null) {
    const found = compiled.takeError();
    const diagnostics = found === null ? [] : compiler.fetchDiagnostics(found);
    return { id: order.id, missing: [...missing], pdf: null, error: JSON.stringify(diagnostics).slice(0, 2000) };
  }
  const pdf = compiler.pdf(compiled.result, { pdfStandard: 'ua-1', creationTimestamp: order.createdAtSeconds });
  compiler.evictCache(KEPT_FOR);
  return { id: order.id, missing: [...missing], pdf: new Uint8Array(pdf), error: null };
}

parentPort?.on('message', (order: TypesetOrder) => {
  try {
    parentPort?.postMessage(typeset(order));
  } catch (failure) {
    parentPort?.postMessage({ id: order.id, missing: [], pdf: null, error: String(failure).slice(0, 2000) } satisfies TypesetAnswer);
  }
});
