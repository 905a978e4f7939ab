/** Where current turns into heat on the way from pack to propeller, and how near each piece is to what it may carry. Judges nothing. */
import type { Craft } from '../build/craft';
import { adiabaticRise, type CraftFigures, type Figure, wireArea, wireResistancePerMetre } from '../physics';
import { chassisAmpacity } from './ampacity';
import { type PlugLimits, plugLimits } from './battery-plugs';

export interface Ranged {
  readonly value: number;
  readonly low: number;
  readonly high: number;
}

export interface Heat {
  /** W in one motor with its wires, and in one ESC channel, at full throttle. */
  readonly motorAtFull: Ranged;
  readonly escAtFull: Ranged;
  /** W in both together while hovering: what is lost at part load circulates between them, and no stand tells them apart. */
  readonly bothHovering: Ranged | undefined;
  /** Share of the motor's short-time and the ESC's continuous rating, for one of them at full throttle. */
  readonly motorLoad: Ranged | undefined;
  readonly escLoad: Ranged | undefined;
  readonly lead: LeadHeat | undefined;
  readonly plug: PlugHeat | undefined;
}

export interface LeadHeat {
  /** W in both wires as it is flown; absent when the length is not said. */
  readonly power: Ranged | undefined;
  /** Mean current over what the gauge carries without end. */
  readonly load: Ranged | undefined;
  /** K in `BURST` at full throttle when no heat leaves the copper. */
  readonly rise: Ranged;
}

export interface PlugHeat {
  /** W in both contacts as it is flown. */
  readonly power: Ranged | undefined;
  readonly load: Ranged | undefined;
  /** Full-throttle current over what the trade flies for seconds. */
  readonly burst: Ranged;
  readonly limits: PlugLimits;
}

/** s of full throttle that leads and plugs are looked at over. Common practice: longer pull-outs are rare. */
export const BURST = 5;

/**
 * Ω of one ESC channel while it conducts, from its rating: two switches in series of which each is about 2 mΩ on a 50 A
 * board, and smaller boards have smaller switches. From memory; boards differ by half, which the range holds.
 */
const channelResistance = (rating: number): number => 0.2 / rating;
const CHANNEL_SPREAD = 1.6;

export function heatOf(craft: Craft, figures: CraftFigures): Heat | undefined {
  const { full, hover, asFlown } = figures;
  if (!full.ok) return undefined;
  const { motors, esc, 'battery-lead': lead } = craft.roles;
  // Without a rating the channel is taken to be as large as the current asks for.
  const channel = channelResistance(esc?.current?.value ?? Math.max(5, 2 * full.value.motorCurrent.value));
  const { motorCurrent, motorHeat, escHeat } = full.value;
  // The motor's heat of the physics is that of the whole path, the conducting channel in it.
  const conduction = Math.min(motorCurrent.value ** 2 * channel, 0.5 * motorHeat.value);
  const mean = asFlown.ok ? asFlown.value.meanCurrent : undefined;
  const peak = full.value.packCurrent;
  const rating = motors?.['peak-current']?.value.current;
  return {
    motorAtFull: scaled(motorHeat, 1 - conduction / Math.max(1e-9, motorHeat.value)),
    escAtFull: stretched(conduction + escHeat.value, CHANNEL_SPREAD),
    bothHovering: hover.ok ? sum(hover.value.motorHeat, hover.value.escHeat) : undefined,
    motorLoad: rating ? scaled(full.value.escCurrent, 1 / rating) : undefined,
    escLoad: esc?.current ? scaled(full.value.escCurrent, 1 / esc.current.value) : undefined,
    lead: lead?.wire && leadHeat(lead.wire.value, lead.length?.value, mean, peak),
    plug: plugHeat(lead?.plug?.value, mean, peak),
  };
}

function leadHeat(gauge: number, length: number | undefined, mean: Figure | undefined, peak: Figure): LeadHeat {
  const area = wireArea(gauge);
  return {
    power: mean && length !== undefined ? squared(mean, 2 * length * wireResistancePerMetre(gauge)) : undefined,
    load: mean && scaled(mean, 1 / chassisAmpacity(gauge)),
    rise: squared(peak, adiabaticRise(1, area, BURST)),
  };
}

function plugHeat(plug: string | undefined, mean: Figure | undefined, peak: Figure): PlugHeat | undefined {
  const limits = plugLimits(plug);
  if (!limits) return undefined;
  return {
    power: mean && squared(mean, limits.contact),
    load: mean && scaled(mean, 1 / limits.continuous),
    burst: scaled(peak, 1 / limits.short),
    limits,
  };
}

const scaled = (figure: Ranged, by: number): Ranged => ({
  value: figure.value * by,
  low: figure.low * by,
  high: figure.high * by,
});

/** Both rest on the same doubts, so their ends add up. */
const sum = (a: Ranged, b: Ranged): Ranged => ({
  value: a.value + b.value,
  low: a.low + b.low,
  high: a.high + b.high,
});

const squared = (figure: Ranged, by: number): Ranged => ({
  value: figure.value ** 2 * by,
  low: figure.low ** 2 * by,
  high: figure.high ** 2 * by,
});

const stretched = (value: number, by: number): Ranged => ({ value, low: value / by, high: value * by });
