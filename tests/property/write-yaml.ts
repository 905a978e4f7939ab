/** Writes plain data as YAML the way people do: in blocks, sometimes in braces, sometimes quoted. Must change no value. */
import type { Chance } from '../support/seeded';
import { type Branch, isBranch, type Tree } from './tree';

export function writeYaml(tree: Branch, chance: Chance): string {
  return lines(tree, chance, 0).join('\n').concat('\n');
}

function lines(branch: Branch, chance: Chance, depth: number): readonly string[] {
  const pad = '  '.repeat(depth);
  return Object.entries(branch).flatMap(([key, value]): readonly string[] => {
    if (value === undefined) return [];
    if (typeof value === 'string') return [`${pad}${key}: ${scalar(value, chance, false)}`];
    if (Array.isArray(value)) return listLines(key, value as readonly string[] | readonly Branch[], chance, depth);
    const map = value as Branch;
    const small = isSmall(map);
    if (Object.values(map).every((one) => one === undefined)) return [`${pad}${key}: {}`];
    if (small && depth > 0 && chance.below(5) === 0) return [`${pad}${key}: ${flow(map, chance)}`];
    return [`${pad}${key}:`, ...lines(map, chance, depth + 1)];
  });
}

const isSmall = (map: Branch): boolean => {
  const values = Object.values(map).filter((one) => one !== undefined);
  return values.length > 0 && values.length <= 8 && values.every((one) => typeof one === 'string');
};

function listLines(
  key: string,
  list: readonly string[] | readonly Branch[],
  chance: Chance,
  depth: number,
): readonly string[] {
  const pad = '  '.repeat(depth);
  if (list.some((item) => isBranch(item)))
    return [`${pad}${key}:`, ...(list as readonly Branch[]).map((item) => `${pad}  - ${flow(item, chance)}`)];
  const words = list as readonly string[];
  const commas = words.some((word) => word.includes(','));
  const way = commas ? 2 : chance.below(4);
  if (way < 2) return [`${pad}${key}: ${words.join(', ')}`];
  if (way === 2) return [`${pad}${key}:`, ...words.map((word) => `${pad}  - ${scalar(word, chance, false)}`)];
  return [`${pad}${key}: [${words.map((word) => scalar(word, chance, true)).join(', ')}]`];
}

const flow = (map: Branch, chance: Chance): string =>
  `{ ${Object.entries(map)
    .flatMap(([key, value]: [string, Tree | undefined]) =>
      typeof value === 'string' ? [`${key}: ${scalar(value, chance, true)}`] : [],
    )
    .join(', ')} }`;

function scalar(text: string, chance: Chance, inFlow: boolean): string {
  const plain = /^[\w(.+-][^#:{}[\]"'\\]*$/.test(text) && !(inFlow && text.includes(','));
  if (plain && chance.below(12) !== 0) return text;
  return chance.below(2) === 0 ? `'${text.replaceAll("'", "''")}'` : JSON.stringify(text);
}
