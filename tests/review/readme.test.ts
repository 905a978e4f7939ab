/** What README offers for reviewing in git: it is YAML, and each of its commands runs. Needs `npm run build`. */
import { readFileSync } from 'node:fs';
import path from 'node:path';
import { afterAll, describe, expect, it, vi } from 'vitest';
import { parse } from 'yaml';
import { club } from './club';
import { Repository } from './repository';

const root = path.resolve(import.meta.dirname, '../..');
const readme = readFileSync(path.join(root, 'README.md'), 'utf8').replace(/\r\n/g, '\n');
const section = readme.slice(readme.indexOf('## Reviewing in git'), readme.indexOf('## Taking a finding knowingly'));
const files = [...section.matchAll(/```yaml\n# (\S+)\n([\s\S]*?)```/g)].map(([, name, text]) => ({
  name: name!,
  text: text!,
}));
const hooks = readFileSync(path.join(root, '.pre-commit-hooks.yaml'), 'utf8');

// Each starts processes, on a machine that may be busy.
vi.setConfig({ testTimeout: 60_000 });

const repository = new Repository(club);
afterAll(() => repository.done());

/** The commands of the tool in a text, with their variables filled in and what a shell would do with their output left out. */
const commands = [...files.map(({ text }) => text), hooks]
  .flatMap((text) => [...text.matchAll(/(?:- run: |- |entry: )dryfit (.+)/g)].map((match) => match[1]!))
  .map((line) =>
    line
      .replace(/ > .*$/, '')
      .replace(/"\$(?:HEAD|CI_COMMIT_SHA)"/g, 'HEAD')
      .replace(/"\$SHARD"/g, '1/4')
      .replace(/"\$\w+"/g, 'main'),
  );

describe('README', () => {
  it('has a workflow, one for code scanning, one for merge requests and a hook', () => {
    expect(files.map(({ name }) => name)).toEqual([
      '.github/workflows/builds.yml',
      '.github/workflows/builds-main.yml',
      '.gitlab-ci.yml',
      '.pre-commit-config.yaml',
    ]);
    for (const { text } of files) expect(parse(text)).toBeTypeOf('object');
    const [ours] = parse(hooks);
    expect(ours.id).toBe(parse(files[3]!.text).repos[0].hooks[0].id);
    expect('builds/wren.dryfit.yaml').toMatch(new RegExp(ours.files));
  });

  it('gives a workflow on pull requests no right to write and no trigger that has any', () => {
    const { on, permissions, jobs } = parse(files[0]!.text);
    expect(on).toBe('pull_request');
    expect(permissions).toEqual({ contents: 'read' });
    // What a stranger chooses reaches a shell only through a variable.
    for (const { run } of jobs.review.steps) expect(run ?? '').not.toContain('${{');
  });

  it.each(commands)('says a command that runs: %s', (line) => {
    const { status, err } = repository.dryfit(...line.split(' '));
    expect(err).toBe('');
    expect(status).toBe(0);
  });
});
