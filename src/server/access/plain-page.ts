/** Pages with hardly a program in them: for pairing and signing in, before the real page may be used. */
import type { Context } from 'hono';
import { html } from 'hono/html';
import type { HtmlEscapedString } from 'hono/utils/html';
import { pageLanguage } from '../text/page-text.ts';

export type Markup = HtmlEscapedString | Promise<HtmlEscapedString>;

const policy = [
  "default-src 'none'",
  "style-src 'self'",
  "form-action 'self'",
  "base-uri 'none'",
  "frame-ancestors 'none'",
];
/** Of a page with a program of this server's own. */
const withScript = [...policy, "script-src 'self'", "connect-src 'self'"];

/**
 * @param status of the answer, such as 400 for a form that has to be filled in again.
 * @param script the path of a program that helps; the page works without it too.
 */
export async function plainPage(
  context: Context,
  title: string,
  body: Markup,
  status: 200 | 400 | 401 | 403 | 429 = 200,
  script?: string,
) {
  const page = await html`<!doctype html>
<html lang="${pageLanguage(context)}">
<head>
<meta charset="utf-8">
<meta name="viewport" content="width=device-width, initial-scale=1">
<title>${title} · Flylarder</title>
<link rel="stylesheet" href="/network/style.css">
${script === undefined ? '' : html`<script src="${script}" defer></script>`}
</head>
<body>
<main>
<h1>${title}</h1>
${body}
</main>
</body>
</html>
`;
  context.header('Content-Security-Policy', (script === undefined ? policy : withScript).join('; '));
  context.header('Cache-Control', 'no-store');
  // Without a referrer a browser sends forms from the origin "null", which the guard refuses.
  context.header('Referrer-Policy', 'same-origin');
  return context.html(page, status);
}

export function styleSheet(context: Context): Response {
  return context.body(style, 200, { 'Content-Type': 'text/css; charset=utf-8', 'Cache-Control': 'no-cache' });
}

const style = `:root { color-scheme: light dark; }
body { margin: 0; font: 1.05rem/1.5 system-ui, sans-serif; background: #f7f2e8; color: #2b2620; }
main { max-width: 38rem; margin: 0 auto; padding: 1.5rem 1rem 3rem; }
h1 { font-size: 1.6rem; line-height: 1.2; }
h2 { font-size: 1.2rem; margin-top: 2rem; }
label { display: block; margin: 0.8rem 0; font-weight: 600; }
input { display: block; width: 100%; box-sizing: border-box; font: inherit; padding: 0.6rem; margin-top: 0.2rem; border: 1px solid #7a6f60; border-radius: 0.3rem; background: #fff; color: #000; }
button { font: inherit; min-height: 2.75rem; padding: 0.5rem 1.1rem; border: 1px solid #2b2620; border-radius: 0.3rem; background: #2b2620; color: #fff; cursor: pointer; }
button.quiet { background: transparent; color: inherit; }
form + form { margin-top: 0.7rem; }
form.inline { display: inline-block; margin: 0.2rem 0.4rem 0.2rem 0; }
.code { font: 700 2.2rem/1.2 ui-monospace, monospace; letter-spacing: 0.08em; }
.wrong { border-left: 0.3rem solid #a3271f; padding-left: 0.8rem; }
.address { overflow-wrap: anywhere; font-family: ui-monospace, monospace; font-size: 0.95rem; }
svg { width: 15rem; height: 15rem; background: #fff; }
li { margin: 0.8rem 0; }
a { color: inherit; }
@media (prefers-color-scheme: dark) {
  body { background: #1e1b17; color: #eee6d8; }
  button { background: #eee6d8; color: #1e1b17; border-color: #eee6d8; }
}
`;
