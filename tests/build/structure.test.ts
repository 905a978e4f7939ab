/** Mistakes of form, each told once, at the right place, with the way out: keys, units, words, YAML itself. */
import { describe, expect, it } from 'vitest';
import { analyse } from '../../server/src/analysis';
import { Workspace } from '../../server/src/library/workspace';
import { unmark } from '../support/marked';

const uri = 'file:///club/a.dryfit.yaml';

function find(marked: string) {
  const { text, spans } = unmark(marked);
  const workspace = new Workspace();
  workspace.set(uri, text);
  const findings = analyse(workspace, uri)!.findings.filter((finding) => finding.check !== 'facts-missing');
  return { text, spans, findings };
}

describe('one mistake, one finding, at its place', () => {
  it.each([
    ['key-unknown', 'dryfit: build\nname: A\nparts:\n  motors:\n    «stattor»: 2207\n', 'stator'],
    ['key-unknown', 'dryfit: build\nname: A\n«partz»:\n  motors:\n    kv: 1800\n', 'parts'],
    ['value-misread', 'dryfit: build\nname: A\nparts:\n  motors:\n    weight: «31.8»\n', '31.8 g'],
    ['value-misread', 'dryfit: build\nname: A\nparts:\n  motors:\n    stator: «802»\n', '0802'],
    ['term-unknown', 'dryfit: build\nname: A\nparts:\n  battery-lead:\n    plug: «xt60»\n', 'XT60'],
    ['term-unknown', 'dryfit: build\nname: A\ncraft: «freestile-5»\n', 'freestyle-5'],
    ['value-empty', 'dryfit: build\nname: A\nparts:\n  motors:\n    «kv»:\n', undefined],
    ['value-shape', 'dryfit: build\nname: A\n«parts»: motors\n', undefined],
    ['value-shape', 'dryfit: build\nname: A\nparts:\n  motors:\n    «kv»:\n      a: 1\n', undefined],
    ['key-twice', 'dryfit: build\nname: A\n«name»: B\n', undefined],
    ['file-kind-unknown', 'dryfit: «biuld»\nname: A\n', 'build'],
    ['file-kind-missing', '«name»: A\n', 'dryfit: build\n'],
    ['key-missing', '«dryfit»: build\nparts:\n  motors:\n    kv: 1800\n', undefined],
    ['alias-unknown', 'dryfit: build\nname: «*nowhere»\n', undefined],
    ['part-unknown', 'dryfit: build\nname: A\nparts:\n  motors:\n    use: «nothing-here»\n', undefined],
  ])('%s in %j', (check, marked, fix) => {
    const { text, spans, findings } = find(marked);
    expect(findings.map((finding) => [finding.check, text.slice(finding.at.span.start, finding.at.span.end)])).toEqual(
      spans.map((span) => [check, text.slice(span.start, span.end)]),
    );
    expect(findings[0]!.at.span).toEqual(spans[0]);
    expect(findings[0]!.message).toMatch(/[.!?]$/);
    if (fix !== undefined) expect(findings[0]!.fixes.map((one) => one.edits[0]!.text)).toContain(fix);
  });

  it('mends what it offers to mend, byte for byte around it', () => {
    for (const marked of [
      'dryfit: build\nname: A\nparts:\n  motors:\n    stattor:   2207   # keep\n',
      'dryfit: build\nname: A\nparts:\n  motors:\n    weight: 31.8\r\n',
      'dryfit: build\nname: A\nnote: fits: yes\n',
      '\ufeffname: A\n',
    ]) {
      const workspace = new Workspace();
      workspace.set(uri, marked);
      const before = analyse(workspace, uri)!.findings;
      const fixable = before.find((finding) => finding.fixes.length > 0)!;
      expect(fixable, marked).toBeDefined();
      const edit = fixable.fixes[0]!.edits[0]!;
      const after = marked.slice(0, edit.span.start) + edit.text + marked.slice(edit.span.end);
      workspace.set(uri, after);
      const left = analyse(workspace, uri)!.findings;
      expect(left.filter((finding) => finding.check === fixable.check)).toEqual([]);
      expect(left.filter((finding) => finding.severity === 'error').length).toBeLessThan(
        before.filter((finding) => finding.severity === 'error').length,
      );
    }
  });
});

