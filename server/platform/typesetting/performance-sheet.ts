import { audienceOf, audienceWords, readsHeard } from '../../domain/reports/audience.ts';
import { clockWords, outcomeWords } from '../../domain/reports/outcome-words.ts';
import type { StatementContent, StatementNight, StatementRead } from '../../domain/reports/statement-content.ts';
import { amountText, dayText } from './amount-text.ts';
import { paceChart } from './pace-chart.ts';

/** A statement of performance and how it stands: a draft has no number and no seal. */
export interface PerformanceSheet {
  readonly content: StatementContent;
  readonly issued: {
    readonly number: number;
    readonly issuedOn: string;
    readonly sealNumber: number;
    /** SHA-256 in hexadecimal digits */
    readonly sealHead: string;
  } | null;
  /** the one that overtook it, printed as a stamp */
  readonly replacedBy: { readonly number: number; readonly issuedOn: string } | null;
}

const HOW_MANY_CAME = { tickets: 'by tickets', counted: 'counted', estimated: 'estimated', signOff: 'said at the sign-off' };
/** Columns that are left out where no line has anything in them. */
const SOMETIMES = [['released', 'Released'], ['carried', 'Carried'], ['extra', 'Extra']] as const;
const ALWAYS = [['promised', 'Promised'], ['given', 'Given'], ['madeGood', 'Made good'], ['credited', 'Credited'], ['stillToCome', 'Still to come']] as const;

export function performanceTexts({ content, issued, replacedBy }: PerformanceSheet): Record<string, unknown> {
  const { head } = content;
  const day = (on: string): string => dayText(on, head.locale);
  const contract = head.contractNumber ?? head.contractTitle;
  const called = issued === null ? 'Draft, not issued' : `Statement ${issued.number} of contract ${contract}, issued ${day(issued.issuedOn)}`;
  // Of days that had not come yet nobody could say anything.
  const toldThrough = issued !== null && issued.issuedOn < head.throughOn ? `${day(head.throughOn)}, as far as it was known on ${day(issued.issuedOn)}` : day(head.throughOn);
  return {
    title: `Statement of performance${issued === null ? ' (draft)' : ` ${issued.number}`}, ${head.sponsorName}, ${contract}`,
    paper: head.paper === 'a4' ? 'a4' : 'us-letter',
    departmentName: head.departmentName,
    sponsorName: head.sponsorName,
    facts: [['School', head.schoolName], ['Contract', [head.contractNumber, head.contractTitle].filter(Boolean).join(', ')], ['Seller of record', head.sellerName], ['Season', head.seasonName], ['Days', `${day(head.startsOn)} to ${day(head.endsOn)}`], ['Told through', toldThrough]],
    stamp: issued === null ? 'Draft, not issued' : replacedBy === null ? null : `Replaced by statement ${replacedBy.number} of ${day(replacedBy.issuedOn)}`,
    called,
    footer: issued === null ? `Draft, not issued · contract ${contract}` : `${called}; seal ${issued.sealNumber}, head ${issued.sealHead.slice(0, 16)}…`,
    seal: issued === null ? null : { number: String(issued.sealNumber), head: (issued.sealHead.match(/.{1,8}/g) ?? []).join(' ') },
    standing: standingTable(content),
    notSignedOff: content.notSignedOff === 0 ? null : `${counted(content.notSignedOff, 'read')} logged on nights that are not signed off yet ${content.notSignedOff === 1 ? 'is' : 'are'} not counted here.`,
    chart: paceChart(content.pace, head.locale),
    ...benefitTexts(content),
    ...nightTexts(content),
    changes: content.changes.map(({ on, sentence }) => [shortDay(on, head.locale), sentence]),
    ...accountTexts(content),
  };
}

function standingTable({ lines }: StatementContent): { heads: string[]; rows: string[][]; sum: string[] | null } {
  const columns = [...ALWAYS, ...SOMETIMES.filter(([name]) => lines.some((line) => line[name] !== 0))];
  const sum = lines.length < 2 ? null : ['Together', ...columns.map(([name]) => String(lines.reduce((all, line) => all + line[name], 0)))];
  return { heads: ['Read', ...columns.map(([, label]) => label)], rows: lines.map((line) => [line.name, ...columns.map(([name]) => String(line[name]))]), sum };
}

