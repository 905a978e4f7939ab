/** A repository from a stranger: nothing outside is read, nothing in it is run, and no word of it becomes markup. Needs `npm run build`. */
import { chmodSync, existsSync, mkdirSync, rmSync, symlinkSync, truncateSync, writeFileSync } from 'node:fs';
import path from 'node:path';
import { afterAll, afterEach, describe, expect, it, vi } from 'vitest';
import { club } from './club';
import { Repository } from './repository';

// Each starts processes, on a machine that may be busy.
vi.setConfig({ testTimeout: 60_000 });

const repository = new Repository(club);
const outside = new Repository({ 'secret.dryfit.yaml': 'dryfit: build\nname: Nobody may read this\n' });
afterEach(() => repository.reset());
afterAll(() => {
  repository.done();
  outside.done();
});

const formats = ['text', 'markdown', 'json', 'sarif', 'annotations'] as const;

/** Reviews in every form; none may fail unexpectedly or tell what lies outside. */
function everyForm(...more: string[]): Readonly<Record<(typeof formats)[number], string>> {
  const all = formats.map((format) => [format, inForm(format, ...more)] as const);
  return Object.fromEntries(all) as Record<(typeof formats)[number], string>;
}

function inForm(format: (typeof formats)[number], ...more: string[]): string {
  const { status, out, err } = repository.dryfit('review', 'main', ...more, '--format', format);
  expect(err).toBe('');
  expect([0, 1]).toContain(status);
  expect(out).not.toContain('Nobody may read this');
  return out;
}