describe('YAML as builders meet it', () => {
  it('reports a mistake inside an anchor once, where it is written', () => {
    const { findings, text } = find(
      'dryfit: build\nname: A\nparts:\n  motors: &m\n    weight: «31.8»\npacks:\n  main: *m\n',
    );
    const misread = findings.filter((finding) => finding.check === 'value-misread');
    expect(misread.map((finding) => text.slice(finding.at.span.start, finding.at.span.end))).toEqual(['31.8']);
  });

  it('follows merge keys and lets the written key win', () => {
    const workspace = new Workspace();
    workspace.set(
      uri,
      'dryfit: build\nname: A\nparts:\n  strap: &s\n    weight: 6 g\n    length: 200 mm\n  buzzer:\n    weight: 2 g\nextras: 1\n',
    );
    workspace.set(
      uri,
      'dryfit: build\nname: A\nparts:\n  extras:\n    one: &s\n      weight: 6 g\n    two:\n      <<: *s\n      weight: 7 g\n',
    );
    const craft = analyse(workspace, uri)!.crafts[0]!;
    expect(craft.roles.extras?.entries.get('two')?.weight?.value).toBeCloseTo(0.007);
    expect(craft.roles.extras?.entries.get('one')?.weight?.value).toBeCloseTo(0.006);
  });

  it('reads several documents in one file', () => {
    const workspace = new Workspace();
    workspace.set(
      uri,
      'dryfit: parts\nparts:\n  a-strap:\n    kind: strap\n    weight: 6 g\n---\ndryfit: build\nname: A\nparts:\n  strap:\n    use: a-strap\n',
    );
    const analysis = analyse(workspace, uri)!;
    expect(analysis.crafts[0]?.roles.strap?.weight?.value).toBeCloseTo(0.006);
    expect(analysis.findings.filter((finding) => finding.severity !== 'information')).toEqual([]);
  });

  it('judges values on what was written, whatever a YAML version makes of them', () => {
    const workspace = new Workspace();
    workspace.set(
      uri,
      'dryfit: build\nname: NO\nparts:\n  motors:\n    stator: 0802\n    count: 4\n  buzzer:\n    self-powered: NO\n  propellers:\n    size: 5.1x3.6x3\n',
    );
    const { roles, said } = analyse(workspace, uri)!.crafts[0]!;
    expect(said.name?.value).toBe('NO');
    expect(roles.motors?.stator?.value).toEqual({ diameter: 0.008, height: 0.002 });
    expect(roles.buzzer?.['self-powered']?.value).toBe(false);
  });

  it.each([
    ['', 'file-kind-missing'],
    ['   \n\n', 'file-kind-missing'],
    ['# only a comment\n', 'file-kind-missing'],
    ['\u0000\u0001\u0002PNG', 'not-text'],
    ['x'.repeat(5_000_000), 'file-too-large'],
    ['dryfit: build\nname: "open\n', 'yaml-syntax'],
    ['dryfit: build\n\tname: A\n', 'yaml-syntax'],
    ['- a\n- b\n', 'file-kind-missing'],
    ['just text', 'file-kind-missing'],
    [`dryfit: build\nname: A\nnote: ${'['.repeat(500)}`, 'file-too-deep'],
  ])('tells one thing about %j', (text, check) => {
    const workspace = new Workspace();
    workspace.set(uri, text);
    const checks = analyse(workspace, uri)!.findings.map((finding) => finding.check);
    expect(checks).toContain(check);
  });

  it('shows five hundred findings, the gravest, and counts the rest in one line', () => {
    const unknown = Array.from({ length: 620 }, (_, i) => `    x${i}: much\n`).join('');
    const { findings } = find(`dryfit: build\nname: A\nparts:\n  frame:\n    weight: much\n${unknown}`);
    expect(findings).toHaveLength(501);
    expect(findings.some(({ check }) => check === 'value-misread')).toBe(true);
    const last = findings.at(-1)!;
    expect(last.check).toBe('too-many-findings');
    expect(Number(/^\d+/.exec(last.message)![0])).toBeGreaterThanOrEqual(121);
  });

  it('is not blown up by aliases', () => {
    const lines = ['dryfit: build', 'name: A', 'parts:', '  extras:', '    a0: &a0 { weight: 1 g }'];
    for (let i = 1; i < 12; i++)
      lines.push(
        `    a${i}: &a${i} { ${'abcdefghij'
          .split('')
          .map((c) => `${c}: *a${i - 1}`)
          .join(', ')} }`,
      );
    const start = performance.now();
    const { findings } = find(`${lines.join('\n')}\n`);
    expect(findings.map((finding) => finding.check)).toContain('file-too-deep');
    expect(performance.now() - start).toBeLessThan(20_000);
  });
});
