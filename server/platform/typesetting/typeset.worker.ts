import { readFileSync } from 'node:fs';
import { createRequire } from 'node:module';
import { parentPort } from 'node:worker_threads';
import { NodeCompiler } from '@myriaddreamin/typst-ts-node-compiler';
import type { NodeTypstDocument } from '@myriaddreamin/typst-ts-node-compiler';
import { charactersOf, settableData } from './character-set.ts';
import type { BlockMark, TypesetAnswer, TypesetOrder } from './typeset-order.ts';
import accountTemplate from './templates/account.typ?raw';
import depositSlipTemplate from './templates/deposit-slip.typ?raw';
import invoiceTemplate from './templates/invoice.typ?raw';
import letterTemplate from './templates/letter.typ?raw';
import offerTemplate from './templates/offer.typ?raw';
import packetCard from './templates/packet/card.typ?raw';
import packetCues from './templates/packet/cues.typ?raw';
import packetForms from './templates/packet/forms.typ?raw';
import packetFurniture from './templates/packet/furniture.typ?raw';
import packetLineUps from './templates/packet/line-ups.typ?raw';
import packetPages from './templates/packet/pages.typ?raw';
import packetSheets from './templates/packet/sheets.typ?raw';
import performanceTemplate from './templates/performance.typ?raw';
import receiptTemplate from './templates/receipt.typ?raw';
import statementTemplate from './templates/statement.typ?raw';

const packetTemplate = [packetFurniture, packetCard, packetCues, packetLineUps, packetSheets, packetForms, packetPages].join('\n');
const TEMPLATES = { packet: packetTemplate, invoice: invoiceTemplate, statement: statementTemplate, account: accountTemplate, letter: letterTemplate, receipt: receiptTemplate, depositSlip: depositSlipTemplate, offer: offerTemplate, performance: performanceTemplate };
const FACES = ['400Regular', '400Regular_Italic', '600SemiBold', '600SemiBold_Italic', '700Bold'];
/** Compilations a memoised result is kept for. */
const KEPT_FOR = 3;

const require = createRequire(import.meta.url);
const fonts = FACES.map((face) => readFileSync(require.resolve(`@expo-google-fonts/source-sans-3/${face}/SourceSans3_${face}.ttf`)));
const characters = charactersOf(fonts[0] as Buffer);
const compiler = NodeCompiler.create({ fontArgs: [{ fontBlobs: fonts }] });

/** Read out of the document itself: where the first and the last line of each block stand. */
function marksOf(document: NodeTypstDocument): BlockMark[] {
  const [found] = compiler.query(document, { selector: '<marks>', field: 'value' }) as [key: string, isEnd: boolean, page: number][][];
  const marks = new Map<string, BlockMark>();
  for (const [key, isEnd, page] of found ?? []) {
    const first = isEnd ? (marks.get(key)?.page ?? page) : page;
    marks.set(key, { key, page: first, lastPage: Math.max(first, page) });
  }
  return [...marks.values()];
}

function refused(id: number, missing: Iterable<string>, error: string | null): TypesetAnswer {
  return { id, missing: [...missing], pdf: null, marks: [], pageCount: 0, error };
}

function typeset(order: TypesetOrder): TypesetAnswer {
  const missing = new Set<string>();
  const data = settableData(order.data, characters, missing);
  if (order.template === null) return refused(order.id, missing, null);
  const inputs = { data: JSON.stringify(data), missing: missing.size > 0 ? 'yes' : '' };
  const compiled = compiler.compile({ mainFileContent: TEMPLATES[order.template], inputs });
  if (compiled.result === null) {
    const found = compiled.takeError();
    const diagnostics = found === null ? [] : compiler.fetchDiagnostics(found);
    return refused(order.id, missing, JSON.stringify(diagnostics).slice(0, 2000));
  }
  const pdf = order.isPlan ? null : new Uint8Array(compiler.pdf(compiled.result, { pdfStandard: 'ua-1', creationTimestamp: order.createdAtSeconds }));
  const marks = order.template === 'packet' ? marksOf(compiled.result) : [];
  const pageCount = compiled.result.numOfPages;
  compiler.evictCache(KEPT_FOR);
  return { id: order.id, missing: [...missing], pdf, marks, pageCount, error: null };
}

parentPort?.on('message', (order: TypesetOrder) => {
  try {
    parentPort?.postMessage(typeset(order));
  } catch (failure) {
    parentPort?.postMessage(refused(order.id, [], String(failure).slice(0, 2000)));
  }
});
