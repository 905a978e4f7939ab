/** The bands of radio control in Hz. From memory of the radio rules. */
const spans: Readonly<Record<string, readonly [number, number]>> = {
  '2.4 GHz': [2400e6, 2483.5e6],
  '868 MHz': [863e6, 870e6],
  '915 MHz': [902e6, 928e6],
  '433 MHz': [433.05e6, 434.79e6],
};

export const bandSpan = (band: '2.4 GHz' | '868 MHz' | '915 MHz' | '433 MHz'): readonly [number, number] =>
  spans[band]!;

export const bandMiddle = (band: '2.4 GHz' | '868 MHz' | '915 MHz' | '433 MHz'): number =>
  (bandSpan(band)[0] + bandSpan(band)[1]) / 2;
