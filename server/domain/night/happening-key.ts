/** "bank shot", "Bank-shot" and "bankShot" are one happening, and this is its name in an entry: `bankShot`. */
export function happeningKey(name: string): string {
  const spaced = name.replace(/([a-z])([A-Z])/g, '$1 $2').toLowerCase().trim();
  return spaced.replace(/[\s_-]+(\w)/g, (_, letter: string) => letter.toUpperCase());
}
