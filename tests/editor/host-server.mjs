/** Starts and stops the editor's server for one profile; must leave no process of it behind. */
import { spawn } from 'node:child_process';
import { atEnd } from '../support/at-end.mjs';
import { boundedRun, signalGroup } from '../support/bounded-run.mjs';
import { hostNode, hostServer, installHost } from './install-host.mjs';

const startSeconds = 30;

/**
 * @param {ReturnType<import('./profile.mjs').createProfile>} profile
 * @param {{ development?: boolean, env?: Record<string, string>, token?: string, port?: number }} options
 *   development: let the page name extensions and tests to load (this also hides toasts)
 */
export async function startHost(profile, { development = false, env = {}, token, port = 0 } = {}) {
  installHost();
  const child = spawn(
    hostNode,
    [
      hostServer,
      ...['--host', '127.0.0.1', '--port', String(port), '--accept-server-license-terms', '--telemetry-level', 'off'],
      ...['--server-data-dir', profile.serverData, '--enable-remote-auto-shutdown'],
      ...(token ? ['--connection-token', token] : ['--without-connection-token']),
      ...(development ? ['--enable-smoke-test-driver'] : []),
    ],
    { env: hostEnvironment(profile, env), stdio: ['ignore', 'pipe', 'pipe'], detached: true },
  );
  let log = '';
  let exited = false;
  const gone = new Promise((resolve) => {
    child.once('error', resolve);
    child.once('exit', resolve);
  }).then(() => {
    exited = true;
  });
  atEnd(async () => {
    signalGroup(child, 'SIGTERM');
    const timer = setTimeout(() => signalGroup(child, 'SIGKILL'), 5000);
    await gone;
    clearTimeout(timer);
    // The extension host and the language server may outlive the server by a moment.
    signalGroup(child, 'SIGKILL');
  });
  const listening = new Promise((resolve) => {
    for (const stream of [child.stdout, child.stderr]) {
      stream.on('data', (chunk) => {
        log += chunk;
        const found = /Extension host agent listening on (\d+)/.exec(log);
        if (found) resolve(Number(found[1]));
      });
    }
  });
  const late = new Promise((resolve) => setTimeout(resolve, startSeconds * 1000).unref());
  const bound = await Promise.race([listening, gone, late]);
  if (typeof bound !== 'number') {
    throw new Error(`The editor's server ${exited ? 'ended' : `did not listen within ${startSeconds} s`}:\n${log}`);
  }
  return { port: bound, log: () => log, gone };
}

export async function installVsix(profile, vsix) {
  const args = [hostServer, '--server-data-dir', profile.serverData, '--install-extension', vsix];
  const { code, output } = await boundedRun(hostNode, args, {
    seconds: 60,
    env: hostEnvironment(profile, {}),
    quiet: true,
  });
  if (code !== 0 || !output.includes('was successfully installed')) {
    throw new Error(`Installing ${vsix} ended with ${code}:\n${output}`);
  }
}

/** No marketplace, no home folder of the person, and nothing of an editor that these tests may have been started from. */
function hostEnvironment(profile, more) {
  const inherited = Object.entries(process.env).filter(([name]) => !/^(VSCODE_|ELECTRON_|NODE_OPTIONS$)/.test(name));
  return {
    ...Object.fromEntries(inherited),
    HOME: profile.home,
    TMPDIR: profile.tmp,
    EXTENSIONS_GALLERY: '{"serviceUrl":""}',
    ...more,
  };
}
