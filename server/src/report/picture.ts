/** Small drawings as text: plain SVG, and the same as an address that a hover can show. Draws nothing of its own. */
export interface Picture {
  readonly svg: string;
  /** What it shows, for those who don't see it. */
  readonly words: string;
}

/** Markdown that shows a picture without a file; brackets would end the address. */
export function pictureAsMarkdown({ svg, words }: Picture): string {
  const address = encodeURIComponent(svg).replace(/[()']/g, (char) => `%${char.charCodeAt(0).toString(16)}`);
  return `![${words.replace(/[[\]]/g, '')}](data:image/svg+xml,${address})`;
}

export const number = (value: number): string => value.toFixed(2).replace(/\.?0+$/, '');
