/** `dryfit sheet`: the build as pictures in one file. Chooses form and file; draws through the bundle it loads. */
import { analyse } from '../analysis';
import type * as Draw from '../report/sheet/draw/index';
import { sheetOf } from '../report/sheet/view/make-view';
import { CannotRun, type Console } from './console';
import { noBuild, openOne } from './one-build';
import { oneOf, text, wordsOf } from './words';
import { writeFile } from './write';

const forms = ['.pdf-ready.html', '.html', '.svg'] as const;

export async function sheet(args: readonly string[], console: Console): Promise<number> {
  const { values, positionals } = wordsOf(args, {
    out: { type: 'string', short: 'o' },
    part: text,
    paper: text,
    pack: text,
    bench: text,
    workspace: text,
  });
  const paper = oneOf('paper', values.paper ?? 'A4', ['A4', 'letter']);
  const form = formOf(values.out, values.part);
  const { workspace, name, address, bench } = openOne(console, 'sheet', positionals, values);
  const analysis = analyse(workspace, address, { bench, today: console.today })!;
  const craft = analysis.crafts[0];
  if (!craft) throw noBuild(name);
  if (values.pack !== undefined && !craft.packs.some((pack) => pack.name === values.pack))
    throw new CannotRun(
      `${name} has no pack \`${values.pack}\`. It has ${craft.packs.map((pack) => pack.name).join(', ') || 'none'}.`,
    );
  const { pictureFile, picturesOf, sheetPage, sheetPicture } = (await import('./sheet.cjs' as string)) as typeof Draw;
  const view = sheetOf(craft, analysis, { pack: values.pack, today: console.today });
  const made = (): string => {
    if (values.part !== undefined) {
      const all = picturesOf(view);
      const picture = all.find(({ id }) => id === values.part);
      if (!picture)
        throw new CannotRun(
          `This sheet has no picture \`${values.part}\`. It has ${all.map(({ id }) => id).join(', ') || 'none yet'}.`,
        );
      return pictureFile(picture);
    }
    return form === '.svg' ? sheetPicture(view) : sheetPage(view, { paper, forPaper: form === '.pdf-ready.html' });
  };
  if (values.out === undefined) console.out(made());
  else {
    writeFile(console, values.out, made());
    console.out(`Wrote ${values.out}.\n`);
  }
  return 0;
}

function formOf(out: string | undefined, part: string | undefined): (typeof forms)[number] {
  const form = out === undefined ? (part === undefined ? '.html' : '.svg') : forms.find((one) => out.endsWith(one));
  if (form === undefined)
    throw new CannotRun(`-o takes a name that ends in .html, .svg or .pdf-ready.html; not \`${out}\`.`);
  if (part !== undefined && form !== '.svg')
    throw new CannotRun('One picture is an SVG: give -o a name that ends in .svg.');
  return form;
}
