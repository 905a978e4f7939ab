/** Applies `accept:` of a build: marks findings that were taken knowingly, and finds entries that no longer accept anything. Hides nothing. */
import type { Craft } from '../build/craft';
import { type Finding, fingerprintOf } from '../build/finding';

export function acceptFindings(craft: Craft, findings: readonly Finding[], ran: readonly string[]): readonly Finding[] {
  const entries = craft.said.accept?.items ?? [];
  const used = new Set<number>();
  const marked = findings.map((finding) => {
    const i = entries.findIndex(
      (entry) => entry.check?.value === finding.check && entry.because && meant(finding, entry.at?.value),
    );
    if (i === -1) return finding;
    used.add(i);
    return { ...finding, accepted: entries[i]!.because!.value };
  });
  const idle = entries.flatMap((entry, i) => {
    const id = entry.check;
    if (used.has(i) || !id || !entry.because) return [];
    const known = ran.includes(id.value);
    const message = known
      ? `\`${id.value}\` finds nothing here any more. Take this entry out.`
      : `\`${id.value}\` did not run on this build, or there is no check of that name. Take this entry out, or correct the name.`;
    return [
      {
        check: 'accepted-needlessly',
        severity: 'information' as const,
        message,
        at: id.at,
        related: [],
        fixes: [],
        fingerprint: fingerprintOf('accepted-needlessly', id.at),
      },
    ];
  });
  return [...marked, ...idle];
}

/** `at:` names a part or any step of the path; without it the whole build is meant. */
function meant(finding: Finding, at: string | undefined): boolean {
  return at === undefined || finding.at.path === at || finding.at.path.split(/[.>]/).includes(at);
}
