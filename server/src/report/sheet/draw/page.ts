/** The sheet as a page of its own, as one large picture, and as a single picture: files that need nothing else. */
import type { SheetView } from '../view/sheet-view';
import { type Picture, pictureMarkup } from './picture';
import { picturesOf } from './pictures';
import { drawSections } from './section';
import { ownColours, pageRules, paperColours, pictureRules, printRules } from './style';
import { el, escapeText, short, together } from './svg';

export type Paper = 'A4' | 'letter';

/** @param forPaper looks on screen as it will on paper */
export function sheetPage(
  sheet: SheetView,
  { paper = 'A4', forPaper = false }: { readonly paper?: Paper; readonly forPaper?: boolean } = {},
): string {
  const [head, ...rest] = drawSections(sheet, false);
  const foot = rest.pop()!;
  const style = `${forPaper ? paperColours : ownColours}\n${pictureRules}\n${pageRules}\n${printRules(paper)}${forPaper ? '\nmain{max-width:180mm}' : ''}`;
  const long = new Set(['wrong', 'work', 'fly']);
  const sections = rest.map(
    ({ id, markup }) =>
      `<section id="${id}"${long.has(id) ? ' class="long"' : ''}>${forPaper ? markup.replaceAll('<details ', '<details open ') : markup}</section>`,
  );
  return `<!doctype html>
<html lang="en">
<head>
<meta charset="utf-8">
<meta name="viewport" content="width=device-width">
<meta http-equiv="Content-Security-Policy" content="default-src 'none'; style-src 'unsafe-inline'">
<title>${escapeText(sheet.name)}: build sheet</title>
<style>
${style}
</style>
</head>
<body>
<main>
<header id="head">${head!.markup}</header>
${sections.join('\n')}
<footer id="foot">${foot.markup}</footer>
</main>
</body>
</html>
`;
}

/** One picture as a file. */
export function pictureFile(picture: Picture): string {
  const wide = picture.unit === 'mm' ? 720 : 640;
  const [, , width, height] = picture.box;
  return `${
    pictureMarkup(
      { ...picture, body: [el('style', {}, { markup: svgStyle }), paperBehind(picture.box), ...picture.body] },
      { width: wide, height: short((height / width) * wide) },
    ).markup
  }\n`;
}

const svgStyle = `${ownColours}\n${pictureRules}\n.paper{fill:var(--paper);stroke:none!important}`;

const paperBehind = ([x, y, width, height]: Picture['box']) => el('rect', { class: 'paper', x, y, width, height });

/** All pictures on one sheet, in two columns under the title. */
export function sheetPicture(sheet: SheetView): string {
  const [column, gap, top] = [560, 24, 96];
  const heights = [top, top];
  const placed = picturesOf(sheet).map((picture) => {
    const [, , width, height] = picture.box;
    const tall = (height / width) * column;
    const into = heights[0]! <= heights[1]! ? 0 : 1;
    const [x, y] = [gap + into * (column + gap), heights[into]! + 24];
    heights[into] = y + tall + 12;
    return together(
      el('text', { class: 'strong', x, y: y - 6, 'font-size': 15 }, picture.title),
      pictureMarkup(picture, { x, y, width: column, height: short(tall) }),
    );
  });
  const [width, height] = [2 * column + 3 * gap, Math.max(...heights) + gap];
  const title = `${sheet.name}: build sheet`;
  return `${
    el(
      'svg',
      {
        xmlns: 'http://www.w3.org/2000/svg',
        class: 'picture',
        width,
        height,
        viewBox: `0 0 ${width} ${short(height)}`,
        role: 'img',
        'aria-label': title,
        'font-size': 14,
      },
      el('style', {}, { markup: svgStyle }),
      paperBehind([0, 0, width, height]),
      el('text', { class: 'strong', x: gap, y: 42, 'font-size': 24 }, sheet.name),
      el(
        'text',
        { class: 'q', x: width - gap, y: 42, 'text-anchor': 'end' },
        [sheet.craft, sheet.pack && `pack ${sheet.pack}`, sheet.drawn].filter(Boolean).join(', '),
      ),
      el('text', { x: gap, y: 70 }, sheet.headline),
      ...placed,
    ).markup
  }\n`;
}
