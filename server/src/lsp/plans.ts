/** Answers with what is planned for a build, in the same Markdown as the command line: the order, the assembly, the set-up, the consensus of its class; and ticks gates. Works nothing out itself. */
import { type CancellationToken, LSPErrorCodes, ResponseError } from 'vscode-languageserver';
import { referencesIn } from '../analysis';
import type { Craft } from '../build/craft';
import { rangeOf } from '../language/protocol';
import { type Gate, gateNames } from '../plan/assembly-gates';
import { gateStates } from '../plan/assembly-steps';
import { consensusOf } from '../plan/consensus';
import { practisedClasses } from '../plan/consensus-practice';
import type { Solved } from '../plan/order-solve';
import { assemblyAsMarkdown, assemblyReport } from '../report/assembly-report';
import { consensusAsMarkdown } from '../report/consensus-report';
import { alternativesFor } from '../report/order-alternatives';
import { orderAsMarkdown } from '../report/order-forms';
import { orderGlance } from '../report/order-glance';
import { orderReport, whyNoOrder } from '../report/order-report';
import { setupAsMarkdown, setupReport } from '../report/setup-report';
import { tickEdit } from '../report/tick-gate';
import type { Answers } from './answers';
import type { Session } from './session';
import { canonicalUri } from './uri';

/** Solves away from the thread that answers; fails when the token says so or nothing can be solved here. */
export type Solve = (program: string, seconds: number, token: CancellationToken) => Promise<Solved>;

/** Seconds for one solution; an order of twenty parts takes less than one. */
const patience = 20;

interface Plan {
  readonly title: string;
  readonly markdown: string;
}

export function plans(session: Session, solve: Solve): Answers {
  const craftAt = (uri: string): Craft => {
    const canonical = canonicalUri(uri);
    const craft = session.analysisOf(canonical)?.crafts[0];
    if (craft) return craft;
    const name = decodeURIComponent(canonical.split('/').at(-1)!);
    throw failed(`${name} is no build. Its first line would be \`dryfit: build\`.`);
  };
  const nameOf = (craft: Craft): string => craft.said.name?.value ?? 'Unnamed craft';

  return {
    'dryfit/assembly': ({ uri }: { uri: string }): Plan => {
      const craft = craftAt(uri);
      return { title: `${nameOf(craft)} assembly`, markdown: assemblyAsMarkdown(assemblyReport(craft)) };
    },

    'dryfit/setup': ({ uri }: { uri: string }): Plan => {
      const craft = craftAt(uri);
      return { title: `${nameOf(craft)} set-up`, markdown: setupAsMarkdown(setupReport(craft)) };
    },

    /** Classes that can be asked for, those with most references first, and that of the build at hand. */
    'dryfit/classes': ({ uri }: { uri: string | undefined }) => {
      const count = new Map<string, number>(practisedClasses.map((one) => [one, 0]));
      for (const { said } of referencesIn(session.workspace))
        if (said.craft) count.set(said.craft.value, (count.get(said.craft.value) ?? 0) + 1);
      const own = uri === undefined ? undefined : session.analysisOf(canonicalUri(uri))?.crafts[0]?.said.craft?.value;
      const classes = [...count].map(([name, references]) => ({ name, references, own: name === own }));
      return classes.sort((a, b) => Number(b.own) - Number(a.own) || b.references - a.references);
    },

    'dryfit/consensus': ({ craftClass }: { craftClass: string }): Plan => {
      const consensus = consensusOf(craftClass, referencesIn(session.workspace));
      return { title: `${craftClass} consensus`, markdown: consensusAsMarkdown(consensus) };
    },

    'dryfit/order': async ({ uris }: { uris: readonly string[] }, token): Promise<Plan> => {
      const crafts = uris.map(craftAt);
      const solver = (program: string, seconds: number): Promise<Solved> =>
        solve(program, seconds, token).catch((error: Error) => {
          if (token.isCancellationRequested)
            throw new ResponseError(LSPErrorCodes.RequestCancelled, 'The order was given up.');
          const certain = crafts.length === 1 ? orderGlance(crafts[0]!).slice(0, 2) : [];
          throw failed([`The solver failed: ${error.message}`, ...certain].join(' '));
        });
      const outcome = await orderReport(crafts, solver, { seconds: patience });
      if (!outcome.ok) throw failed(whyNoOrder[outcome.why]);
      const { report } = outcome;
      return {
        title: `${crafts.map(nameOf).join(' and ')} order`,
        markdown: orderAsMarkdown(report, alternativesFor(session.workspace, crafts, report)),
      };
    },

    'dryfit/gates': ({ uri }: { uri: string }) =>
      gateStates(craftAt(uri)).map(({ gate, date, is }) => ({ gate, date: date ?? null, is })),

    'dryfit/tickGate': ({ uri, gate }: { uri: string; gate: string }) => {
      const craft = craftAt(uri);
      if (!gateNames.includes(gate as Gate))
        throw failed(`There is no gate \`${gate}\`. Known: ${gateNames.join(', ')}.`);
      const file = session.workspace.get(craft.file)!;
      const edit = tickEdit(file, craft, gate as Gate, session.today());
      return { range: rangeOf(file, edit.span), newText: edit.text };
    },
  };
}

const failed = (sentence: string): ResponseError<void> => new ResponseError(LSPErrorCodes.RequestFailed, sentence);
