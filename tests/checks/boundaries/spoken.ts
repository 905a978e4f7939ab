/** What one check says of a build, alone. */
import { type Analysis, analyse } from '../../../server/src/analysis';
import type { Finding } from '../../../server/src/build/finding';
import type { Check } from '../../../server/src/checks/check';
import { allChecks } from '../../../server/src/checks/generated/all';
import { Workspace } from '../../../server/src/library/workspace';
import type { Says } from './boundary';

const uri = 'file:///club/edge.dryfit.yaml';

export const checkOf = (id: string): Check => {
  const check = allChecks.find((one) => one.id === id);
  if (!check) throw new Error(`there is no check ${id}`);
  return check;
};

export interface Spoken {
  readonly says: Says;
  readonly findings: readonly Finding[];
  /** What else is wrong with the text: a value that cannot be read is no side of a limit. */
  readonly unread: readonly string[];
  readonly analysis: Analysis;
}

const gravest: readonly Finding['severity'][] = ['error', 'warning', 'information'];
/** Other things that a file of its own is told, whatever its numbers are. */
const aside = new Set(['facts-missing', 'shop-shipping-unsaid', 'offer-part-unknown', 'shop-rates-undated']);

export function spoken(check: Check, text: string): Spoken {
  const workspace = new Workspace();
  workspace.set(uri, text);
  const analysis = analyse(workspace, uri, { checks: [check] })!;
  const findings = analysis.findings.filter((one) => one.check === check.id);
  const unread = analysis.findings.flatMap((one) =>
    one.check === check.id || aside.has(one.check) ? [] : [`${one.check}: ${one.message}`],
  );
  const found = gravest.find((severity) => findings.some((one) => one.severity === severity));
  const says = found ?? (analysis.ran.includes(check.id) ? 'silent' : 'not asked');
  return { says, findings, unread, analysis };
}
