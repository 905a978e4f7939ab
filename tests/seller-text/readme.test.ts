/** What README shows of the way from a seller's page to a build: its files are read without a fault, and its list of kinds is whole. */
import { readFileSync } from 'node:fs';
import path from 'node:path';
import { expect, it } from 'vitest';
import { analyse } from '../../server/src/analysis';
import { partKinds } from '../../server/src/library/seller-text/propose';
import { Workspace } from '../../server/src/library/workspace';

const readme = readFileSync(path.resolve(import.meta.dirname, '../../README.md'), 'utf8').replace(/\r\n/g, '\n');
const section = readme.slice(
  readme.indexOf("### From a seller's page to a checked build"),
  readme.indexOf('## In other editors'),
);
const [parts = '', build = ''] = [...section.matchAll(/```yaml\n([\s\S]*?)```/g)].map((match) => match[1]!);

it('has a parts file and a build that are read without a fault', () => {
  const workspace = new Workspace();
  const files = { 'file:///w/parts.dryfit.yaml': parts, 'file:///w/first.dryfit.yaml': build };
  for (const [uri, text] of Object.entries(files)) workspace.set(uri, text);
  const today = '2026-11-26';
  expect(analyse(workspace, 'file:///w/parts.dryfit.yaml', { today })!.findings).toEqual([]);
  const analysis = analyse(workspace, 'file:///w/first.dryfit.yaml', { today })!;
  expect(analysis.crafts).toHaveLength(1);
  const structure = new Set(['key-unknown', 'value-misread', 'part-unknown', 'yaml-broken', 'check-crashed']);
  expect(analysis.findings.filter((one) => structure.has(one.check)).map((one) => one.message)).toEqual([]);
});

it('lists every kind of part', () => {
  const listed = /`kind` is one of ([^;]+);/.exec(section)?.[1]?.split(', ');
  expect(listed).toEqual([...partKinds]);
});
