import fc from 'fast-check';

/** As much of an OpenAPI schema as our fields use. */
export interface Schema {
  $ref?: string;
  allOf?: Schema[];
  type?: string;
  format?: string;
  enum?: string[];
  pattern?: string;
  minLength?: number;
  maxLength?: number;
  minimum?: number;
  maximum?: number;
  minItems?: number;
  maxItems?: number;
  nullable?: boolean;
  items?: Schema;
  properties?: Record<string, Schema>;
  required?: string[];
}

export interface OpenDocument {
  paths: Record<string, Record<string, { requestBody?: { content: { 'application/json': { schema: Schema } } }; parameters?: unknown[] }>>;
  components: { schemas: Record<string, Schema> };
}

export interface Operation {
  method: string;
  path: string;
  body: Schema | null;
}

export function operationsOf(document: OpenDocument): Operation[] {
  return Object.entries(document.paths).flatMap(([path, methods]) =>
    Object.entries(methods).map(([method, operation]) => ({
      method: method.toUpperCase(),
      path,
      body: operation.requestBody ? resolved(document, operation.requestBody.content['application/json'].schema) : null,
    })),
  );
}

export function resolved(document: OpenDocument, schema: Schema): Schema {
  if (schema.$ref) return resolved(document, document.components.schemas[schema.$ref.split('/').at(-1)!]!);
  if (schema.allOf?.length === 1) return { ...resolved(document, schema.allOf[0]!), ...(schema.nullable ? { nullable: true } : {}) };
  return schema;
}

const hex = fc.nat({ max: 0xffff_ffff }).map((number) => number.toString(16).padStart(8, '0'));
const uuid = fc.tuple(hex, hex).map(([a, b]) => `${a}-${b.slice(0, 4)}-7${b.slice(1, 4)}-8${a.slice(0, 3)}-${a}${b.slice(0, 4)}`);
const day = fc.tuple(fc.integer({ min: 2020, max: 2030 }), fc.integer({ min: 1, max: 12 }), fc.integer({ min: 1, max: 28 })).map(
  ([year, month, date]) => `${year}-${String(month).padStart(2, '0')}-${String(date).padStart(2, '0')}`,
);

/** Values that the schema allows. */
export function valid(document: OpenDocument, given: Schema): fc.Arbitrary<unknown> {
  const schema = resolved(document, given);
  const one = validOf(document, schema);
  return schema.nullable ? fc.oneof({ weight: 4, arbitrary: one }, { weight: 1, arbitrary: fc.constant(null) }) : one;
}

function validOf(document: OpenDocument, schema: Schema): fc.Arbitrary<unknown> {
  if (schema.enum) return fc.constantFrom(...schema.enum);
  if (schema.type === 'boolean') return fc.boolean();
  if (schema.type === 'integer' || schema.type === 'number') {
    const [least, most] = [schema.minimum ?? -1000, schema.maximum ?? 1000];
    return fc.oneof(fc.integer({ min: least, max: Math.min(most, least + 500) }), fc.constantFrom(least, most));
  }
  if (schema.type === 'array') {
    return fc.array(valid(document, schema.items ?? {}), { minLength: schema.minItems ?? 0, maxLength: Math.min(schema.maxItems ?? 3, (schema.minItems ?? 0) + 3) });
  }
  if (schema.type === 'object' || schema.properties) {
    const properties = Object.entries(schema.properties ?? {});
    return fc.record(Object.fromEntries(properties.map(([name, property]) => [name, valid(document, property)])), { requiredKeys: schema.required ?? [] });
  }
  if (schema.format === 'uuid') return uuid;
  if (schema.format === 'date') return day;
  if (schema.format === 'date-time') return day.map((on) => `${on}T02:00:00.000Z`);
  if (schema.pattern) return fc.constantFrom(...matching(schema.pattern));
  const least = schema.minLength ?? 0;
  return fc.string({ unit: 'grapheme', minLength: least, maxLength: Math.min(schema.maxLength ?? 40, least + 20) }).map((text) => fit(text, schema));
}

function fit(text: string, { minLength = 0, maxLength = 1000 }: Schema): string {
  const trimmed = [...text.normalize('NFC').replaceAll('\u0000', '').trim()].slice(0, Math.floor(maxLength / 2)).join('');
  return trimmed.length >= minLength ? trimmed : trimmed + 'x'.repeat(minLength - trimmed.length);
}

const SAMPLES = ['#1F5C3A', '19:00', 'somebody@tamarack.example', '7', '00', 'TR', 'B1', 'startsAt', '2026-12-04', 'pregame', 'game:1/pregame/1', 'a', 'A1', 'America/Denver', '2026-2027'];

function matching(pattern: string): string[] {
  const found = SAMPLES.filter((sample) => new RegExp(pattern, 'u').test(sample));
  if (found.length === 0) throw new Error(`no sample matches ${pattern}: add one`);
  return found;
}

/** A body with one keyword of the schema broken, and the field in which it is. */
export interface BrokenBody {
  body: unknown;
  field: string;
  how: string;
}

/** Every way to break one keyword of one field, around a body that is otherwise valid. */
export function brokenBodies(document: OpenDocument, schema: Schema, whole: Record<string, unknown>): BrokenBody[] {
  const broken: BrokenBody[] = [{ body: { ...whole, unheardOf: 1 }, field: 'unheardOf', how: 'unknown field' }];
  for (const [field, given] of Object.entries(schema.properties ?? {})) {
    const property = resolved(document, given);
    const put = (how: string, value: unknown) => broken.push({ body: { ...whole, [field]: value }, field, how });
    if (schema.required?.includes(field)) {
      const { [field]: _, ...rest } = whole;
      broken.push({ body: rest, field, how: 'required' });
    }
    if (!property.nullable && schema.required?.includes(field)) put('nullable', null);
    const isObject = property.type === 'object' || property.properties !== undefined;
    put('type', property.type === 'array' || isObject ? 'text' : property.type === 'integer' ? 'seven' : { a: 1 });
    if (property.enum && property.type !== 'array') put('enum', 'nothing of the kind');
    if (property.format) put('format', 'neither');
    if (property.pattern) put('pattern', '\u00a7\u00a7');
    if (property.maxLength !== undefined && !property.enum && !property.format) put('maxLength', 'x'.repeat(property.maxLength + 1));
    if ((property.minLength ?? 0) > 0 && property.type === 'string') put('minLength', '');
    if (property.minimum !== undefined) put('minimum', property.minimum - 1);
    if (property.maximum !== undefined) put('maximum', property.maximum === Number.MAX_SAFE_INTEGER ? 2 ** 53 : property.maximum + 1);
    if (property.type === 'integer') put('whole number', (property.minimum ?? 0) + 0.5);
    if (property.type === 'array' && (property.minItems ?? 0) > 0) put('minItems', []);
  }
  return broken;
}
