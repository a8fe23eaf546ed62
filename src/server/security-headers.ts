/** What a browser may do with our answers: load its parts from here only, and be framed by nobody. */
import type { MiddlewareHandler } from 'hono';

const policy = [
  "default-src 'none'",
  "script-src 'self' 'wasm-unsafe-eval'",
  "style-src 'self'",
  "style-src-attr 'unsafe-inline'",
  "img-src 'self' data: blob:",
  "font-src 'self'",
  "connect-src 'self'",
  "worker-src 'self' blob:",
  "manifest-src 'self'",
  "base-uri 'none'",
  "form-action 'none'",
  "frame-ancestors 'none'",
].join('; ');

const headers: Record<string, string> = {
  'Content-Security-Policy': policy,
  'X-Content-Type-Options': 'nosniff',
  'Referrer-Policy': 'no-referrer',
  'Cross-Origin-Opener-Policy': 'same-origin',
  'Cross-Origin-Resource-Policy': 'same-origin',
  'Permissions-Policy': 'camera=(self), geolocation=(), microphone=()',
};

export const securityHeaders: MiddlewareHandler = async (context, next) => {
  await next();
  // A page without programs has a stricter policy of its own.
  for (const [name, value] of Object.entries(headers)) if (!context.res.headers.has(name)) context.header(name, value);
  if (context.req.path.startsWith('/api/')) context.header('Cache-Control', 'no-store');
};
