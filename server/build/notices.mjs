/** Writes the licences of what the bundles contain, from what was really bundled; fails on a package that brings none. */
import { readdirSync, readFileSync, writeFileSync } from 'node:fs';
import path from 'node:path';

/** @param metafiles what esbuild tells of each bundle @param more packages of which a file is copied as it is */
export function writeNotices(root, file, metafiles, more) {
  const folders = new Set(more.map((name) => `node_modules/${name}`));
  for (const { inputs } of metafiles)
    for (const input of Object.keys(inputs)) {
      // Counted in the bundle that lends it.
      if (input.startsWith('lent:')) continue;
      const [folder] = /^.*node_modules\/(?:@[^/]+\/)?[^/]+(?=\/)/.exec(input) ?? [];
      if (folder) folders.add(folder);
    }
  const notices = [...folders].sort().map((folder) => {
    const full = path.join(root, folder);
    const { name, version, license } = JSON.parse(readFileSync(path.join(full, 'package.json'), 'utf8'));
    const own = readdirSync(full).find((one) => /^licen[cs]e(?:\.|$)/i.test(one));
    if (!license || !own) throw new Error(`${name} says no licence: it cannot be shipped`);
    return `${name} ${version}, ${license}\n\n${readFileSync(path.join(full, own), 'utf8').trim()}\n`;
  });
  writeFileSync(file, `Dryfit contains these packages.\n\n${notices.join(`\n${'-'.repeat(72)}\n\n`)}`);
}
