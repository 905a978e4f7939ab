/** SARIF against the published 2.1.0 schema, and what code scanning asks of it beyond the schema. Needs `npm run build`. */
import { readFileSync } from 'node:fs';
import { createRequire } from 'node:module';
import { Ajv } from 'ajv';
import { afterAll, describe, expect, it, vi } from 'vitest';
import { analyse } from '../../server/src/analysis';
import { allChecks } from '../../server/src/checks/generated/all';
import { sarif } from '../../server/src/report/sarif';
import { faultyBuilds, sampleNames, sampleText, sampleUri, sampleWorkspace } from '../support/samples';
import { club } from './club';
import { Repository } from './repository';

/** As published for 2.1.0 (rtm.5), shipped by a package of test matchers; draft 4 says `id` where newer drafts say `$id`. */
const {
  id: _,
  $schema: __,
  ...schema
} = JSON.parse(
  readFileSync(
    createRequire(import.meta.url).resolve('@microsoft/jest-sarif/lib/schemas/sarif-2.1.0-rtm.5.json'),
    'utf8',
  ),
);
const ajv = new Ajv({
  strict: false,
  // One of its patterns is not valid with the Unicode flag.
  unicodeRegExp: false,
  allErrors: true,
  formats: {
    uri: /^[a-z][a-z0-9+.-]*:[^\s]*$/i,
    'uri-reference': /^(?:[A-Za-z0-9\-._~!$&'()*+,;=:@/?#]|%[0-9A-Fa-f]{2})*$/,
    'date-time': /^\d{4}-\d\d-\d\dT/,
  },
});
const valid = ajv.compile(schema);

interface Result {
  ruleId: string;
  ruleIndex: number;
  level: string;
  message: { text: string };
  baselineState?: string;
  suppressions?: unknown[];
  partialFingerprints: Record<string, string>;
  locations: { physicalLocation: { artifactLocation: { uri: string }; region: Record<string, number> } }[];
  relatedLocations?: Result['locations'];
}
interface Log {
  version: string;
  runs: { results: Result[]; tool: { driver: { rules: { id: string }[] } } }[];
}

function checked(text: string): Log {
  const log = JSON.parse(text) as Log;
  valid(log);
  expect(valid.errors ?? []).toEqual([]);
  return log;
}

function asCodeScanningWants(log: Log): void {
  expect(log.version).toBe('2.1.0');
  expect(log.runs).toHaveLength(1);
  const [{ results, tool }] = log.runs as [Log['runs'][number]];
  expect(results.length).toBeLessThanOrEqual(5000);
  const prints = results.map((result) => result.partialFingerprints['dryfit/v1']);
  expect(new Set(prints).size).toBe(prints.length);
  for (const result of results) {
    expect(tool.driver.rules[result.ruleIndex]!.id).toBe(result.ruleId);
    for (const { physicalLocation } of [...result.locations, ...(result.relatedLocations ?? [])]) {
      expect(physicalLocation.artifactLocation.uri).not.toMatch(/^[a-z]+:|^\/|(?:^|\/)\.\.(?:\/|$)/i);
      const { startLine, startColumn, endLine, endColumn } = physicalLocation.region as Record<string, number>;
      for (const n of [startLine, startColumn, endLine, endColumn]) expect(n).toBeGreaterThan(0);
      expect([endLine! - startLine!, endLine === startLine ? endColumn! - startColumn! : 0].every((n) => n >= 0)).toBe(
        true,
      );
    }
  }
}

const found = (log: Log): Map<string, string> =>
  new Map(
    log.runs[0]!.results.map((result) => [
      result.partialFingerprints['dryfit/v1']!,
      `${result.ruleId} ${result.message.text}`,
    ]),
  );

// Each starts processes, on a machine that may be busy.
vi.setConfig({ testTimeout: 60_000 });

const repository = new Repository({
  ...club,
  ...Object.fromEntries(sampleNames.map((name) => [`samples/${name}`, sampleText(name)])),
});
afterAll(() => repository.done());

describe('SARIF', () => {
  it('of a check is valid and as code scanning wants it', () => {
    const log = checked(repository.dryfit('check', '--format', 'sarif').out);
    asCodeScanningWants(log);
    expect(log.runs[0]!.results.length).toBeGreaterThan(20);
  });

  it('names files from the top of the repository, wherever it runs', () => {
    const { out } = repository.dryfit('check', 'samples/faulty', '--format', 'sarif');
    const files = checked(out).runs[0]!.results.map(
      (result) => result.locations[0]!.physicalLocation.artifactLocation.uri,
    );
    expect([...new Set(files)]).toEqual(faultyBuilds.map((name) => `samples/${name}`));
  });

  it('keeps its fingerprints when lines move, and gives others to other findings', () => {
    const name = 'samples/faulty/first-five.dryfit.yaml';
    const before = found(checked(repository.dryfit('check', '--format', 'sarif').out));
    repository.write(name, `# One line\n\n${repository.read(name).replace('parts:', '\n# and more\nparts:')}`);
    const after = found(checked(repository.dryfit('check', '--format', 'sarif').out));
    expect(after).toEqual(before);
    repository.reset();
  });

  it('of a review tells new from old', () => {
    repository.change('builds/wren.dryfit.yaml', 'gale-2207', 'squall-2306');
    repository.change('samples/faulty/first-five.dryfit.yaml', 'name: First', 'name: The first');
    const log = checked(repository.dryfit('review', 'main', '--format', 'sarif').out);
    asCodeScanningWants(log);
    const states = log.runs[0]!.results.map(({ ruleId, baselineState }) => `${ruleId} ${baselineState}`);
    expect(states).toContain('propeller-hub-differs new');
    expect(states.filter((state) => state.endsWith('unchanged')).length).toBeGreaterThan(3);
    repository.reset();
  });

  it('says what was accepted, and why', () => {
    repository.change('bench.dryfit.yaml', 'polarisation: LHCP', 'polarisation: RHCP');
    repository.change(
      'builds/wren.dryfit.yaml',
      'goals:',
      'accept:\n  - check: polarisation-differs\n    because: on purpose\ngoals:',
    );
    const log = checked(repository.dryfit('check', 'builds', '--format', 'sarif').out);
    const one = log.runs[0]!.results.find(({ ruleId }) => ruleId === 'polarisation-differs');
    expect(one?.suppressions).toEqual([{ kind: 'inSource', justification: 'on purpose' }]);
    repository.reset();
  });

  it('stays within what is taken, gravest first', () => {
    const workspace = sampleWorkspace();
    const uri = sampleUri(faultyBuilds[0]!);
    const one = analyse(workspace, uri)!.findings[0]!;
    const many = Array.from({ length: 6000 }, (_, i) => ({
      ...one,
      severity: i === 5999 ? ('error' as const) : ('information' as const),
      fingerprint: `many@${i}`,
    }));
    const where = { name: () => 'faulty/many.dryfit.yaml', file: (name: string) => workspace.get(name) };
    const log = checked(JSON.stringify(sarif(many, { version: '0.0.0', checks: allChecks, where })));
    asCodeScanningWants(log);
    expect(log.runs[0]!.results).toHaveLength(5000);
    expect(log.runs[0]!.results[0]!.level).toBe('error');
  });
});
