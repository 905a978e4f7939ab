/** `dryfit review`: what a change does to the builds of a repository. Chooses versions and form; the review comes from the engine. */
import { severities } from '../build/finding';
import { annotations } from '../report/annotations';
import { figuresOfCard } from '../report/review-figures';
import { reviewAsJson } from '../report/review-json';
import { reviewAsMarkdown } from '../report/review-markdown';
import { introducedFindings, type ReviewShown, whereIn } from '../report/review-shown';
import { reviewAsSvg } from '../report/review-svg';
import { reviewAsText } from '../report/review-text';
import { reviewAsView } from '../report/review-view';
import { review as compare, crashed, failsAt } from '../review/review';
import { sarifText } from './check-hosts';
import { CannotRun, type Console } from './console';
import { openRepository, pathOfUri, type Version } from './git';
import { asJson, flag, oneOf, text, wordsOf } from './words';
import { writeFile } from './write';

/** The last is for the editor's view and promises nothing. */
const formats = ['text', 'markdown', 'json', 'sarif', 'annotations', 'view'] as const;

export function review(args: readonly string[], console: Console): number {
  const { values, positionals } = wordsOf(args, {
    format: text,
    'fail-on': text,
    'merge-base': flag,
    seconds: text,
    svg: text,
    'svg-at': text,
  });
  const format = oneOf('format', values.format ?? 'text', formats.slice(0, values.format === 'view' ? 6 : 5));
  const threshold = oneOf('fail-on', values['fail-on'] ?? 'error', severities);
  const [base, head, ...more] = positionals;
  if (base === undefined || more.length > 0)
    throw new CannotRun(
      '`dryfit review` takes the version to compare with, and the newer one if it is not the working tree.',
    );
  const beforeEach = timeLimit(values.seconds);
  const repository = openRepository(console.cwd);
  const newer = head === undefined ? undefined : repository.commit(head);
  const older = values['merge-base']
    ? repository.mergeBase(repository.commit(base), newer ?? repository.commit('HEAD'))
    : repository.commit(base);
  const before = repository.at(older);
  const after = newer === undefined ? repository.workingTree() : repository.at(newer);
  const shown: ReviewShown = {
    review: compare(before.texts, after.texts, { today: console.today, beforeEach, figuresOf: figuresOfCard }),
    base,
    head: head ?? 'working tree',
    name: pathOfUri,
    notes: linkNotes(after),
  };
  if (values.svg !== undefined) writeFile(console, values.svg, reviewAsSvg(shown));
  console.out(written(format, shown, values['svg-at'] ?? values.svg, repository.root));
  if (crashed(shown.review)) return 2;
  return failsAt(shown.review, threshold) ? 1 : 0;
}

function written(format: string, shown: ReviewShown, picture: string | undefined, root: string): string {
  const where = whereIn(shown, shown.review.sides.after);
  switch (format) {
    case 'json':
      return asJson(reviewAsJson(shown));
    case 'markdown':
      return reviewAsMarkdown(shown, picture);
    case 'annotations':
      return annotations(introducedFindings(shown), where);
    case 'sarif':
      return reviewAsSarif(shown);
    case 'view':
      return `${JSON.stringify({ ...reviewAsView(shown), root })}\n`;
    default:
      return reviewAsText(shown);
  }
}

/** What there is after the change: new findings and those that were there before, told apart. What is gone is no alert. */
function reviewAsSarif(shown: ReviewShown): string {
  const { review } = shown;
  const all = [...review.builds, ...review.files];
  const fresh = new Set(all.flatMap(({ findings }) => findings.introduced.map(({ finding }) => finding)));
  const found = all.flatMap(({ findings }) => [
    ...findings.remaining,
    ...findings.accepted.map(({ finding }) => finding),
  ]);
  return sarifText([...fresh, ...found], {
    where: whereIn(shown, review.sides.after),
    stateOf: (finding) => (fresh.has(finding) ? 'new' : 'unchanged'),
  });
}

const linkNotes = ({ links }: Version): readonly string[] =>
  links.length === 0
    ? []
    : [
        `Links are not followed, so ${links
          .slice(0, 5)
          .map((name) => `\`${name}\``)
          .join(
            ', ',
          )}${links.length > 5 ? ` and ${links.length - 5} more` : ''} ${links.length === 1 ? 'was' : 'were'} not read.`,
      ];

/** A repository from a stranger must not keep a machine busy for hours. */
export function timeLimit(said: string | undefined): () => void {
  const seconds = Number(said ?? 300);
  if (!(seconds > 0)) throw new CannotRun('--seconds takes a number above 0.');
  const end = performance.now() + seconds * 1000;
  return () => {
    if (performance.now() > end)
      throw new CannotRun(
        `Not done within ${seconds} s, so nothing is said. Allow more with --seconds, or check in shards.`,
      );
  };
}
