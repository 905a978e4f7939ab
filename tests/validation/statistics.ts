/** Quantiles of errors and the straight-line fits that leaving one out needs. */

/** Size of a relative error from a logarithm of predicted over measured. */
export const relative = (logError: number): number => Math.abs(Math.exp(logError) - 1);

/** Quantile by linear interpolation; 0 for an empty list. */
export function quantile(values: readonly number[], q: number): number {
  const sorted = [...values].sort((a, b) => a - b);
  if (sorted.length === 0) return 0;
  const at = q * (sorted.length - 1);
  const low = sorted[Math.floor(at)] as number;
  const high = sorted[Math.ceil(at)] as number;
  return low + (high - low) * (at - Math.floor(at));
}

export const median = (values: readonly number[]): number => quantile(values, 0.5);

/** Normal equations of a weighted linear fit. */
export interface Normal {
  readonly matrix: number[][];
  readonly right: number[];
}

export function normalOf(rows: readonly (readonly number[])[], y: readonly number[], weight: number): Normal {
  const n = rows[0]?.length ?? 0;
  const matrix = Array.from({ length: n }, () => new Array<number>(n).fill(0));
  const right = new Array<number>(n).fill(0);
  rows.forEach((row, k) => {
    for (let i = 0; i < n; i++) {
      const wi = weight * (row[i] as number);
      right[i]! += wi * y[k]!;
      for (let j = 0; j < n; j++) matrix[i]![j]! += wi * row[j]!;
    }
  });
  return { matrix, right };
}

/** `a − b`, or with `sign` +1 `a + b`. */
export const combine = (a: Normal, b: Normal, sign: 1 | -1): Normal => ({
  matrix: a.matrix.map((row, i) => row.map((v, j) => v + sign * ((b.matrix[i] as number[])[j] as number))),
  right: a.right.map((v, i) => v + sign * (b.right[i] as number)),
});

/** Solves by Gauss elimination with partial pivoting; a column without data gets zero. */
export function solveNormal({ matrix, right }: Normal): number[] {
  const n = right.length;
  const a = matrix.map((row, i) => [...row, right[i] as number]);
  for (let c = 0; c < n; c++) {
    let p = c;
    for (let r = c + 1; r < n; r++) if (Math.abs(a[r]![c]!) > Math.abs(a[p]![c]!)) p = r;
    [a[c], a[p]] = [a[p]!, a[c]!];
    const pivot = a[c]![c]!;
    if (Math.abs(pivot) < 1e-9) {
      for (const row of a) row[c] = 0;
      a[c]![c] = 1;
      a[c]![n] = 0;
      continue;
    }
    for (let r = 0; r < n; r++) {
      if (r === c) continue;
      const f = a[r]![c]! / pivot;
      for (let k = c; k <= n; k++) a[r]![k]! -= f * a[c]![k]!;
    }
  }
  return a.map((row, i) => row[n]! / row[i]!);
}
