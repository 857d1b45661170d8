import type { WordRow } from './copy-word-row.ts';

/** What a verb stands behind when it speaks to the crowd: the beginning of a sentence, or "and", "so", "please". */
const TOLD = String.raw`(?<=(?:^|[.!?:;,\]]\s*|\band\s|\bor\s|\bso\s|\bplease\s|\bthen\s|\bjust\s|\bto\s)["“]?)`;
const WEB = String.raw`(?:\s+(?:us|our|their|the|its|his|her))?(?:\s+\S+)?\s*(?:at\s+|on\s+)?(?:web\s?site|web\s?page|homepage|page|online|www\.|https?:|\S+\.(?:com|org|net|edu|gov|us|biz|shop|example)\b)`;
const COUNT = String.raw`(?:\d+|one|two|three|four|five|six|seven|eight|nine|ten|fifteen|twenty|twenty-five|thirty|forty|fifty|sixty|seventy-five|ninety-nine|hundred)`;
const GOODS = '(?:food|service|selection|taste|tasting|people|products?|coffee|pizza|ice cream|rates?|work|results|choice|care|place|quality|experience|meals?|savings|prices?|deals?|value)';
/** A sum that is given, not asked for. */
const GIVEN = /\b(?:donat\w*|gave|gives|giving|gift|grant\w*|scholarships?|raised|raising|contribut\w*|award\w*)\b/iu;

/** "Proud to call the Perch home" calls nobody. */
const CALLED_HOME = /\bcalls?\b[^.!?]*\bhome\b/iu;

