import type { WordRow } from './copy-word-row.ts';

const WEB = String.raw`(?:\s+(?:nuestro|nuestra|su|la|el))?\s*(?:sitio|p[aá]gina|web|www\.|https?:|\S+\.(?:com|org|net|mx|us|example)\b)`;
const GIVEN = /(?:don[oó]|dona(?:r|n|ron)?|donaci[oó]n|donativo|beca|recaud\p{L}*)/iu;

/** Spanish words the copy check marks, for the copy read in Spanish. */
export const SPANISH: readonly WordRow[] = [
  { kind: 'qualitative', words: String.raw`(?<!a\s+lo\s+)mejor(?:es)?(?!\s+(?:jugador|jugadora|suerte))|(?:el|la|los|las)\s+m[aá]s\s+\p{L}+|m[aá]s\s+\p{L}+\s+que` },
  { kind: 'qualitative', words: String.raw`excelentes?|incomparables?|inigualables?|delicios[oa]s?|sabros[oa]s?|confiables?|premiad[oa]s?|favorit[oa]s?|preferid[oa]s?|de\s+primera(?!\s+(?:base|mitad))|n[uú]mero\s+uno|l[ií]der(?:es)?\s+en|(?:alta\s+)?calidad|perfect[oa]s?|expert[oa]s?` },
  { kind: 'price', words: String.raw`[$€]\s?\d[\d,.]*\d|[$€]\s?\d|\d+\s+(?:d[oó]lares|centavos|pesos)`, notWith: GIVEN },
  { kind: 'price', words: String.raw`\d+\s?(?:%|por\s+ciento)\s+de\s+(?:descuento|rebaja)|descuentos?|ofertas?|rebajas?|precios?|gratis|barat[oa]s?|econ[oó]mic[oa]s?|cup[oó]n|cupones|promoci[oó]n|promociones|dos\s+por\s+uno|2x1|mitad\s+de\s+precio|sin\s+costo|garantizad[oa]s?` },
  { kind: 'price', words: String.raw`ahorr(?:e|en|a|ar)(?!\p{L})|(?<!(?:cuentas?|caja)\s+de\s+)ahorros` },
  { kind: 'endorsement', words: String.raw`recomend(?:amos|ad[oa]s?|an|aci[oó]n)|respald(?:amos|ad[oa]s?\s+por)|la\s+(?:elecci[oó]n|opci[oó]n)\s+de(?:l|\s+nuestros?|\s+nuestras?|\s+los|\s+las)\s+\p{L}+|el\s+preferido\s+de` },
  { kind: 'callToBuy', words: String.raw`ll[aá]me(?:n|nos|los|las)?|ll[aá]m(?:anos|alos)|llama\s+(?:ya|hoy|ahora)|visit(?:e|en|a)(?!${WEB})\s+(?:a|nuestr[oa]s?|la|el|su)|vis[ií]t(?:enos|anos)(?!\s+en\s+(?:www|\S+\.(?:com|org|example)))` },
  { kind: 'callToBuy', words: String.raw`compre(?:n)?|compra\s+(?:ya|hoy|ahora)|venga(?:n)?\s+(?:a|por|y)|ven\s+a\s+(?:probar|comprar|ver)|prueb(?:e|en)|prueba\s+nuestr[oa]s?|pida(?:n)?|ordene(?:n)?|aprovech[ea](?:n)?|pase(?:n)?\s+por|no\s+(?:se\s+)?(?:lo|la|te\s+lo)?\s?(?:pierda|pierdas)|disfrute(?:n)?\s+(?:de\s+)?(?:nuestr[oa]s?|una?|los|las)` },
  { kind: 'exclusiveProvider', words: String.raw`(?:proveedor|vendedor|distribuidor)(?:a)?\s+(?:exclusiv[oa]|[uú]nic[oa])|[uú]nic[oa]s?\s+(?:\p{L}+\s+){1,3}(?:que\s+se\s+venden?|vendid[oa]s?|disponibles?|servid[oa]s?)|se\s+venden?\s+exclusivamente|exclusivamente\s+aqu[ií]` },
];

export const SPANISH_STREET = /(?:calle|avenida|paseo|camino|plaza)\s+(?:de\s+(?:la\s+)?)?$/iu;
