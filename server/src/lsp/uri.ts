/** One spelling for every URI. Clients write `c%3A` or `C:`, escape more or less; answers use the client's own spelling. */
export function canonicalUri(uri: string): string {
  let plain: string;
  try {
    plain = decodeURIComponent(uri);
  } catch {
    // A stray `%` is part of a name then.
    plain = uri;
  }
  const drive = plain.replace(/^file:\/\/\/([A-Z]):/, (_, letter: string) => `file:///${letter.toLowerCase()}:`);
  return encodeURI(drive).replace(/[?#]/g, encodeURIComponent);
}
