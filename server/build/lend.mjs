/** Makes bundles that are loaded into the process of another one and borrow its modules, so that none is there twice. Knows no file of ours. */
import path from 'node:path';
import { build } from 'esbuild';

/**
 * @param options of all of them
 * @param given the lender, which every session loads: `entry`, `outfile` and what is `external` to it
 * @param borrowers what the lender loads later, from beside it: by an import of its own, or, with `calls`, when one of these functions is called
 * @returns what esbuild tells of each
 */
export async function lend(options, given, borrowers) {
  const lender = { ...given, plugins: [callingLater(borrowers.filter(({ calls }) => calls))] };
  const own = await modulesOf(options, lender);
  // Of what is called later the lender has only the functions that fetch it.
  for (const { entry } of borrowers) own.delete(entry);
  const borrowed = await Promise.all(borrowers.map((borrower) => modulesOf(options, borrower)));
  const lent = new Set(
    borrowed
      .flatMap((all) => [...all])
      .flatMap(([name, imports]) => (own.has(name) ? [] : imports.filter((one) => own.has(one)))),
  );
  const names = [...lent].sort();
  const lending = [
    `import './${lender.entry}';`,
    ...names.map((name, i) => `import * as m${i} from './${name}';`),
    `export const lent = {${names.map((name, i) => `${JSON.stringify(name)}: m${i}`)}};`,
  ];
  const plugins = [borrowing(new Set(own.keys()), `./${lender.outfile.split('/').at(-1)}`)];
  return Promise.all([
    build({
      ...options,
      stdin: { contents: lending.join('\n'), resolveDir: options.absWorkingDir, sourcefile: 'lending.js' },
      outfile: lender.outfile,
      external: lender.external,
      plugins: lender.plugins,
    }),
    ...borrowers.map(({ entry, outfile }) => build({ ...options, entryPoints: [entry], outfile, plugins })),
  ]);
}

/** Each module of a bundle with the modules it imports while it is loaded. */
async function modulesOf(options, { entry, outfile, external, plugins }) {
  const { metafile } = await build({ ...options, entryPoints: [entry], outfile, external, plugins, write: false });
  return new Map(
    Object.entries(metafile.inputs).map(([name, { imports }]) => [
      name,
      imports.filter((one) => !one.external).map((one) => one.path),
    ]),
  );
}

/** In place of a module that comes later stand functions that fetch it when they are called. */
const callingLater = (late) => ({
  name: 'calling later',
  setup(build) {
    const { absWorkingDir } = build.initialOptions;
    const byPath = new Map(late.map((one) => [path.join(absWorkingDir, one.entry), one]));
    build.onLoad({ filter: /./ }, (args) => {
      const one = byPath.get(args.path);
      if (!one) return undefined;
      const from = JSON.stringify(`./${one.outfile.split('/').at(-1)}`);
      return {
        contents: one.calls
          .map((name) => `export const ${name} = (...said) => require(${from}).${name}(...said);`)
          .join('\n'),
      };
    });
  },
});

/** In place of a module that the other bundle has stands what that one lends. */
const borrowing = (own, lender) => ({
  name: 'borrowing',
  setup(build) {
    const { absWorkingDir } = build.initialOptions;
    build.onResolve(
      { filter: /./ },
      async ({ path: wanted, kind, importer, resolveDir, pluginData, with: attributes }) => {
        if (kind === 'entry-point' || pluginData === 'asked' || wanted === lender) return undefined;
        const found = await build.resolve(wanted, {
          kind,
          importer,
          resolveDir,
          pluginData: 'asked',
          with: attributes,
        });
        const name = found.path.startsWith(absWorkingDir)
          ? found.path.slice(absWorkingDir.length + 1).replaceAll('\\', '/')
          : '';
        return own.has(name) ? { path: name, namespace: 'lent' } : found;
      },
    );
    build.onResolve({ filter: /./, namespace: 'lent' }, () => ({ path: lender, external: true }));
    build.onLoad({ filter: /./, namespace: 'lent' }, ({ path: name }) => ({
      contents: `module.exports = { __esModule: true, ...require(${JSON.stringify(lender)}).lent[${JSON.stringify(name)}] };`,
    }));
  },
});
