/** A fresh editor profile in a temporary folder, quiet and without network use; must never read the person's own profile. */
import { mkdirSync, mkdtempSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import path from 'node:path';
import { atEnd } from '../support/at-end.mjs';

export const settings = {
  'telemetry.telemetryLevel': 'off',
  'update.mode': 'none',
  'update.showReleaseNotes': false,
  'extensions.autoCheckUpdates': false,
  'extensions.autoUpdate': false,
  'extensions.ignoreRecommendations': true,
  'json.schemaDownload.enable': false,
  'npm.fetchOnlinePackageInfo': false,
  'typescript.disableAutomaticTypeAcquisition': true,
  'workbench.enableExperiments': false,
  'workbench.startupEditor': 'none',
  'workbench.tips.enabled': false,
  'workbench.welcomePage.walkthroughs.openOnInstall': false,
  'workbench.secondarySideBar.defaultVisibility': 'hidden',
  'workbench.editor.enablePreview': false,
  'workbench.reduceMotion': 'on',
  'security.workspace.trust.enabled': false,
  'chat.disableAIFeatures': true,
  'chat.commandCenter.enabled': false,
  'git.enabled': false,
  'git.openRepositoryInParentFolders': 'never',
  'remote.autoForwardPorts': false,
  'window.restoreWindows': 'none',
  'files.autoSave': 'off',
  'files.hotExit': 'off',
  'editor.minimap.enabled': false,
  'editor.hover.delay': 100,
  'editor.cursorBlinking': 'solid',
  'editor.inlineSuggest.enabled': false,
};

/** @param {Record<string, unknown>} own settings that differ in this profile */
export function createProfile(own = {}) {
  // Short: a socket's path inside it has little room.
  const dir = mkdtempSync(path.join(tmpdir(), 'dryfit-'));
  atEnd(() => rmSync(dir, { recursive: true, force: true, maxRetries: 10, retryDelay: 200 }));
  const text = JSON.stringify({ ...settings, ...own });
  // The desktop editor reads the first, the editor's server the second.
  for (const user of ['desktop/User', 'server/data/User']) {
    mkdirSync(path.join(dir, user), { recursive: true });
    writeFileSync(path.join(dir, user, 'settings.json'), text);
  }
  for (const empty of ['home', 'tmp', 'extensions']) mkdirSync(path.join(dir, empty));
  return {
    dir,
    desktopData: path.join(dir, 'desktop'),
    serverData: path.join(dir, 'server'),
    extensions: path.join(dir, 'extensions'),
    home: path.join(dir, 'home'),
    tmp: path.join(dir, 'tmp'),
    workspace: path.join(dir, 'workspace'),
  };
}
