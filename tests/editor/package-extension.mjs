/** Packs dist/dryfit.vsix as a person would get it; must not build, so that what is tested is what was built. */
import { existsSync, rmSync } from 'node:fs';
import path from 'node:path';
import { boundedRun } from '../support/bounded-run.mjs';
import { root } from './install-host.mjs';

export const vsix = path.join(root, 'dist/dryfit.vsix');

export async function packageExtension() {
  rmSync(vsix, { force: true });
  const { code, output } = await boundedRun('npm', ['run', 'package'], { seconds: 90, cwd: root, quiet: true });
  if (code !== 0 || !existsSync(vsix)) throw new Error(`Packing the extension ended with ${code}:\n${output}`);
}
