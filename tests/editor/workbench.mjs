/** A browser on the editor's workbench page, cut off from every other address; knows the page's ways, not Dryfit's. */
import { chromium } from 'playwright-core';
import { atEnd } from '../support/at-end.mjs';
import { ensureChromium } from './chromium.mjs';

export async function openBrowser({ width = 1280, height = 800 } = {}) {
  const browser = await chromium.launch({
    executablePath: ensureChromium().path,
    // Signals are atEnd's business: the browser is not all there is to end.
    handleSIGINT: false,
    handleSIGTERM: false,
    args: [
      '--disable-gpu',
      '--disable-quic',
      '--no-first-run',
      '--disable-background-networking',
      '--disable-component-update',
      '--disable-sync',
      // Chromium's sandbox refuses to run as root, which is what containers are.
      ...(process.getuid?.() === 0 ? ['--no-sandbox'] : []),
    ],
  });
  atEnd(() => browser.close());
  const context = await browser.newContext({ viewport: { width, height }, reducedMotion: 'reduce' });
  return { context, page: await context.newPage() };
}

export async function confine(context, port, host = '127.0.0.1') {
  const elsewhere = (url) => url.protocol.startsWith('http') && !(url.hostname === host && Number(url.port) === port);
  await context.route(elsewhere, (route) => route.abort());
}

/** @param {{ folder?: string, payload?: [string, string][], token?: string }} what */
export function workbenchUrl(port, { folder, payload, token }) {
  const url = new URL(`http://127.0.0.1:${port}/`);
  if (token) url.searchParams.set('tkn', token);
  if (folder) url.searchParams.set('folder', folder);
  if (payload) url.searchParams.set('payload', JSON.stringify(payload));
  return url.href;
}

/** A file of the host, as the page names it. */
export const hostUri = (port, file) => `vscode-remote://127.0.0.1:${port}${file}`;
