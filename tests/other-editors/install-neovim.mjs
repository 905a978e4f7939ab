/** Finds Neovim, and installs it where that is one command; must not claim it is there when it is not. */
import { accessSync, constants } from 'node:fs';
import path from 'node:path';
import { debian, installFromDebian } from '../editor/chromium.mjs';

/** The path of Neovim, or undefined. DRYFIT_NEOVIM names one outright. */
export function findNeovim() {
  const onPath = (process.env.PATH ?? '').split(path.delimiter).map((dir) => path.join(dir, 'nvim'));
  return [process.env.DRYFIT_NEOVIM, ...onPath].find((candidate) => candidate && executable(candidate));
}

/** @returns {{ path?: string, why?: string }} */
export function ensureNeovim() {
  const found = findNeovim();
  if (found) return { path: found };
  if (process.getuid?.() !== 0 || !debian())
    return { why: 'no `nvim` on the path, and none is installed by itself but as root on Debian' };
  installFromDebian('neovim');
  const installed = findNeovim();
  return installed ? { path: installed } : { why: 'the installation ended without `nvim`' };
}

function executable(file) {
  try {
    accessSync(file, constants.X_OK);
    return true;
  } catch {
    return false;
  }
}
