/** The command line: reads the words, hands them to one command, turns the outcome into an exit code. Judges and words no build. */
import { partKinds } from '../library/seller-text/propose';
import { assemble } from './assemble';
import { card } from './card';
import { check } from './check';
import { consensus } from './consensus';
import { CannotRun, type Console } from './console';
import { delivery } from './delivery';
import { explain } from './explain';
import { harness } from './harness';
import { order } from './order';
import { part } from './part';
import { point } from './point';
import { review } from './review';
import { setup } from './setup';
import { sheet } from './sheet';
import { vary } from './vary';

/** Under one another where the other options are explained. */
function wrapped(words: readonly string[]): string {
  const lines = [''];
  for (const word of words) {
    const line = lines[lines.length - 1] ?? '';
    if (`${line}${word}`.length > 80) lines.push(`${word}, `);
    else lines[lines.length - 1] = `${line}${word}, `;
  }
  return lines
    .map((line) => line.trimEnd())
    .join(`\n${' '.repeat(36)}`)
    .replace(/,$/, '');
}

const help = `dryfit: do the parts of a multirotor fit, and what will it weigh, draw and fly?

  dryfit check [files or folders]   what doesn't fit, with the way out
      --format text|json|ndjson|markdown|sarif|annotations   text when not said; ndjson is a line a file
      --fail-on error|warning|information   what makes the exit code 1; error when not said
      --bench FILE                  the bench to check against, instead of the nearest one
      --workspace DIR               the folder whose parts files count
      --changed-since REF           only what changed in git since then, and builds that use something that did
      --shard 2/8                   the second of eight shares of the files, for a matrix of machines
      --threads N                   threads that check; as many as there are cores when there are many builds
  dryfit review BASE [HEAD]         what a change in git does to the builds; HEAD is the working tree when not said
      --format text|markdown|json|sarif|annotations
      --fail-on as above            what makes the exit code 1 when the change introduces it
      --merge-base                  compare with where the two parted, as a pull request does
      --svg FILE [--svg-at URL]     draw the figures before and after; the comment shows FILE, or what is at URL
      --seconds N                   give up after so long; 300 when not said
  dryfit card FILE                  weight, current, thrust and flight time
      --format text|json|markdown
      --pack NAME                   the pack to show whole; the build's own choice when not said
      --bench FILE, --workspace DIR as above
  dryfit sheet FILE -o build.html   the build as pictures: to scale, over throttle and charge, rails, ports, cable
      -o build.html|build.svg|build.pdf-ready.html   one file that needs nothing else; on stdout when not said
      --part thrust -o thrust.svg   one picture: plan, stack, mass, thrust, current, efficiency, capacity, discharge, ...
      --paper A4|letter, --pack NAME, --bench FILE, --workspace DIR
  dryfit vary FILE --field PATH     what another value or another part would change, with a plot
      --from "850 mAh" --to "1800 mAh" [--step "100 mAh"]   any number of the build: pack.capacity, motors.kv, flight.altitude
      --parts ID,ID                 parts from the parts files instead, in the role that --field names
      --hold weight                 the craft stays as heavy as it is
      --show NAME,NAME              figures of the card by their names in JSON
      --format text|json|svg, --svg FILE, --pack NAME
  dryfit point --stator 2207 --kv 1750 --propeller 5.1x3.6x3 --volts 22.2   one motor as on a thrust stand
      --throttle 60% | --thrust "4 N"   exit code 1 when it cannot be
      --resistance, --no-load, --altitude, --temperature, --duct, --format text|json
  dryfit harness FILE               the cable between ESC and flight controller, wire by wire
      --format text|json|markdown   exit code 1 when it must not be plugged in as it is
  dryfit consensus [CLASS]          what the reference craft of a class agree on
      --format text|json|markdown, --workspace DIR
  dryfit order FILE…                the cheapest split over the shops, proved; several files order together
      --shops-at-most N, --prefer SHOP, --without SHOP, --keep-from
      --format text|json|markdown|csv, --seconds N   exit code 1 when a part is missing or the budget is broken
  dryfit assemble FILE              tools, joints, wires, and the order of work with its gates
      --format text|markdown|json, --tick GATE   writes a passed gate into the build
  dryfit setup FILE                 what the firmware is told, port by port, and how the packs are charged
      --format text|markdown|json
  dryfit delivery FILE [motors.weight="32.4 g" …]   what came against what the file says
      --weighed "642 g", --write    writes it into the build with its origin; exit code 1 when it differs by 5 %
  dryfit explain [CHECK…]           what a check is about; all of them when none is named
      --format text|json|markdown
  dryfit part --kind KIND < TEXT    text from a seller's page as an entry of a parts file, each value with its words
      --id ID, --format yaml|json   exit code 1 when nothing was recognised
      --kind                        ${wrapped(partKinds)}
                                    or what builders say: fc, vtx, aio, 4in1, rx, prop, lipo, cap
      --typical                     usual values, marked (estimate), where the page says nothing
  dryfit lsp                        the language server on stdio, for any editor
  dryfit --version, dryfit --help

Exit code 0: nothing found at that severity. 1: something found. 2: could not run.
`;

const commands: Readonly<Record<string, (args: readonly string[], console: Console) => number | Promise<number>>> = {
  check,
  card,
  vary,
  point,
  harness,
  part,
  consensus,
  order,
  assemble,
  setup,
  delivery,
  explain,
  review,
  sheet,
};

/** An exit code; a promise of one where something is loaded first. */
export function run(argv: readonly string[], console: Console, version: string): number | Promise<number> {
  const [name, ...args] = argv;
  try {
    if (name === undefined || name === '--help' || name === '-h' || args.includes('--help')) {
      console.out(helpOf(name) ?? help);
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
    const code = command(args, console);
    return typeof code === 'number' ? code : code.catch((error: unknown) => failed(error, console));
  } catch (error) {
    return failed(error, console);
  }
}

/** The lines of one command. */
function helpOf(command: string | undefined): string | undefined {
  const lines = help.split('\n');
  const from = lines.findIndex((line) => line.startsWith(`  dryfit ${command} `));
  const length = lines.slice(from + 1).findIndex((line) => !line.startsWith('     '));
  return from < 0 ? undefined : `${lines.slice(from, from + 1 + length).join('\n')}\n`;
}

function failed(error: unknown, console: Console): number {
  if (error instanceof CannotRun) console.err(`dryfit: ${error.message}\n`);
  else
    console.err(
      `dryfit: failed unexpectedly. Please report this with the file.\n${error instanceof Error ? error.stack : String(error)}\n`,
    );
  return 2;
}
