/** Loaded into a server before its own code: answers each message of the parent with the bytes still alive after everything unused was collected. Needs --expose-gc. */
// A thread of the server is started with the same options, and has nobody to answer to.
if (process.channel) {
  process.on('message', answer);
  process.channel.unref();
}

function answer() {
  // Twice: what a finalizer lets go in the first pass is gone after the second.
  globalThis.gc();
  globalThis.gc();
  const { heapUsed, external } = process.memoryUsage();
  process.send(heapUsed + external);
}
