/** A hole pattern is written as it is spoken: 30x30 for 30.5 mm, 25x25 for 25.5 mm. */
import type { Fact } from '../../build/fact';
import { boardName } from '../../plan/mounts';
import type { BoardMount } from '../../text/notation/mount';
import { check } from '../check';

type Mounts = { readonly items: readonly Fact<BoardMount>[] } | undefined;
const of = (fact: Fact<BoardMount> | undefined): readonly Fact<BoardMount>[] => (fact ? [fact] : []);

export default check({
  id: 'board-pattern-spoken',
  group: 'mechanical',
  title: 'Hole pattern said the short way',
  severity: 'information',
  needs: {},
  may: {
    controller: 'flight-controller.mount',
    esc: 'esc.mount',
    frame: 'frame.stack-mounts',
    rear: 'frame.rear-mounts',
    video: 'video-transmitter.mount',
  },
  when: (craft) =>
    [
      craft.roles['flight-controller']?.mount,
      craft.roles.esc?.mount,
      craft.roles.frame?.['stack-mounts'],
      craft.roles['video-transmitter']?.mount,
    ].some(Boolean),
  judge({ controller, esc, frame, rear, video }) {
    const many = (mounts: Mounts): readonly Fact<BoardMount>[] => mounts?.items ?? [];
    const all = [...of(controller), ...of(esc), ...many(frame), ...many(rear), ...many(video)];
    return all.flatMap((fact) => {
      if (!fact.value.spoken) return [];
      const full = `${boardName(fact.value)}${fact.value.screw === undefined ? '' : ` M${fact.value.screw}`}`;
      return [
        {
          at: fact,
          message: `\`${fact.value.spoken}\` was read as ${boardName(fact.value)} mm, which is what it means. Write it in full.`,
          apart: fact.at.path,
          fixes: [{ title: `Write \`${full}\``, edits: [{ file: fact.at.file, span: fact.at.span, text: full }] }],
        },
      ];
    });
  },
});

export const explanation = {
  why: 'Nobody drills a true 30.0 mm square; written in full the pattern cannot be misread by a newcomer or a seller.',
  remedy: 'Write 30.5x30.5 or 25.5x25.5.',
  source: 'common practice',
  bad: `
dryfit: build
name: Example
parts:
  flight-controller:
    mount: «30x30 M3»
`,
  good: `
dryfit: build
name: Example
parts:
  flight-controller:
    mount: 30.5x30.5 M3
`,
};
