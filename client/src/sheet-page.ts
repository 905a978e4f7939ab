/** The empty page of the sheet's panel: what may run in it, and the editor's colours under the sheet's names. Holds no content. */
import type * as vscode from 'vscode';

/** Names of the sheet, each by a colour of the editor. The editor's orange for charts is half transparent, and nothing at all in high contrast: that of warnings stands in. */
const colours = `--paper:var(--vscode-editor-background);--ink:var(--vscode-editor-foreground);--quiet:var(--vscode-descriptionForeground,var(--vscode-editor-foreground));--rule:var(--vscode-editorWidget-border,var(--vscode-contrastBorder,#8886));--raised:var(--vscode-editorWidget-background,var(--vscode-editor-background));--blue:var(--vscode-charts-blue);--clay:var(--vscode-editorWarning-foreground,var(--vscode-charts-yellow));--moss:var(--vscode-charts-green);--plum:var(--vscode-charts-purple);--bad:var(--vscode-errorForeground);--warn:var(--vscode-charts-yellow);--good:var(--vscode-charts-green);--focus:var(--vscode-focusBorder);--face:var(--vscode-font-family);--size:var(--vscode-font-size,13px)`;

/** Lines and words that mean something are drawn in the one colour that is sure to stand out. */
const contrast = `body.vscode-high-contrast,body.vscode-high-contrast-light{--quiet:var(--vscode-editor-foreground);--rule:var(--vscode-contrastBorder);--raised:var(--vscode-editor-background);--good:var(--vscode-editor-foreground);--clay:var(--vscode-editorWarning-foreground,var(--vscode-editor-foreground))}body.vscode-high-contrast :is(.plot .grid,.plan .centre),body.vscode-high-contrast-light :is(.plot .grid,.plan .centre){stroke-opacity:.45}`;

/** What is out of sight is not laid out on each edit. */
const own = `section{content-visibility:auto;contain-intrinsic-size:auto 900px}body{padding:0}.good-text{color:var(--ink)}main{padding:0 14px 24px}body :is(button){color:var(--vscode-button-secondaryForeground,var(--ink));background:var(--vscode-button-secondaryBackground,var(--raised));border-color:var(--vscode-contrastBorder,var(--rule))}code{color:inherit;background:none;padding:0}a{color:var(--vscode-textLink-foreground)}a.bad-text{color:var(--bad)}`;

export function sheetPanelPage(webview: vscode.Webview, script: vscode.Uri, look: string): string {
  const nonce = onceOnly();
  return `<!doctype html>
<html lang="en">
<head>
<meta charset="utf-8">
<meta http-equiv="Content-Security-Policy" content="default-src 'none'; style-src 'nonce-${nonce}'; script-src 'nonce-${nonce}'">
<meta name="viewport" content="width=device-width">
<title>Build sheet</title>
<style nonce="${nonce}">
body{${colours}}
${contrast}
${look}
${own}
</style>
</head>
<body>
<main id="sheet" aria-live="off"><p class="q">Drawing…</p></main>
<script nonce="${nonce}" src="${webview.asWebviewUri(script).toString()}"></script>
</body>
</html>`;
}

function onceOnly(): string {
  const bytes = crypto.getRandomValues(new Uint8Array(16));
  return [...bytes].map((byte) => byte.toString(16).padStart(2, '0')).join('');
}
