/** The club's samples: sound ones without error or warning and with nearly every check that applies really run; faulty ones found. */
import { describe, expect, it } from 'vitest';
import { analyse } from '../../server/src/analysis';
import { faultyBuilds, sampleNames, sampleUri, sampleWorkspace, soundBuilds } from '../support/samples';

const workspace = sampleWorkspace();
const analysisOf = (name: string) => analyse(workspace, sampleUri(name))!;

describe.each(sampleNames.filter((name) => !name.startsWith('faulty/')))('%s', (name) => {
  it('has no error and no warning', () => {
    const grave = analysisOf(name).findings.filter((finding) => finding.severity !== 'information');
    expect(grave.map((finding) => `${finding.check}: ${finding.message}`)).toEqual([]);
  });
});

describe.each(soundBuilds)('%s', (name) => {
  it('lets at least nine of ten checks that apply really run', () => {
    const { ran, notChecked } = analysisOf(name);
    const left = notChecked.map((one) => one.check).filter((id) => !ran.includes(id));
    expect(ran.length / (ran.length + left.length), left.join(', ')).toBeGreaterThanOrEqual(0.9);
  });
});

describe.each(faultyBuilds)('%s', (name) => {
  it('has mistakes that are found in words', () => {
    const { findings } = analysisOf(name);
    expect(findings.filter((finding) => finding.severity === 'error').length).toBeGreaterThan(5);
    for (const finding of findings) expect(finding.message).not.toMatch(/undefined|NaN|\[object/);
  });
});

it('has at least six sound builds and two faulty ones', () => {
  expect(soundBuilds.length).toBeGreaterThanOrEqual(6);
  expect(faultyBuilds.length).toBeGreaterThanOrEqual(2);
});

it('gives fingerprints that are unique in a file', () => {
  for (const name of sampleNames) {
    const prints = analysisOf(name).findings.map((finding) => finding.fingerprint);
    expect(
      prints.filter((print, i) => prints.indexOf(print) !== i),
      name,
    ).toEqual([]);
  }
});