/** A comment without our own tags and without code spans, in which whatever stands is inert. */
const outsideCode = (markdown: string): string =>
  markdown
    .replace(/^<!-- dryfit review -->$/m, '')
    .replace(/<\/?(?:details|summary|code|b)>/g, '')
    .replace(/(?<![\\`])(`+)(?!`)[\s\S]*?(?<!`)\1(?!`)/g, '');

describe('a hostile repository', () => {
  it('cannot make a link out of the tree be read, in the working tree or in a commit', () => {
    symlinkSync(outside.full('secret.dryfit.yaml'), repository.full('builds/link.dryfit.yaml'));
    symlinkSync(outside.folder, repository.full('elsewhere'));
    const { text, markdown } = everyForm();
    expect(text).toContain('Links are not followed, so `builds/link.dryfit.yaml` was not read.');
    expect(markdown).toContain('Links are not followed');
    repository.git('checkout', '-q', '-b', 'linked');
    repository.commit('Links');
    expect(inForm('text', 'linked')).toContain('Links are not followed');
    repository.git('checkout', '-q', 'main');
    repository.git('branch', '-q', '-D', 'linked');
  });

  it('cannot put a link where a folder was', () => {
    rmSync(repository.full('builds'), { recursive: true });
    writeFileSync(outside.full('wren.dryfit.yaml'), 'dryfit: build\nname: Nobody may read this\n');
    symlinkSync(outside.folder, repository.full('builds'));
    everyForm();
  });

  it('cannot reach out of the workspace with `use:`', () => {
    repository.change('builds/wren.dryfit.yaml', 'gale-2207', '../../../../etc/passwd');
    expect(everyForm().text).toContain('No parts file of this workspace has `../../../../etc/passwd`');
  });

  it('gets a finding for a file of 200 MB, which is not read', () => {
    repository.write('builds/huge.dryfit.yaml', 'dryfit: build\n');
    truncateSync(repository.full('builds/huge.dryfit.yaml'), 200 * 2 ** 20);
    expect(inForm('text')).toContain('file-too-large');
  });

  it('gets a finding for aliases that multiply', () => {
    const lines = ['dryfit: build', 'name: Bomb', 'a0: &a0 [x, x, x, x, x, x, x, x, x]'];
    for (let i = 1; i < 30; i++)
      lines.push(
        `a${i}: &a${i} [${Array(9)
          .fill(`*a${i - 1}`)
          .join(', ')}]`,
      );
    repository.write('builds/bomb.dryfit.yaml', lines.join('\n'));
    expect(inForm('text')).toContain('file-too-deep');
  });

  it.each([
    ['in braces', `dryfit: build\nname: Deep\nx: ${'{a: '.repeat(10_000)}1${'}'.repeat(10_000)}\n`],
    ['in brackets', `dryfit: build\nname: Deep\nx: ${'['.repeat(10_000)}${']'.repeat(10_000)}\n`],
    [
      'in lines',
      `dryfit: build\nname: Deep\n${Array.from({ length: 10_000 }, (_, i) => `${' '.repeat(Math.min(i, 190))}a:\n`).join('')}`,
    ],
    ['as dashes', `dryfit: build\nname: Deep\nx:\n  ${'- '.repeat(10_000)}1\n`],
  ])('gets a finding for 10,000 levels %s', (_, text) => {
    repository.write('builds/deep.dryfit.yaml', text);
    expect(inForm('json')).toMatch(/file-too-deep|yaml-syntax/);
  });

  it('is refused when it is too much', () => {
    repository.write('many.txt', 'x');
    const { status, err } = repository.dryfit('review', 'main', '--seconds', '0.000001');
    expect(status).toBe(2);
    expect(err).toContain('Not done within');
  });

  it('cannot make git run anything of it', () => {
    const ran = path.join(repository.folder, 'ran');
    const script = repository.full('evil.sh');
    writeFileSync(script, `#!/bin/sh\ntouch ${JSON.stringify(ran)}\ncat\n`);
    chmodSync(script, 0o755);
    mkdirSync(repository.full('hooks'), { recursive: true });
    for (const hook of ['post-index-change', 'fsmonitor-watchman', 'post-checkout', 'reference-transaction']) {
      writeFileSync(repository.full(`hooks/${hook}`), `#!/bin/sh\ntouch ${JSON.stringify(ran)}\n`);
      chmodSync(repository.full(`hooks/${hook}`), 0o755);
    }
    const settings: [string, string][] = [
      ['core.hooksPath', repository.full('hooks')],
      ['core.fsmonitor', script],
      ['core.pager', script],
      ['diff.external', script],
      ['filter.evil.smudge', script],
      ['filter.evil.clean', script],
      ['diff.evil.textconv', script],
      ['core.sshCommand', script],
      ['core.editor', script],
      ['alias.ls-tree', `!${script}`],
      ['alias.cat-file', `!${script}`],
    ];
    repository.write('.gitattributes', '*.yaml filter=evil diff=evil\n');
    repository.write('git', `#!/bin/sh\ntouch ${JSON.stringify(ran)}\n`);
    chmodSync(repository.full('git'), 0o755);
    for (const [key, value] of settings) repository.git('config', key, value);
    repository.change('builds/wren.dryfit.yaml', 'gale-2207', 'brisk-2306');
    everyForm();
    repository.dryfit('check', '--changed-since', 'main');
    const wasRun = existsSync(ran);
    for (const [key] of settings) repository.git('config', '--unset', key);
    repository.remove('.gitattributes');
    expect(wasRun).toBe(false);
  });

  it('cannot pass an option for a version', () => {
    for (const name of ['--output=/tmp/x', '-h', '--all']) {
      const { status, err } = repository.dryfit('review', '--', name);
      expect(status).toBe(2);
      expect(err).toContain('not an option');
    }
    expect(repository.dryfit('review', 'nowhere')).toMatchObject({
      status: 2,
      err: expect.stringContaining('There is no branch'),
    });
  });

  const nasty =
    '<img src=x onerror=alert(1)> @ada [x](javascript:alert(1)) `code` | **b** #12 https://evil.example ![i](https://evil.example/i.png)';

  it('cannot put markup, links, mentions or images into a comment', () => {
    repository.change('builds/wren.dryfit.yaml', 'name: Wren', `name: ${JSON.stringify(nasty)}`);
    repository.change('builds/wren.dryfit.yaml', 'gale-2207', JSON.stringify(`${nasty}</code></details>`));
    repository.change(
      'builds/wren.dryfit.yaml',
      'goals:',
      `${JSON.stringify(`key ${nasty}`)}: ${JSON.stringify(`\`\`\` ${nasty}`)}\ngoals:`,
    );
    const { markdown } = everyForm();
    const bare = outsideCode(markdown);
    expect(bare).not.toMatch(/(?<!\\)</);
    expect(bare).not.toMatch(/@\w/);
    expect(bare).not.toMatch(/(?<!\\)\]\(/);
    expect(bare).not.toMatch(/https?:\/\//);
    expect(bare).not.toMatch(/(?<!&)#\d/);
    // A closing tag counts where a line begins with it.
    expect(markdown.match(/^<details>/gm)?.length).toBe(markdown.match(/^ *<\/details>/gm)?.length);
  });

  it('cannot do so with the name of a file', () => {
    const names = [
      'builds/<b onclick=x>@ada.dryfit.yaml',
      'builds/a`b`|c](x).dryfit.yaml',
      'builds/line\n::error::break\n# head.dryfit.yaml',
      'builds/esc\u001b[31mred\u202e.dryfit.yaml',
      'builds/100%25,x:y.dryfit.yaml',
    ];
    for (const name of names) repository.write(name, 'dryfit: build\nname: N\nparts:\n  motors:\n    use: lost\n');
    const { markdown, text, annotations, json, sarif } = everyForm();
    for (const out of [markdown, text, annotations]) {
      // biome-ignore lint/suspicious/noControlCharactersInRegex: they must not be there
      expect(out).not.toMatch(/[\u0000-\u0009\u000b-\u001f\u202e]/);
    }
    expect(annotations.split('\n').filter((line) => line !== '' && !line.startsWith('::error file='))).toEqual([]);
    expect(annotations.split('\n').filter(Boolean)).toHaveLength(names.length);
    expect(markdown).not.toMatch(/^# head/m);
    expect(outsideCode(markdown)).not.toMatch(/(?<!\\)<|@\w/);
    expect(
      JSON.parse(json)
        .builds.map(({ file }: { file: string }) => file)
        .sort(),
    ).toEqual([...names].sort());
    expect(JSON.parse(sarif).runs[0].results).toHaveLength(names.length);
  });

  it('cannot break the picture', () => {
    repository.change(
      'builds/wren.dryfit.yaml',
      'name: Wren',
      `name: ${JSON.stringify('</text><script>alert(1)</script>')}`,
    );
    repository.change('builds/wren.dryfit.yaml', 'gale-2207', 'brisk-2306');
    repository.dryfit('review', 'main', '--svg', 'out.svg');
    const svg = repository.read('out.svg');
    expect(svg).toMatch(/^<svg /);
    expect(svg).not.toContain('<script');
  });
});
