/** What the server says is wrong, for the one field it is about or for the whole answer. */
export function sentenceOf(error: unknown): string {
  const errors = Object.values((error as { body?: { errors?: Record<string, unknown> } } | null)?.body?.errors ?? {});
  return typeof errors[0] === 'string' ? errors[0] : error instanceof Error ? error.message : String(error);
}
