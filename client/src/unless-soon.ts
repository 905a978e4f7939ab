/** Waits for an answer, and shows that it is waited for when it takes longer than half a second. Knows nothing of what is asked. */
import * as vscode from 'vscode';

const soon = 500;

/** @param cancel called when the one who waits has had enough; the answer must then end */
export async function unlessSoon<T>(answer: Promise<T>, title: string, cancel: () => void): Promise<T> {
  let timer: ReturnType<typeof setTimeout> | undefined;
  const late = new Promise<'late'>((resolve) => {
    timer = setTimeout(() => resolve('late'), soon);
  });
  // Whatever becomes of the answer is told to who waits for it below.
  const first = await Promise.race([
    answer.then(
      () => 'done' as const,
      () => 'done' as const,
    ),
    late,
  ]);
  clearTimeout(timer);
  if (first === 'late')
    await vscode.window.withProgress(
      { location: vscode.ProgressLocation.Notification, title, cancellable: true },
      (_, token) => {
        token.onCancellationRequested(cancel);
        return Promise.race([
          answer.then(
            () => undefined,
            () => undefined,
          ),
          new Promise((resolve) => token.onCancellationRequested(resolve)),
        ]);
      },
    );
  return answer;
}
