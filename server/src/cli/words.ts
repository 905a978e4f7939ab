/** The words of a command line, read: options, their terms, and a sentence for what is none. Runs nothing. */
import { type ParseArgsConfig, parseArgs } from 'node:util';
import { CannotRun } from './console';

export const text = { type: 'string' } as const;
export const flag = { type: 'boolean' } as const;

/** @param allowPositionals whether words without `--` are taken */
export function wordsOf<const O extends NonNullable<ParseArgsConfig['options']>>(
  args: readonly string[],
  options: O,
  allowPositionals = true,
) {
  try {
    return parseArgs({ args: [...args], allowPositionals, options });
  } catch (error) {
    throw new CannotRun(`${(error as Error).message.split('. ')[0]}. \`dryfit --help\` lists the options.`);
  }
}

export const oneOf = <T extends string>(option: string, value: string, known: readonly T[]): T =>
  among(`--${option}`, value, known);

export function among<T extends string>(what: string, value: string, known: readonly T[]): T {
  const found = known.find((one) => one === value);
  if (found === undefined) throw new CannotRun(`${what} takes ${known.join(', ')}; not \`${value}\`.`);
  return found;
}

export const asJson = (value: unknown): string => `${JSON.stringify(value, null, 2)}\n`;
