/** Voltages of one cell by chemistry. Common practice: LiPo 3.7/4.20 V, high-voltage LiPo 3.8/4.35 V, Li-ion 3.6/4.20 V. */
export interface CellVoltage {
  readonly full: number;
  readonly nominal: number;
  /** Under load, when it is time to land. */
  readonly landing: number;
}

const table: Readonly<Record<'LiPo' | 'LiHV' | 'Li-ion', CellVoltage>> = {
  LiPo: { full: 4.2, nominal: 3.7, landing: 3.3 },
  LiHV: { full: 4.35, nominal: 3.8, landing: 3.3 },
  'Li-ion': { full: 4.2, nominal: 3.6, landing: 2.9 },
};

/** Ordinary LiPo when nothing was said. */
export const cellVoltage = (chemistry: keyof typeof table | undefined): CellVoltage => table[chemistry ?? 'LiPo'];
