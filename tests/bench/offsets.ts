/** How long an editor waits for an answer at any place of any sample: completion, hover, definition, references, prepared rename. Judges nothing. */
import { analyse } from '../../server/src/analysis';
import { complete } from '../../server/src/language/completion';
import { definition } from '../../server/src/language/definition';
import { hover } from '../../server/src/language/hover';
import { references } from '../../server/src/language/references';
import { nameAt } from '../../server/src/language/rename';
import { sampleNames, sampleUri, sampleWorkspace } from '../support/samples';

export function offsetTimes(): readonly {
  readonly name: string;
  readonly median: number;
  readonly p95: number;
  readonly most: number;
}[] {
  const workspace = sampleWorkspace();
  const files = { get: (uri: string) => workspace.get(uri), spelled: (uri: string) => uri };
  const analyses = new Map(sampleNames.map(sampleUri).map((uri) => [uri, analyse(workspace, uri)!]));
  const features: Record<string, (uri: string, offset: number) => unknown> = {
    completion: (uri, offset) => complete(workspace, uri, offset),
    hover: (uri, offset) => hover(workspace, analyses.get(uri)!, offset),
    definition: (uri, offset) => definition(workspace, files, uri, offset),
    references: (uri, offset) => references(workspace, files, uri, offset, true),
    'prepared rename': (uri, offset) => nameAt(workspace, uri, offset),
  };
  return Object.entries(features).map(([name, ask]) => {
    const times: number[] = [];
    for (const sample of sampleNames) {
      const uri = sampleUri(sample);
      const { text } = workspace.get(uri)!;
      for (let offset = 0; offset <= text.length; offset += 3) {
        const from = performance.now();
        ask(uri, offset);
        times.push(performance.now() - from);
      }
    }
    times.sort((a, b) => a - b);
    return {
      name,
      median: times[times.length >> 1]!,
      p95: times[Math.floor(times.length * 0.95)]!,
      most: times.at(-1)!,
    };
  });
}
