/** What has to be undone when a script ends, by itself or by Ctrl-C: last made, first undone; must not decide whether the script succeeded. */

const undo = [];
let ending;

/**
 * Call it before anything can be left behind, not when the thing is ready.
 * @param {() => unknown} cleanup
 * @returns {() => void} forgets it again
 */
export function atEnd(cleanup) {
  if (undo.length === 0) {
    for (const signal of ['SIGINT', 'SIGTERM']) process.on(signal, interrupted);
  }
  undo.push(cleanup);
  return () => {
    const index = undo.indexOf(cleanup);
    if (index >= 0) undo.splice(index, 1);
    if (undo.length === 0 && !ending) detach();
  };
}

export const isEnding = () => ending !== undefined;

export function end() {
  ending ??= undoAll();
  return ending;
}

async function undoAll() {
  for (let cleanup = undo.pop(); cleanup; cleanup = undo.pop()) {
    try {
      await cleanup();
    } catch (error) {
      console.error('While tidying up:', error);
    }
  }
  detach();
  ending = undefined;
}

function interrupted() {
  // An exit code already chosen stays: some scripts are meant to be ended this way.
  end().then(() => process.exit(process.exitCode ?? 130));
}

function detach() {
  for (const signal of ['SIGINT', 'SIGTERM']) process.off(signal, interrupted);
}
