/** What is accepted, turned down by settings, or old: shown as such, never hidden where it is dangerous. */
import { describe, expect, it } from 'vitest';
import { analyse } from '../../server/src/analysis';
import { Workspace } from '../../server/src/library/workspace';

const uri = 'file:///club/build.dryfit.yaml';

function findings(build: string, settings?: string, today?: string) {
  const workspace = new Workspace();
  workspace.set(uri, build);
  if (settings) workspace.set('file:///club/settings.dryfit.yaml', settings);
  return analyse(workspace, uri, { today })!.findings.filter((finding) => finding.check !== 'facts-missing');
}

const plugs = 'dryfit: build\nname: A\nparts:\n  battery-lead:\n    plug: XT30\npacks:\n  main:\n    plug: XT60\n';
const cells = 'dryfit: build\nname: A\nparts:\n  esc:\n    cells: 4S\npacks:\n  main:\n    cells: 6S\n';

describe('accept', () => {
  it('marks a finding with its reason', () => {
    const [finding, ...more] = findings(
      `${plugs}accept:\n  - check: battery-plug-differs\n    because: an adapter lives in the box\n`,
    );
    expect(finding).toMatchObject({ check: 'battery-plug-differs', accepted: 'an adapter lives in the box' });
    expect(more).toEqual([]);
  });

  it('can be for one part only', () => {
    const elsewhere = findings(`${plugs}accept:\n  - check: battery-plug-differs\n    at: camera\n    because: x\n`);
    expect(elsewhere.find((finding) => finding.check === 'battery-plug-differs')?.accepted).toBeUndefined();
    expect(elsewhere.map((finding) => finding.check)).toContain('accepted-needlessly');
  });

  it('keeps danger as it is, with the reason beside it', () => {
    const [finding] = findings(`${cells}accept:\n  - check: esc-cells-exceeded\n    because: I know\n`);
    expect(finding).toMatchObject({
      check: 'esc-cells-exceeded',
      severity: 'error',
      danger: 'fire',
      accepted: 'I know',
    });
    expect(finding!.message).toMatch(/^Fire risk: /);
  });

  it('is a finding itself when it has no reason or accepts nothing', () => {
    expect(findings(`${plugs}accept:\n  - check: battery-plug-differs\n`).map((finding) => finding.check)).toEqual(
      expect.arrayContaining(['key-missing', 'battery-plug-differs']),
    );
    const idle = findings(`${plugs.replace('XT30', 'XT60')}accept:\n  - check: battery-plug-differs\n    because: x\n`);
    expect(idle.map((finding) => finding.check)).toEqual(['accepted-needlessly']);
  });
});

describe('settings', () => {
  const settings = (check: string, as: string): string =>
    `dryfit: settings\nseverity:\n  ${check}:\n    as: ${as}\n    because: our choice\n`;

  it('change a severity for the workspace, or switch a check off', () => {
    expect(findings(plugs, settings('battery-plug-differs', 'information'))[0]).toMatchObject({
      severity: 'information',
    });
    expect(findings(plugs, settings('battery-plug-differs', 'off'))).toEqual([]);
  });

  it('cannot turn danger down', () => {
    expect(findings(cells, settings('esc-cells-exceeded', 'off'))[0]).toMatchObject({
      check: 'esc-cells-exceeded',
      severity: 'error',
    });
  });

  it('name only checks that there are', () => {
    const workspace = new Workspace();
    workspace.set('file:///club/settings.dryfit.yaml', settings('batery-plug-differs', 'off'));
    const [finding] = analyse(workspace, 'file:///club/settings.dryfit.yaml')!.findings;
    expect(finding).toMatchObject({ check: 'check-unknown' });
    expect(finding!.fixes[0]!.edits[0]!.text).toBe('battery-plug-differs');
  });
});

describe('a rules profile', () => {
  const build = 'dryfit: build\nname: A\nregion: EU\nparts:\n  strap:\n    weight: 5 g\n';
  it('says when it is older than a year', () => {
    expect(findings(build, undefined, '2027-08-01').map((finding) => finding.check)).toContain('rules-profile-old');
    expect(findings(build, undefined, '2026-11-25').map((finding) => finding.check)).not.toContain('rules-profile-old');
    expect(findings(build).map((finding) => finding.check)).not.toContain('rules-profile-old');
  });
});
