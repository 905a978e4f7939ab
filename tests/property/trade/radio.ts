/** Radio links with the receivers that speak them. Invented families; serial protocols as the trade has them. Must take nothing from the checks. */

export interface Link {
  readonly link: string;
  readonly band: '2.4 GHz' | '868 MHz' | '915 MHz';
  readonly protocols: readonly string[];
  readonly firmware: number;
  /** V that the receiver takes. */
  readonly supply: string;
  readonly rail: '5V' | '3.3V';
  /** mm of one quarter-wave arm */
  readonly arm: number;
  readonly power: number;
}

export const links: readonly Link[] = [
  {
    link: 'openlink',
    band: '2.4 GHz',
    protocols: ['CRSF'],
    firmware: 3,
    supply: '4.5 V - 5.5 V',
    rail: '5V',
    arm: 31,
    power: 100,
  },
  {
    link: 'openlink',
    band: '2.4 GHz',
    protocols: ['CRSF', 'MAVLink'],
    firmware: 4,
    supply: '4.5 V - 5.5 V',
    rail: '5V',
    arm: 30,
    power: 50,
  },
  {
    link: 'openlink',
    band: '868 MHz',
    protocols: ['CRSF', 'SBUS'],
    firmware: 3,
    supply: '5 V',
    rail: '5V',
    arm: 85,
    power: 50,
  },
  {
    link: 'longshot',
    band: '915 MHz',
    protocols: ['CRSF'],
    firmware: 6,
    supply: '4.5 V - 9 V',
    rail: '5V',
    arm: 81,
    power: 100,
  },
  {
    link: 'ghostlink',
    band: '2.4 GHz',
    protocols: ['GHST'],
    firmware: 1,
    supply: '4.5 V - 5.5 V',
    rail: '5V',
    arm: 31,
    power: 50,
  },
  {
    link: 'classic',
    band: '2.4 GHz',
    protocols: ['SBUS', 'FPort'],
    firmware: 2,
    supply: '4 V - 8 V',
    rail: '5V',
    arm: 30,
    power: 20,
  },
  {
    link: 'plainlink',
    band: '2.4 GHz',
    protocols: ['IBUS'],
    firmware: 2,
    supply: '4 V - 6.5 V',
    rail: '5V',
    arm: 31,
    power: 20,
  },
  {
    link: 'satellite',
    band: '2.4 GHz',
    protocols: ['DSM', 'SRXL2'],
    firmware: 2,
    supply: '3.3 V',
    rail: '3.3V',
    arm: 31,
    power: 20,
  },
];

/** What each protocol needs of a port: the pads, and whether its signal is inverted. */
export const protocolNeeds: Readonly<Record<string, { rx: boolean; tx: boolean; inverted: boolean }>> = {
  CRSF: { rx: true, tx: true, inverted: false },
  MAVLink: { rx: true, tx: true, inverted: false },
  GHST: { rx: false, tx: true, inverted: false },
  SBUS: { rx: true, tx: false, inverted: true },
  FPort: { rx: false, tx: true, inverted: true },
  IBUS: { rx: true, tx: false, inverted: false },
  DSM: { rx: true, tx: false, inverted: false },
  SRXL2: { rx: false, tx: true, inverted: false },
};
