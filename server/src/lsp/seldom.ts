/** What most sessions never ask: plans, beginnings, the build sheet, by the name of the request. A bundle of its own, loaded with the first question. */
import type { Connection } from 'vscode-languageserver';
import type { Answers } from './answers';
import { beginnings } from './beginnings';
import { plans, type Solve } from './plans';
import type { Session } from './session';
import { sheets } from './sheet-requests';

export const seldom = (connection: Connection, session: Session, solve: Solve): Answers => ({
  ...beginnings(connection, session),
  ...plans(session, solve),
  ...sheets(session),
});
