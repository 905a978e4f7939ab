/** Colours by meaning: trade terms, quantities and where they came from, references that resolve. Leaves everything else to the grammar. */
import type { SemanticTokens, SemanticTokensLegend } from 'vscode-languageserver-types';
import type { Slot } from '../build/slot';
import { type FileDocument, isWrong, type SourceFile } from '../build/source-file';
import type { Workspace } from '../library/workspace';
import { positionAt } from '../text/lines';
import { splitOrigin } from '../text/origin';
import type { Span } from '../text/span';

export const tokenTypes = ['enumMember', 'number', 'comment', 'class', 'string'] as const;
type TokenType = (typeof tokenTypes)[number];

export const legend: SemanticTokensLegend = { tokenTypes: [...tokenTypes], tokenModifiers: [] };

export function semanticTokens(workspace: Workspace, file: SourceFile): SemanticTokens {
  const tokens: { span: Span; type: TokenType }[] = [];
  const walk = (slot: Slot, document: FileDocument): void => {
    if (!slot.node.via) {
      const type = isWrong(slot, document) ? undefined : typeOf(workspace, file, slot);
      if (type && slot.node.is === 'scalar' && slot.node.style === 'plain')
        tokens.push(...pieces(slot.node.text, slot.node.span, type));
      for (const kid of slot.kids) walk(kid, document);
    }
  };
  for (const document of file.documents) if (document.slot) walk(document.slot, document);
  return { data: encode(file, tokens) };
}

function typeOf(workspace: Workspace, file: SourceFile, slot: Slot): TokenType | undefined {
  const { field, node } = slot;
  if (!field || node.is !== 'scalar') return undefined;
  if (field.is === 'term') return 'enumMember';
  if (field.is === 'quantity' || field.is === 'notation') return 'number';
  if (field.is === 'text' && field.reference === 'part')
    return workspace.find(node.text, file.uri) ? 'class' : undefined;
  return undefined;
}

/** The value, and the brackets behind it. */
function pieces(text: string, span: Span, type: TokenType): { span: Span; type: TokenType }[] {
  const { said, origin } = splitOrigin(text);
  if (origin.trust === 'unsaid' || span.end - span.start !== text.length) return [{ span, type }];
  const open = text.lastIndexOf('(');
  return [
    { span: { start: span.start, end: span.start + said.length }, type },
    { span: { start: span.start + open, end: span.end }, type: 'comment' },
  ];
}

/** Five numbers a token, relative to the one before, as the protocol wants it. Tokens over several lines are left out. */
function encode(file: SourceFile, tokens: readonly { span: Span; type: TokenType }[]): number[] {
  const data: number[] = [];
  let line = 0;
  let character = 0;
  for (const { span, type } of [...tokens].sort((a, b) => a.span.start - b.span.start)) {
    const start = positionAt(file.lines, span.start);
    const end = positionAt(file.lines, span.end);
    if (start.line !== end.line || span.end <= span.start) continue;
    data.push(
      start.line - line,
      start.line === line ? start.character - character : start.character,
      span.end - span.start,
      tokenTypes.indexOf(type),
      0,
    );
    line = start.line;
    character = start.character;
  }
  return data;
}
