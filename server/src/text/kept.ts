/** Keeps what was read of a short text: while a file is written, nearly all of its values are read again with every letter. For reading that depends on the text alone. Bounded. */

const most = 500;
const short = 80;

/** Two ages of answers: when the young ones are many they become the old ones, and what nobody asked for meanwhile is forgotten. */
export function kept<T extends object>(read: (text: string) => T): (text: string) => T {
  let young = new Map<string, T>();
  let old = young;
  return (text) => {
    const known = young.get(text);
    if (known) return known;
    if (text.length > short) return read(text);
    // A piece of a file would hold on to the whole of that file: a copy is kept.
    const copy = text.split('').join('');
    const answer = old.get(text) ?? read(copy);
    if (young.size >= most) {
      old = young;
      young = new Map();
    }
    young.set(copy, answer);
    return answer;
  };
}
