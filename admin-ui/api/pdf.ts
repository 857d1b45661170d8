import { HttpError } from 'react-admin';

/** Fetches a paper and hands it to the browser as a download; a refusal is told in its own sentence. */
export async function openPdf(path: string, fileName: string): Promise<void> {
  const response = await fetch(`/api${path}`, { headers: { Accept: 'application/pdf, application/json', 'X-Rafterline': '1' }, credentials: 'same-origin' });
  if (!response.ok) {
    const problem = (await response.json().catch(() => ({}))) as { detail?: string };
    throw new HttpError(problem.detail ?? 'The paper could not be made. Try again.', response.status, problem);
  }
  const address = URL.createObjectURL(await response.blob());
  const link = document.createElement('a');
  link.href = address;
  link.download = fileName;
  link.click();
  setTimeout(() => URL.revokeObjectURL(address), 60_000);
}
