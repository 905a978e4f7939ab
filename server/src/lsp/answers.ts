/** How requests are answered that are looked up by their names. Answers none itself. */
import type { CancellationToken } from 'vscode-languageserver';

export type Answers = Readonly<Record<string, (params: never, token: CancellationToken) => unknown>>;
