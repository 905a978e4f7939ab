/** Stands in for the editor host's native log writer, which no install script builds here; writes plain log files and nothing else. */
const fs = require('node:fs');
const path = require('node:path');

const levels = ['trace', 'debug', 'info', 'warning', 'error', 'critical'];
let defaultLevel = 2;

class Logger {
  constructor(_type, name, file) {
    this.name = name;
    this.file = file;
    this.level = defaultLevel;
    this.raw = false;
    fs.mkdirSync(path.dirname(file), { recursive: true });
  }
  trace(message) {
    this.#write(0, message);
  }
  debug(message) {
    this.#write(1, message);
  }
  info(message) {
    this.#write(2, message);
  }
  warn(message) {
    this.#write(3, message);
  }
  error(message) {
    this.#write(4, message);
  }
  critical(message) {
    this.#write(5, message);
  }
  getLevel() {
    return this.level;
  }
  setLevel(level) {
    this.level = level;
  }
  setPattern() {}
  clearFormatters() {
    this.raw = true;
  }
  flush() {}
  drop() {}
  #write(level, message) {
    if (level < this.level) return;
    const line = this.raw ? message : `${new Date().toISOString()} [${levels[level]}] ${message}\n`;
    // The profile is removed while the host is still ending: a line lost then is no loss.
    if (fs.existsSync(path.dirname(this.file))) fs.appendFileSync(this.file, line);
  }
}

const create = async (name, file) => new Logger('', name, file);

// One assignment each: the host imports this module by name, and Node finds the names by reading the text.
exports.version = 1;
exports.setLevel = (level) => {
  defaultLevel = level;
};
exports.setFlushOn = () => {};
exports.Logger = Logger;
exports.createRotatingLogger = create;
exports.createAsyncRotatingLogger = create;
