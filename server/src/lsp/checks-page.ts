/** Where each check is explained: a heading on the page of all checks that lies beside the server. Reads that page once, with the first finding. */
import { readFileSync } from 'node:fs';
import { pathToFileURL } from 'node:url';
import { lineStarts } from '../text/lines';

export function explainedOn(page: string): (check: string) => string | undefined {
  const address = pathToFileURL(page).href;
  let headings: ReadonlyMap<string, number> | undefined;
  return (check) => {
    headings ??= headingsOf(readFileSync(page, 'utf8'));
    const line = headings.get(check);
    return line === undefined ? undefined : `${address}#L${line}`;
  };
}

/** 1-based line of each heading of the third level. */
const headingsOf = (text: string): ReadonlyMap<string, number> =>
  new Map(
    lineStarts(text).flatMap((start, i) =>
      text.startsWith('### ', start) ? [[text.slice(start + 4, text.indexOf('\n', start)), i + 1] as const] : [],
    ),
  );
