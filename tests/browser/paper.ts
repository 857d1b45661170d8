import { readFile } from 'node:fs/promises'
import { pagesOfPdf } from '../support/pdf.ts'

/** The words of a PDF on disk, page by page. */
export async function readPaper(path: string): Promise<string[]> {
  return pagesOfPdf(await readFile(path))
}
