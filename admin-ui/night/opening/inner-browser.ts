/** How the browsers inside mail and chat programs name themselves. Common practice, from memory; a miss costs a warning, no entry. */
const INNER_BROWSERS = /\b(FBAN|FBAV|Instagram|Line\/|GSA\/|Outlook-(iOS|Android)|Snapchat|MicroMessenger|LinkedInApp|YahooMobileMail|; wv\))/;
/** An iPhone's own browser and its companions say who they are; a view inside another program does not. */
const NAMED_ON_PHONE = /\b(Safari|CriOS|FxiOS|EdgiOS)\//;

/** Is this page shown inside a mail or chat program? What is stored there is thrown away sooner than in a browser. */
export function isInnerBrowser(userAgent: string): boolean {
  return INNER_BROWSERS.test(userAgent) || (/\b(iPhone|iPad)\b/.test(userAgent) && !NAMED_ON_PHONE.test(userAgent));
}
