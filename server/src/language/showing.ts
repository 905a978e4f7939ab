/** What a builder wants to see beside the text; each can be switched off. Defaults are all on. */
export interface Showing {
  /** Serial ports that were worked out, beside the devices. */
  readonly ports: boolean;
  /** Weights behind `use:`. */
  readonly weights: boolean;
  /** Cheapest prices behind `use:`. */
  readonly prices: boolean;
  /** The decisive figures above a build. */
  readonly figures: boolean;
  /** How many files use a part, above it. */
  readonly uses: boolean;
  /** What one step up and down would change, above packs, motors and propellers. */
  readonly steps: boolean;
  /** Small drawings in hovers. */
  readonly pictures: boolean;
  /** Colours by meaning. */
  readonly colours: boolean;
}

export const everything: Showing = {
  ports: true,
  weights: true,
  prices: true,
  figures: true,
  uses: true,
  steps: true,
  pictures: true,
  colours: true,
};

/** Reads what a client sent as its settings; whatever is no yes or no keeps its default. */
export function readShowing(sent: unknown): Showing {
  const show = (sent as { show?: Record<string, unknown> } | null | undefined)?.show ?? {};
  const entries = Object.entries(everything).map(([key, value]) => [
    key,
    typeof show[key] === 'boolean' ? show[key] : value,
  ]);
  return Object.fromEntries(entries) as unknown as Showing;
}
