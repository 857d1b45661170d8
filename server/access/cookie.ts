import type { FastifyReply, FastifyRequest } from 'fastify';
import type { Config } from '../platform/config/config.ts';
import { refuse } from '../domain/refusals.ts';

const LOCAL = new Set(['localhost', '127.0.0.1', '[::1]', '::1']);

export function isSecure(request: FastifyRequest, config: Config): boolean {
  return request.protocol === 'https' || config.publicUrl?.startsWith('https://') === true;
}

/** `__Host-rafterline` over https; `rafterline-<port>` over http, so that two copies on one computer do not mix. */
export function cookieName(request: FastifyRequest, config: Config): string {
  return isSecure(request, config) ? '__Host-rafterline' : `rafterline-${request.socket.localPort}`;
}

export function sessionToken(request: FastifyRequest, config: Config): string | null {
  return request.cookies[cookieName(request, config)] ?? null;
}

/** Beside the session's, so that a director may open a sponsor's link without signing out. */
export function linkCookieName(request: FastifyRequest, config: Config): string {
  return `${cookieName(request, config)}-link`;
}

/** Friday's table is still needed when Saturday's has been opened on the same device: what Friday's still holds is sent by its own link. */
const MOST_LINKS = 4;
const BETWEEN_LINKS = '~';

/** What this browser holds of links, the latest opened first. */
export function linkCookies(request: FastifyRequest, config: Config): string[] {
  const held = request.cookies[linkCookieName(request, config)];
  return held ? held.split(BETWEEN_LINKS).slice(0, MOST_LINKS) : [];
}

/** @throws Refused `insecure-address` where the cookie would travel in the open */
export function addLinkCookie(request: FastifyRequest, reply: FastifyReply, config: Config, value: string, expiresAt: Date): void {
  const secure = refuseInTheOpen(request, config);
  const kept = [value, ...linkCookies(request, config).filter((other) => other !== value)].slice(0, MOST_LINKS);
  void reply.setCookie(linkCookieName(request, config), kept.join(BETWEEN_LINKS), { path: '/', httpOnly: true, sameSite: 'strict', secure, expires: expiresAt });
}

function refuseInTheOpen(request: FastifyRequest, config: Config): boolean {
  const secure = isSecure(request, config);
  if (!secure && !LOCAL.has(request.hostname.replace(/:\d+$/, ''))) refuse('insecure-address');
  return secure;
}

/** @throws Refused `insecure-address` where the cookie would travel in the open */
export function setSessionCookie(request: FastifyRequest, reply: FastifyReply, config: Config, token: string): void {
  const secure = refuseInTheOpen(request, config);
  void reply.setCookie(cookieName(request, config), token, { path: '/', httpOnly: true, sameSite: 'lax', secure });
}

export function clearSessionCookie(request: FastifyRequest, reply: FastifyReply, config: Config): void {
  void reply.clearCookie(cookieName(request, config), { path: '/', secure: isSecure(request, config) });
}
