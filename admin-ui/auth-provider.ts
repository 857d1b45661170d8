import type { AuthProvider, HttpError } from 'react-admin';
import { ask } from './api/http.ts';
import { forget, knownMe, me, remember, type Me } from './session/me.ts';
import { mayDo } from './session/rights.ts';

export const authProvider: AuthProvider = {
  login: async ({ email, password }: { email: string; password: string }) => {
    remember(await ask<Me>('/sign-in', { method: 'POST', body: { email, password } }));
  },
  logout: async () => {
    if (knownMe()) await ask('/sign-out', { method: 'POST', body: {} }).catch(() => undefined);
    forget();
  },
  checkAuth: async () => {
    await me();
  },
  checkError: async (error: HttpError) => {
    if (error.status !== 401) return;
    forget();
    throw new Error('You were signed out. Sign in again to go on.');
  },
  getIdentity: async () => {
    const { person } = await me();
    return { id: person.id, fullName: person.name };
  },
  getPermissions: async () => (await me()).roles,
  canAccess: async ({ resource, action }) => mayDo((await me()).roles, resource, action),
};
