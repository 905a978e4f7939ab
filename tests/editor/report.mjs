/** Says what a stage of the editor tests ran and leaves it for the whole test run to add up; must not count what did not run as passed. */
import { mkdirSync, writeFileSync } from 'node:fs';
import path from 'node:path';

/** @param {{ passed: string[], failed: string[], skipped: string[], errors?: string[] }} results names of the tests, and what went wrong */
export function writeReport(stage, results) {
  const { DRYFIT_STAGE_REPORT: file } = process.env;
  if (file) {
    mkdirSync(path.dirname(file), { recursive: true });
    writeFileSync(file, JSON.stringify(results));
  }
  for (const name of results.passed) console.log(`  passed  ${name}`);
  for (const name of results.skipped) console.log(`  skipped ${name}`);
  for (const name of results.failed) console.log(`  FAILED  ${name}`);
  for (const error of results.errors ?? []) console.log(`\n${error}`);
  console.log(`${stage}: ${results.passed.length} passed, ${results.failed.length} failed`);
  process.exitCode = results.failed.length > 0 ? 1 : 0;
}
