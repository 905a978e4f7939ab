/** The view of a review: a tree that the keyboard reaches, with its lines in the command line's words. Decides nothing. */
import * as vscode from 'vscode';
import type { ReviewNode, ReviewView } from './review-run.ts';

export interface ReviewTree extends vscode.Disposable {
  show(view: ReviewView, unsaved: boolean): void;
  /** What the newer version was compared with. */
  base(): string;
}

const icons: Readonly<Record<string, string>> = {
  build: 'symbol-structure',
  file: 'file',
  gone: 'check',
  accepted: 'pass',
  figure: 'graph',
  swap: 'arrow-swap',
  note: 'info',
};
const severityIcons: Readonly<Record<string, readonly [icon: string, colour: string]>> = {
  error: ['error', 'problemsErrorIcon.foreground'],
  warning: ['warning', 'problemsWarningIcon.foreground'],
  information: ['info', 'problemsInfoIcon.foreground'],
};

export function createTree(): ReviewTree {
  const changed = new vscode.EventEmitter<undefined>();
  let shown: ReviewView | undefined;
  const view = vscode.window.createTreeView<ReviewNode>('dryfit.review', {
    showCollapseAll: true,
    treeDataProvider: {
      onDidChangeTreeData: changed.event,
      getChildren: (node) => [...((node ? node.nodes : shown?.nodes) ?? [])],
      getTreeItem: item,
    },
  });
  return {
    show(review, unsaved) {
      shown = review;
      view.description = `${review.base} → ${review.head}`;
      view.message = `${review.summary}${unsaved ? ' Edits that are not saved are not in it.' : ''}`;
      changed.fire(undefined);
    },
    base: () => shown?.base ?? '',
    dispose() {
      view.dispose();
      changed.dispose();
    },
  };
}

function item(node: ReviewNode): vscode.TreeItem {
  const { None, Expanded, Collapsed } = vscode.TreeItemCollapsibleState;
  const many = node.nodes?.length ?? 0;
  const top = node.is === 'build' || node.is === 'file';
  const item = new vscode.TreeItem(node.label, many === 0 ? None : top ? Expanded : Collapsed);
  item.description = node.detail;
  item.tooltip = node.detail === undefined ? node.label : `${node.label}\n${node.detail}`;
  item.iconPath = iconOf(node);
  item.contextValue = [node.before && 'before', node.after && 'after'].filter(Boolean).join(' ');
  item.accessibilityInformation = { label: [node.label, node.detail].filter(Boolean).join(', ') };
  if (node.before || node.after) item.command = { command: 'dryfit.reviewJump', title: 'Show', arguments: [node] };
  return item;
}

function iconOf({ is, severity }: ReviewNode): vscode.ThemeIcon | undefined {
  const [icon, colour] = (is === 'new' && severity && severityIcons[severity]) || [];
  if (icon) return new vscode.ThemeIcon(icon, colour ? new vscode.ThemeColor(colour) : undefined);
  return is && icons[is] ? new vscode.ThemeIcon(icons[is]) : undefined;
}
