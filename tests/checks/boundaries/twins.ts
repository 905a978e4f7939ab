/** Two values that a message holds against one another and that look alike: the builder could not see what is wrong. */

const quantities =
  /(?<![\w.-])(\d+(?:\.\d+)?) ?(mm|in|g|kg|V|mAh|mA|A|mW|W|Wh|mOhm|MHz|kHz|min|m\/s|Kv|EUR|S|C|%|K)(?![\w.])/g;

/** A value of a unit that is said twice. */
export function twins(message: string): string | undefined {
  const said = [...facts(message).matchAll(quantities)].map(([, number, unit]) => `${number} ${unit}`);
  return said.find((one, i) => said.indexOf(one) < i);
}

/** What is the case, without what to do about it. */
const facts = (message: string): string =>
  message.split(/(?<=[.!]) (?:Use|Set|Write|Take|Add|Choose|Make|Move|Feed|Look|Let|Get|Run)\b/)[0]!;
