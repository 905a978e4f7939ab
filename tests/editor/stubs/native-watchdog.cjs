/** Stands in for the editor host's native watchdog; the tests end the host's process group themselves. */
exports.start = () => {};
exports.exit = (code) => process.exit(code ?? 0);
