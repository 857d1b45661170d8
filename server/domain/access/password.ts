/** Counted in characters as a person sees them typed, not in bytes. */
export const PASSWORD_LEAST_CHARACTERS = 15;
/** Long enough for any passphrase, short enough that hashing one stays quick. */
export const PASSWORD_MOST_CHARACTERS = 200;

export type PasswordRefusal = 'password-too-short' | 'password-too-long' | 'password-common';

/** The form of a password that is hashed and compared, so that two keyboards with the same keys agree. */
export function normalizedPassword(password: string): string {
  return password.normalize('NFC');
}

/**
 * Why a new password is refused, or null where it is good. Length and a list of common passwords are
 * all that is asked; no capitals, digits or signs are demanded.
 *
 * @param commonPasswords in lower case, without spaces at the ends
 * @source NIST SP 800-63B; from memory
 */
export function whyNotPassword(password: string, commonPasswords: ReadonlySet<string>): PasswordRefusal | null {
  const normalized = normalizedPassword(password);
  const characters = [...normalized].length;
  if (characters < PASSWORD_LEAST_CHARACTERS) return 'password-too-short';
  if (characters > PASSWORD_MOST_CHARACTERS) return 'password-too-long';
  const plain = normalized.trim().toLowerCase();
  return commonPasswords.has(plain) || commonPasswords.has(plain.replaceAll(' ', '')) ? 'password-common' : null;
}
