/** A figure with how far it can be believed. It must not decide what the figure is used for. */

/** Where a figure comes from, from best to worst. */
export type Trust = 'measured' | 'maker' | 'seller' | 'estimate';

export interface Known {
  readonly value: number;
  /** Used for the spread when `sigma` is absent; `maker` when both are absent. */
  readonly trust?: Trust;
  /** Relative standard deviation, 0.03 is 3 %. */
  readonly sigma?: number;
}

/** Relative spread of a figure by its origin (judgement). */
const SIGMA_OF_TRUST: Readonly<Record<Trust, number>> = { measured: 0.03, maker: 0.1, seller: 0.2, estimate: 0.3 };

export const sigmaOf = (k: Known): number =>
  k.sigma !== undefined && k.sigma >= 0 ? Math.min(k.sigma, 2) : SIGMA_OF_TRUST[k.trust ?? 'maker'];

/** True for a figure that a calculation may use. */
export const usable = (k: Known | undefined): k is Known => k !== undefined && Number.isFinite(k.value) && k.value > 0;
