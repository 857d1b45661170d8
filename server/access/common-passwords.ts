/** Long passwords that turn up again and again: runs of keys, doubled words, famous phrases. In lower case, without spaces. */
const WORDS = ['password', 'qwerty', 'letmein', 'welcome', 'football', 'basketball', 'baseball', 'abc123', 'iloveyou', 'admin', 'monkey', 'dragon', 'sunshine', 'princess', 'kestrels', 'rafterline', 'athletics', 'school', 'student', 'teacher'];

const RUNS = [
  '123456789012345', '1234567890123456', '12345678901234567890', '123456789123456789', '012345678901234', 'qwertyuiopasdfgh', 'qwertyuiopasdfghjkl',
  'qwertyuiopasdfghjklzxcvbnm', 'abcdefghijklmno', 'abcdefghijklmnop', 'abcdefghijklmnopqrstuvwxyz', '1q2w3e4r5t6y7u8i', '1q2w3e4r5t6y7u8i9o0p',
  '1qaz2wsx3edc4rfv', 'zxcvbnmasdfghjk', 'asdfghjklqwertyuiop', 'correcthorsebatterystaple', 'tobeornottobethatisthequestion', 'changemechangeme',
  'thequickbrownfox', 'thequickbrownfoxjumpsoverthelazydog', 'maytheforcebewithyou', 'iloveyouiloveyou', 'letmeinletmeinletmein', 'thisismypassword',
  'mypasswordispassword', 'passwordpassword123', 'password123456789', 'qwerty1234567890', 'administrator123',
];

export const COMMON_PASSWORDS: ReadonlySet<string> = new Set([
  ...RUNS,
  ...WORDS.flatMap((word) => [word.repeat(2), word.repeat(3), word.repeat(4), `${word}${word}123`, `${word}1234567890`, `${word}12345678901`]),
  ...'0123456789abcdefghijklmnopqrstuvwxyz'.split('').flatMap((sign) => [15, 16, 17, 18, 20].map((times) => sign.repeat(times))),
]);
