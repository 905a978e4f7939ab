/** The command line: reads the words, hands them to one command, turns the outcome into an exit code. Judges and words no build. */
import { card } from './card';
import { check } from './check';
import { CannotRun, type Console } from './console';
import { explain } from './explain';
import { harness } from './harness';

const help = `dryfit: do the parts of a multirotor fit, and what will it weigh, draw and fly?

  dryfit check [files or folders]   what doesn't fit, with the way out
      --format text|json            text when not said
      --fail-on error|warning|information   what makes the exit code 1; error when not said
      --bench FILE                  the bench to check against, instead of the nearest one
      --workspace DIR               the folder whose parts files count
  dryfit card FILE                  weight, current, thrust and flight time
      --format text|json|markdown
      --bench FILE, --workspace DIR as above
  dryfit harness FILE               the cable between ESC and flight controller, wire by wire
      --format text|json|markdown   exit code 1 when it must not be plugged in as it is
  dryfit explain [CHECK…]           what a check is about; all of them when none is named
      --format text|json|markdown
  dryfit --version, dryfit --help

Exit code 0: nothing found at that severity. 1: something found. 2: could not run.
`;

const commands: Readonly<Record<string, (args: readonly string[], console: Console) => number>> = {
  check,
  card,
  harness,
  explain,
};

export function run(argv: readonly string[], console: Console, version: string): number {
  const [name, ...args] = argv;
  try {
    if (name === undefined || name === '--help' || name === '-h' || args.includes('--help')) {
      console.out(help);
      return name === undefined ? 2 : 0;
    }
    if (name === '--version') {
      console.out(`${version}\n`);
      return 0;
    }
    const command = Object.hasOwn(commands, name) ? commands[name] : undefined;
    if (!command)
      throw new CannotRun(
        `There is no command \`${name}\`. Known: ${Object.keys(commands).join(', ')}. \`dryfit --help\` tells more.`,
      );
    return command(args, console);
  } catch (error) {
    if (error instanceof CannotRun) console.err(`dryfit: ${error.message}\n`);
    else
      console.err(
        `dryfit: failed unexpectedly. Please report this with the file.\n${error instanceof Error ? error.stack : String(error)}\n`,
      );
    return 2;
  }
}
