/** Packs the extension; must not build, so that what is packed is what was tested. The same files make the same package: what it holds bears one date. */
import { spawnSync } from 'node:child_process';
import path from 'node:path';
import { parseArgs } from 'node:util';

const root = path.resolve(import.meta.dirname, '../..');
const { values } = parseArgs({ options: { out: { type: 'string', default: 'dist/dryfit.vsix' } } });
const { status } = spawnSync(
  process.execPath,
  [
    path.join(root, 'node_modules/@vscode/vsce/vsce'),
    'package',
    '--no-dependencies',
    '--allow-missing-repository',
    '--no-rewrite-relative-links',
    '--out',
    values.out,
  ],
  // The first day that an archive can name.
  { cwd: root, stdio: 'inherit', env: { SOURCE_DATE_EPOCH: '315532800', ...process.env } },
);
process.exitCode = status ?? 1;
