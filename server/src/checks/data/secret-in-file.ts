/** A note holds what should not be in a file that is shared: a bind phrase, a password, coordinates. */

import { check } from '../check';
import { notesOf } from '../notes';

export default check({
  id: 'secret-in-file',
  group: 'data',
  title: 'Something private in a shared file',
  severity: 'warning',
  needs: {},
  when: (craft) => notesOf(craft).length > 0,
  judge(_, craft) {
    return notesOf(craft).flatMap((note) => {
      const what = /(?:bind(?:ing)?[ -]?phrase|pass(?:word|phrase))\s*[:=]\s*\S+/i.test(note.value)
        ? 'a bind phrase or password'
        : /-?\d{1,2}\.\d{4,}\s*[,;]\s*-?\d{1,3}\.\d{4,}/.test(note.value)
          ? 'coordinates'
          : undefined;
      return what
        ? [
            {
              at: note,
              apart: note.at.path,
              message: `This note seems to hold ${what}. Files like this get shared, and git keeps what was once in them. Keep it elsewhere, and change it if it was shared.`,
            },
          ]
        : [];
    });
  },
});

export const explanation = {
  why: 'Whoever has the bind phrase can bind to the craft; git keeps it even after it was deleted.',
  remedy: 'Keep it elsewhere, and change it if the file was ever shared.',
  source: 'common practice',
  bad: `
dryfit: build
name: Example
note: «bind phrase = sunny meadow 12»
`,
  good: `
dryfit: build
name: Example
note: the bind phrase is with the club
`,
};
