/** What a device is fed from, where the build's wiring says so. What is not said is worked out elsewhere. */
import type { Craft, Pack } from '../build/craft';
import type { Fact } from '../build/fact';
import type { Rail } from '../text/notation/rail';
import { cellVoltage } from './cell-voltage';

export interface Feed {
  /** V with a full pack */
  readonly most: number;
  /** V at landing */
  readonly least: number;
  readonly battery: boolean;
  readonly said: Fact<Rail>;
}

/** The entry of a device in `wiring:`. */
export const wiringOf = (craft: Craft, device: string) => craft.said.wiring?.entries.get(device);

export const isFedByBattery = (craft: Craft, device: string): boolean => {
  const power = wiringOf(craft, device)?.power;
  return power !== undefined && power.value.volts === undefined;
};

export function feedOf(craft: Craft, device: string, pack: Pack | undefined): Feed | undefined {
  const said = wiringOf(craft, device)?.power;
  if (!said) return undefined;
  if (said.value.volts !== undefined) return { most: said.value.volts, least: said.value.volts, battery: false, said };
  const cells = pack?.facts.cells?.value.series;
  if (cells === undefined) return undefined;
  const cell = cellVoltage(pack?.facts.chemistry?.value);
  return {
    most: cells * cell.full,
    least: cells * (pack?.facts['landing-voltage']?.value ?? cell.landing),
    battery: true,
    said,
  };
}
