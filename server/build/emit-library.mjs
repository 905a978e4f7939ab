/** Puts the sample library's parts files into the engine as text, for a first build in a workspace that has no parts. Changes nothing in them. */

/** @param {{ name: string, text: string }[]} files */
export function emitLibrary(files) {
  const entries = files.map(({ name, text }) => `  ${JSON.stringify(name)}: ${JSON.stringify(text)},\n`);
  return `// Made from samples/parts/ by server/build/vocabulary.mjs; not to be edited.\nexport const sampleLibrary: Readonly<Record<string, string>> = {\n${entries.join('')}};\n`;
}
