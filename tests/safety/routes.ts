import type { Right } from '../../server/domain/access/rights.ts';

/** What each route asks for, written down a second time: a route that is missing here fails the build. */
export const ROUTES: Record<string, Right | 'open'> = {
  'POST /api/sign-in': 'open',
  'GET /api/me': 'be here',
  'POST /api/sign-out': 'be here',
  'POST /api/me/department': 'be here',
  'POST /api/me/password': 'be here',
  'GET /api/department': 'be here',
  'PATCH /api/department': 'change the department',
  'GET /api/people': 'see people',
  'POST /api/people': 'change people',
  'GET /api/people/{id}': 'see people',
  'PATCH /api/people/{id}': 'change people',
  'GET /api/audit': 'see the audit',
  'GET /api/seals': 'see the audit',
  'POST /api/seals': 'change the department',

  'GET /api/schools': 'see the season',
  'POST /api/schools': 'change the season',
  'GET /api/schools/{id}': 'see the season',
  'PATCH /api/schools/{id}': 'change the season',
};
