/** What the people of a night are called on paper; a role that is typed in stands as it is. */
const ROLE_WORDS: Readonly<Record<string, string>> = {
  announcer: 'Announcer', spotter: 'Spotter', scorer: 'Official scorer', clock: 'Clock', singer: 'Singer', colourGuard: 'Color guard',
  presenter: 'Presenter', honouree: 'Honoree', official: 'Official', other: 'Also here',
};

export function roleWords(role: string): string {
  return ROLE_WORDS[role] ?? role;
}
