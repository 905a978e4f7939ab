/** What a command may use of the world, and how it says that it could not run. */
export interface Console {
  readonly cwd: string;
  /** YYYY-MM-DD */
  readonly today: string;
  out(text: string): void;
  err(text: string): void;
  /** All of standard input. */
  in?(): string;
}

/** A sentence for the builder; ends the command with exit code 2. */
export class CannotRun extends Error {}