/** English words the copy check marks. The lists are ours; what they stand for is in 26 CFR 1.513-4(c)(2)(v) and (vi). */
export const ENGLISH: readonly WordRow[] = [
  // praise and comparison
  { kind: 'qualitative', words: String.raw`best(?!\s+(?:of\s+(?:luck|three|five|seven)|wishes))(?<!(?:personal|season|all the|(?:do|does|did|doing|give|gave|gives)\s(?:their|our|your|its|his|her|my))\sbest)` },
  { kind: 'qualitative', words: 'finest|greatest|fastest|quickest|friendliest|freshest|largest|biggest|oldest|newest|cleanest|strongest|safest|smartest|happiest|warmest|tastiest|coolest|hottest|highest|lowest|cheapest|easiest|nicest|brightest|longest|purest|richest|sweetest|toughest|widest' },
  { kind: 'qualitative', words: String.raw`most\s+(?:\p{L}+ly\s+)?(?:reliable|trusted|popular|experienced|advanced|complete|affordable|delicious|beautiful|comfortable|respected|loved|modern|powerful|important|\p{L}+(?:ful|ous|ive|able|ible))` },
  { kind: 'qualitative', words: String.raw`better(?!\s+(?:luck|half))|faster|fresher|larger\s+selection|more\s+\p{L}+\s+than(?!\s+\d)|than\s+(?:anyone|anybody|any\s+other|the\s+competition|the\s+rest)` },
  { kind: 'qualitative', words: String.raw`award-winning|world-class|first-class|top-(?:notch|rated|quality)|high-quality|unmatched|unbeatable|unrivaled|unrivalled|unsurpassed|second\s+to\s+none|like\s+no\s+other|premier(?!\s+league)|superior` },
  { kind: 'qualitative', words: String.raw`(?:number\s+one|no\.\s?1|#\s?1)\s+(?:in|for|choice|dealer|name|source|provider|rated)|(?:the|our|your|county’s|county's|region’s|region's|valley’s|valley's|town’s|town's)\s+(?:leading|number\s+one)(?!\s+scorer)` },
  { kind: 'qualitative', words: String.raw`excellent|outstanding|exceptional|amazing|awesome|fantastic|wonderful|perfect|delicious|tasty|mouth-?watering|legendary|renowned|world-famous|famous|reliable|dependable|trusted|trustworthy|friendly|expert|experts|favorite|go-to|you\s+can\s+(?:count|depend|rely)\s+on` },
  { kind: 'qualitative', words: String.raw`(?<!(?:air|water)\s)quality(?!\s+control)|(?:great|good)[\s-]+${GOODS}` },

  // price, savings, value
  { kind: 'price', words: String.raw`[$€£]\s?\d[\d,.]*\d|[$€£]\s?\d|${COUNT}\s+(?:dollars?|cents?|bucks)`, notWith: GIVEN },
  { kind: 'price', words: String.raw`${COUNT}\s?(?:%|percent|per\s+cent)\s+(?:off|discount|less|savings|back|cash\s+back|apr|apy|interest|financing)|${COUNT}\s+(?:dollars|cents)\s+off|half[\s-]+(?:off|price)|\d+\s?%\s+off` },
  { kind: 'price', words: String.raw`buy\s+one,?\s+get\s+one(?:\s+free)?|two[\s-]for[\s-](?:one|the\s+price\s+of\s+one)|bogo` },
  { kind: 'price', words: String.raw`discounts?|discounted|coupons?|rebates?|clearance|bargains?|markdowns?|low(?:er|est)?[\s-]+(?:prices?|priced|costs?|rates?|fees?)|prices?|priced|half-priced` },
  { kind: 'price', words: String.raw`(?<!tickets?\s(?:are\s|go\s)?)on\s+sale|(?:year-end|end-of-year|holiday|summer|winter|spring|fall|clearance|big|annual|weekend|storewide|tent|anniversary|closeout)\s+sale|sale\s+(?:prices?|ends|now|today|event|items)|sales\s+event` },
  { kind: 'price', words: String.raw`(?<![-‑]|\b(?:feel|set|toll|sugar|smoke|drug|admission\s+is)\s)free(?![-‑]|\s+(?:throws?|kicks?|hits?|agents?|agency|substitutions?|period|skate|dance|press|of\s+(?:tobacco|drugs|alcohol)))` },
  { kind: 'price', words: String.raw`no[\s-]+charge|at\s+no\s+(?:cost|charge)|complimentary|affordable|economical|inexpensive|cheap|reduced|worth\s+every|money[\s-]back|guarantee[ds]?|no\s+(?:down\s+payment|interest|money\s+down)|as\s+low\s+as` },
  { kind: 'price', words: String.raw`sav(?:e|es|ing)\s+(?:money|big|now|up\s+to|more|today|on|you|\d|[$€£])|savings(?!\s+(?:accounts?|banks?|bonds?|plans?|and\s+loan))|(?:great|best|good|real|super|more)\s+value|value\s+(?:pricing|pack|menu)` },
  { kind: 'price', words: String.raw`(?:great|special|best|hot|good|better|daily)\s+deals?|deals|(?:special|limited[\s-]time|introductory)\s+(?:offers?|rates?)|daily\s+specials?|specials\s+(?:on|every|all|this)` },

  // endorsement
  { kind: 'endorsement', words: String.raw`endors(?:e|es|ed|ing|ement)|recommend(?:s|ed|ing|ation)?|(?:we|our\s+\p{L}+|the\s+\p{L}+)\s+(?:trusts?|prefers?|believes?\s+in|swears?\s+by|stands?\s+behind)` },
  { kind: 'endorsement', words: String.raw`(?:our|the)\s+(?:\p{L}+\s+)?(?:team|coach|coaches|players|school|athletes|trainers|boosters|kestrels)(?:’s|'s|’|')\s+(?:\p{L}+\s+)?(?:choice|pick|favorite|preference)` },
  { kind: 'endorsement', words: String.raw`(?:the|our)\s+(?:official\s+)?(?:choice|pick|preference)\s+of\s+(?:our|the|champions|coaches|athletes)|our\s+(?:choice|pick)|preferred\s+by|chosen\s+by\s+(?:our|the)|approved\s+by\s+(?:our|the)` },

  // calls to buy or use
  { kind: 'callToBuy', words: String.raw`giv(?:e|ing)\s+(?:\S+\s+){1,4}?a\s+(?:call|ring|try)|call(?:ing)?\s+(?:now|today|us|them|it|him|her|ahead|toll|\(?\+?\d[\d()\s.-]+\d)|${TOLD}call(?=\s+(?:on\s+)?\p{L})(?!\s+(?:of|for\s+(?:play|a)))`, notWith: CALLED_HOME },
  { kind: 'callToBuy', words: String.raw`visit(?!${WEB})\s+(?:us|our|them|their|its|it|your|any)(?:\s+(?:stores?|shops?|showroom|branch|restaurant|locations?))?|visit(?=\s+(?:today|soon|tonight|now)\b)|${TOLD}visit(?=\s)(?!${WEB})` },
  { kind: 'callToBuy', words: String.raw`(?:stop|drop|swing)\s+(?:on\s+)?(?:by|in)|come\s+(?:on\s+)?(?:by|in|down)(?!\s+(?:the|to\s+the)\s+(?:second|floor|court|half|line-?up|wire))|come\s+(?:and\s+)?(?:see\s+(?:us|them|our|their|what)|visit|try|taste|shop)|${TOLD}head\s+(?:on\s+)?(?:over|down|out)?\s*to` },
  { kind: 'callToBuy', words: String.raw`${TOLD}(?:buy|purchase|reserve|sign\s+up|open\s+an?\s+account|apply\s+(?:now|today|online|for)|switch\s+to|treat\s+yourself|eat\s+at|(?:bank|insure)\s+with)(?=\W)` },
  { kind: 'callToBuy', words: String.raw`${TOLD}(?:order|try|taste|drink|book|schedule|grab|pick\s+up|shop)\s+(?:a|an|our|your|the|their|its|some|one|now|today|online|ahead|at|with|local|it)` },
  { kind: 'callToBuy', words: String.raw`${TOLD}get\s+(?:your|yours|a|an|some|one)(?=\s)|${TOLD}enjoy\s+(?:a|an|our|their|some|one)|${TOLD}ask\s+(?:about|for|them\s+about|us\s+about)` },
  { kind: 'callToBuy', words: String.raw`act\s+now|hurry\s+(?:in|over|down|now)|don[’']t\s+(?:miss|wait|forget\s+to\s+(?:buy|stop|try|order|visit))|while\s+supplies\s+last|for\s+all\s+(?:of\s+)?(?:your|their)\s+(?:\p{L}+\s+){1,3}needs` },

  // exclusive provider
  { kind: 'exclusiveProvider', words: String.raw`(?:exclusive|sole)\s+(?:\p{L}+\s+)?(?:provider|supplier|vendor|seller|distributor|source|caterer)|(?:provided|supplied)\s+exclusively` },
  { kind: 'exclusiveProvider', words: String.raw`(?:official\s+and\s+)?only\s+(?:\p{L}+\s+){1,3}(?:sold|served|available|offered|allowed|used|poured)(?:\s+(?:here|in|at|on)(?=\W|$))?|(?:sold|served|available|poured)\s+exclusively|exclusively\s+(?:sold|served|available|poured)|pouring\s+rights|no\s+other\s+(?:\p{L}+\s+){1,2}(?:is|are|may\s+be)\s+(?:sold|served|allowed)` },
];

/** Words of the list that are names of people and streets as well: capitalized beside a name or a street they pass. */
export const ALSO_A_NAME = /^(?:best|price|prices|sale|free|call|fine|strong|rich|fair|deal|deals|perfect|great|bargain)$/iu;
export const STREET = /^\s+(?:Street|St|Avenue|Ave|Road|Rd|Lane|Ln|Drive|Dr|Court|Ct|Boulevard|Blvd|Way|Place|Square|Plaza|Terrace|Circle|Trail|Highway|Hill|Field|Park|Hall|Gymnasium|Family)\b/u;
/** Capitalized words that begin a sentence or stand before a noun, so that they are nobody's given name. */
export const NO_GIVEN_NAME = /^(?:The|Our|Your|Their|Its|And|For|At|By|With|From|In|On|Of|A|An|Tonight|Tonight’s|Tonight's|Today|Today’s|Today's|Try|Get|Buy|See|Taste|Enjoy|Town’s|Town's|Simply|Always|Now|More|Very|This|It|We|You|Is|Are)$/u;
