/** Family names of radio links and video systems are the user's own words; case and spaces don't matter. */
const plain = (name: string): string =>
  name
    .trim()
    .toLowerCase()
    .replace(/[\s_-]+/g, '');

export const sameFamily = (a: string, b: string): boolean => plain(a) === plain(b);