function benefitTexts({ benefits, head }: StatementContent): { benefits: unknown[] } {
  const day = (on: string): string => shortDay(on, head.locale);
  return {
    benefits: benefits.map(({ name, quantity, delivered, dueOn, shownFrom, shownTo, proofs }) => {
      const isShown = shownFrom !== null && shownTo !== null;
      const said = proofs.map(({ on, quantity: pieces, proof }) => `${day(on)}${pieces === 1 ? '' : `, ${pieces} pieces`}: ${proof}`);
      const days = isShown ? [`Shown ${day(shownFrom)} to ${day(shownTo)}`] : said.length === 0 ? ['Nothing delivered yet'] : [];
      return [name, String(quantity), isShown ? 'day by day' : String(delivered), dueOn === null ? '' : day(dueOn), [...days, ...said].join('; ')];
    }),
  };
}

function nightTexts({ nights, head }: StatementContent): Record<string, unknown> {
  const rows = nights.flatMap((night) => night.reads.map((read) => readTexts(night, read, head.locale)));
  const heard = nights.filter((night) => readsHeard(night) > 0);
  const attended = heard.map((night) => {
    const reads = readsHeard(night);
    const came = night.attendance;
    const how = night.attendanceHow === null || came === null ? '' : HOW_MANY_CAME[night.attendanceHow];
    return [shortDay(night.heldOn, head.locale), night.opponent, came === null ? 'not recorded' : whole(came), how, String(reads), came === null ? '' : whole(came * reads)];
  });
  return { nights: rows, attended: heard.some((night) => night.attendance !== null) ? attended : [], audience: audienceWords(audienceOf(nights)) };
}

function readTexts({ heldOn, opponent }: StatementNight, read: StatementRead, locale: string): string[] {
  const copy = read.copyTitle === null ? '' : `${read.copyTitle}${read.copyVersionNumber === null ? '' : `, version ${read.copyVersionNumber}`}`;
  const when = [read.windowName, read.clock === null ? null : clockWords(read.clock)].filter(Boolean).join(', ');
  return [shortDay(heldOn, locale), opponent, read.readKindName, when, copy, read.atTheTable ?? '', outcomeWords(read, (on) => shortDay(on, locale))];
}

function accountTexts({ account, head }: StatementContent): Record<string, unknown> {
  const amount = (cents: number): string => amountText(cents, head.locale, head.currency);
  const some = (cents: number): string => (cents === 0 ? '' : amount(cents));
  const last = account.at(-1)?.balanceCents ?? 0;
  const words = last > 0 ? `${amount(last)} is open on ${dayText(head.throughOn, head.locale)}.` : last < 0 ? `${amount(-last)} stands to the sponsor’s credit on ${dayText(head.throughOn, head.locale)}.` : 'Nothing is open.';
  return {
    account: account.map((line) => [shortDay(line.on, head.locale), line.sentence, some(line.chargeCents), some(line.creditCents), amount(line.balanceCents)]),
    balance: account.length === 0 ? 'Nothing was billed or paid yet.' : words,
    caution: 'A balance is what is open on invoices less credit that is not applied yet. Local rules and the business office decide about sales tax and how the money is booked.',
  };
}

const counted = (count: number, one: string): string => `${whole(count)} ${one}${count === 1 ? '' : 's'}`;
const whole = (count: number): string => count.toLocaleString('en-US');

const shortFormats = new Map<string, Intl.DateTimeFormat>();

/** `Dec 4, 2026` */
export function shortDay(day: string, locale: string): string {
  const format = shortFormats.get(locale) ?? new Intl.DateTimeFormat(locale, { dateStyle: 'medium', timeZone: 'UTC' });
  shortFormats.set(locale, format);
  const [year, month, date] = day.split('-').map(Number) as [number, number, number];
  return format.format(Date.UTC(year, month - 1, date));
}
