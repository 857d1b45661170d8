import type { DataProvider, RaRecord } from 'react-admin';
import { ask } from './api/http.ts';
import { changesOf, withoutNothing } from './api/changes.ts';

interface Page {
  data: RaRecord[];
  total: number;
}

function query(values: Record<string, unknown>): string {
  const search = new URLSearchParams();
  for (const [key, value] of Object.entries(values)) {
    if (value === undefined || value === null || value === '') continue;
    for (const one of Array.isArray(value) ? value : [value]) search.append(key, String(one));
  }
  return search.toString();
}

function list(resource: string, params: { pagination?: { page: number; perPage: number }; sort?: { field: string; order: string }; filter?: Record<string, unknown> }) {
  const { pagination, sort, filter = {} } = params;
  return ask<Page>(
    `/${resource}?${query({
      ...filter,
      sort: sort ? `${sort.order === 'DESC' ? '-' : ''}${sort.field}` : undefined,
      page: pagination?.page,
      perPage: pagination?.perPage,
    })}`,
  );
}

/** Tells the server only what was filled in or changed: a view carries figures that nobody may write. */
export const dataProvider = {
  getList: (resource, params) => list(resource, params),
  getManyReference: (resource, params) => list(resource, { ...params, filter: { ...params.filter, [params.target]: params.id } }),
  getOne: async (resource, { id }) => ({ data: await ask<RaRecord>(`/${resource}/${id}`) }),
  getMany: async (resource, { ids }) => ({ data: (await ask<Page>(`/${resource}?${query({ id: ids, perPage: 100 })}`)).data }),
  create: async (resource, { data, meta }) => ({
    data: await ask<RaRecord>(`/${resource}`, { method: 'POST', body: withoutNothing(data), idempotencyKey: meta?.idempotencyKey }),
  }),
  update: async (resource, { id, data, previousData, meta }) => ({
    data: await ask<RaRecord>(`/${resource}/${id}`, {
      method: 'PATCH',
      body: meta?.whole ? data : changesOf(data, previousData),
      version: previousData?.version,
    }),
  }),
  delete: async (resource, { id, previousData }) => {
    await ask(`/${resource}/${id}`, { method: 'DELETE', version: previousData?.version });
    return { data: previousData ?? { id } };
  },
  updateMany: () => Promise.reject(new Error('Records are changed one at a time.')),
  deleteMany: () => Promise.reject(new Error('Records are removed one at a time.')),
} as DataProvider;
