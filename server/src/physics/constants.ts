/** Physical constants shared by the formulas of this folder. It holds no figure that was fitted or guessed. */

/** Standard gravity, m/s² (CGPM 1901). */
export const G = 9.80665;

/** Torque in N m of a motor per ampere when Kv is 1 rpm/V: 60/(2π). */
export const KT_OF_UNIT_KV = 60 / (2 * Math.PI);

/** `x` held inside `low` … `high`; not a number gives `low`. */
export const clamp = (x: number, low: number, high: number): number => (x >= low ? Math.min(x, high) : low);
