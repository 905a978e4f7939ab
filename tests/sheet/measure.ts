/** Reads shapes back out of an SVG, to measure it as with a rule. Knows nothing of the code that drew it. */

/** Attributes of every element of a name whose class begins with these words. */
export function attributesOf(svg: string, element: string, kind: string): readonly Readonly<Record<string, string>>[] {
  return [...svg.matchAll(new RegExp(`<${element} ([^>]*?)/?>`, 'g'))]
    .map((match) =>
      Object.fromEntries([...match[1]!.matchAll(/([\w-]+)="([^"]*)"/g)].map((pair) => [pair[1]!, pair[2]!])),
    )
    .filter((attributes) => (attributes.class ?? '').startsWith(kind));
}

export const circlesOf = (svg: string, kind: string): readonly { x: number; y: number; r: number }[] =>
  attributesOf(svg, 'circle', kind).map(({ cx, cy, r }) => ({ x: Number(cx), y: Number(cy), r: Number(r) }));
