/** Where each check is explained: a heading on the page of all checks that lies beside the server. Reads that page once, with the first finding. */
import { readFileSync } from 'node:fs';
import { pathToFileURL } from 'node:url';

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
function headingsOf(text: string): ReadonlyMap<string, number> {
  const headings = new Map<string, number>();
  for (let line = 1, at = 0; at < text.length; line++) {
    const next = text.indexOf('\n', at);
    const end = next < 0 ? text.length : next;
    if (text.startsWith('### ', at)) headings.set(text.slice(at + 4, end), line);
    at = end + 1;
  }
  return headings;
}
