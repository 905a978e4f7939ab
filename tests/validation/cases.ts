/** The two kinds of measured case that a data folder may hold, as plain SI data, and how they are read from text. */

/** A propeller on a torque stand, standing air. */
export interface StaticCase {
  readonly name: string;
  readonly family: string;
  readonly blades: number;
  /** m */
  readonly diameter: number;
  /** m */
  readonly pitch: number;
  readonly rows: readonly StaticRow[];
}

export interface StaticRow {
  /** rev/s */
  readonly speed: number;
  readonly ct: number;
  readonly cp: number;
}

/** A motor with its propeller on a thrust stand. */
export interface StandCase {
  readonly name: string;
  readonly statorDiameterMm: number;
  readonly statorHeightMm: number;
  readonly kv: number;
  readonly diameter: number;
  readonly pitch: number;
  readonly blades: number;
  readonly rows: readonly StandRow[];
}

export interface StandRow {
  readonly throttle?: number;
  /** N */
  readonly thrust: number;
  readonly voltage: number;
  readonly current: number;
  readonly rpm?: number;
}

const INCH = 0.0254;

/** Static tests from a table `volume,prop,family,blades,D_in,P_in,rpm,CT,CP`, one line a row. */
export function readStatics(csv: string): StaticCase[] {
  const [head = '', ...lines] = csv.trim().split(/\r?\n/);
  const column = (name: string): number => head.split(',').indexOf(name);
  if (column('CT') < 0 || column('CP') < 0) return [];
  const at = {
    prop: column('prop'),
    family: column('family'),
    blades: column('blades'),
    d: column('D_in'),
    p: column('P_in'),
  };
  const [rpm, ct, cp] = [column('rpm'), column('CT'), column('CP')];
  const cases = new Map<string, StaticCase & { rows: StaticRow[] }>();
  for (const line of lines) {
    const f = line.split(',');
    const name = f[at.prop] ?? '';
    let one = cases.get(name);
    if (!one) {
      one = {
        name,
        family: f[at.family] ?? '',
        blades: Number(f[at.blades]),
        diameter: Number(f[at.d]) * INCH,
        pitch: Number(f[at.p]) * INCH,
        rows: [],
      };
      cases.set(name, one);
    }
    const row = { speed: Number(f[rpm]) / 60, ct: Number(f[ct]), cp: Number(f[cp]) };
    if (row.speed > 0 && row.ct > 0 && row.cp > 0) one.rows.push(row);
  }
  return [...cases.values()].filter((c) => c.rows.length > 0 && c.diameter > 0 && c.pitch > 0 && c.blades > 0);
}

interface StandJson {
  readonly id: string;
  readonly kind: string;
  readonly motor: { readonly kv: number; readonly statorD: number; readonly statorH: number };
  readonly propeller: { readonly diameterIn: number; readonly pitchIn: number; readonly blades: number };
  readonly points?: readonly {
    readonly throttle?: number | null;
    readonly thrustN: number;
    readonly volts: number;
    readonly amps: number;
    readonly rpm?: number | null;
  }[];
}

/** Thrust-stand series from a JSON list; entries of another kind than `bench` are left out. */
export function readStands(json: string): StandCase[] {
  const all: unknown = JSON.parse(json);
  if (!Array.isArray(all)) return [];
  return (all as readonly StandJson[])
    .filter((s) => s.kind === 'bench' && s.motor?.statorD > 0 && s.motor.statorH > 0 && s.motor.kv > 0)
    .map((s) => ({
      name: s.id,
      statorDiameterMm: s.motor.statorD,
      statorHeightMm: s.motor.statorH,
      kv: s.motor.kv,
      diameter: s.propeller.diameterIn * INCH,
      pitch: s.propeller.pitchIn * INCH,
      blades: s.propeller.blades,
      rows: (s.points ?? [])
        .filter((p) => p.thrustN > 0 && p.volts > 0 && p.amps > 0)
        .map((p) => ({
          throttle: p.throttle ?? undefined,
          thrust: p.thrustN,
          voltage: p.volts,
          current: p.amps,
          rpm: p.rpm ?? undefined,
        })),
    }))
    .filter((c) => c.rows.length > 0);
}
