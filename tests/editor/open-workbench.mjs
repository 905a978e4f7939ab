/** Opens the samples, or a folder given, in a real workbench on this machine with the extension installed, until Ctrl-C; keeps nothing of the profile. */
import { randomBytes } from 'node:crypto';
import path from 'node:path';
import { end, isEnding } from '../support/at-end.mjs';
import { boundedRun } from '../support/bounded-run.mjs';
import { installVsix, startHost } from './host-server.mjs';
import { hostSupported, installHost, root } from './install-host.mjs';
import { packageExtension, vsix } from './package-extension.mjs';
import { createProfile } from './profile.mjs';
import { workbenchUrl } from './workbench.mjs';

if (!hostSupported) {
  console.error(
    'This workbench runs on Linux only. Elsewhere run `npm run build && npm run package` and install dist/dryfit.vsix.',
  );
  process.exit(2);
}
const folder = path.resolve(process.argv[2] ?? path.join(root, 'samples'));
const port = Number(process.env.PORT ?? 0);

console.log('Building and packing the extension …');
const built = await boundedRun(process.execPath, ['server/build/bundle.mjs'], { seconds: 120, cwd: root, quiet: true });
if (built.code !== 0) throw new Error(`The build ended with ${built.code}:\n${built.output}`);
await packageExtension();
if (installHost()) console.log('The editor was installed into .editor-host/');

// The workbench has a terminal: nobody else on this machine, and no web page, may open it.
const token = randomBytes(16).toString('hex');
try {
  const profile = createProfile();
  await installVsix(profile, vsix);
  const host = await startHost(profile, { port, token });
  console.log(`\n${folder} is open at\n\n  ${workbenchUrl(host.port, { folder, token })}\n\nCtrl-C ends it.`);
  process.exitCode = 0;
  await host.gone;
  if (!isEnding()) {
    console.error(`The editor's server ended by itself:\n${host.log()}`);
    process.exitCode = 1;
  }
} finally {
  await end();
}
