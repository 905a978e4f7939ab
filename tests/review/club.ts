/** A small invented club: two builds, a parts file, a bench, settings and a shop, all of it sound. */
export const club: Readonly<Record<string, string>> = {
  'builds/wren.dryfit.yaml': `dryfit: build
name: Wren
craft: freestyle-5

parts:
  frame:
    use: lath-220
  motors:
    use: gale-2207
    count: 4
  propellers:
    use: fan-51
    count: 4
    spares: 8
  video-antenna:
    use: stalk

goals:
  weight: 700 g
`,
  'builds/tern.dryfit.yaml': `dryfit: build
name: Tern
craft: freestyle-5

parts:
  frame:
    use: lath-220
  motors:
    use: brisk-2306
    count: 4
`,
  'parts/club.dryfit.yaml': `dryfit: parts
name: What the club flies

parts:
  lath-220:
    kind: frame
    wheelbase: 220 mm
    weight: 120 g (weighed 2026-10-02)
  gale-2207:
    kind: motor
    stator: 2207
    kv: 1800
    cells: 4S-6S
    mount: 16x16 M3
    shaft: M5
    weight: 32 g (weighed 2026-10-02)
  brisk-2306:
    kind: motor
    stator: 2306
    kv: 1950
    cells: 4S-6S
    mount: 16x16 M3
    shaft: M5
    weight: 30 g (weighed 2026-10-02)
  squall-2306:
    kind: motor
    stator: 2306
    kv: 2400
    cells: 3S-4S
    mount: 16x19 M3
    shaft: M4
    weight: 31 g (weighed 2026-10-02)
  fan-51:
    kind: propeller
    size: 5.1x3.6x3
    bore: 5 mm
    weight: 4.3 g (weighed 2026-10-02)
  stalk:
    kind: video-antenna
    polarisation: LHCP
    weight: 5 g
`,
  'bench.dryfit.yaml': `dryfit: bench
name: Ada's bench
region: EU
goggles:
  polarisation: LHCP
`,
  'settings.dryfit.yaml': `dryfit: settings
severity:
  facts-missing:
    as: off
    because: these builds are written for tests
  spare-missing:
    as: off
    because: the club shares its spares
note: An invented club.
`,
  'shops.dryfit.yaml': `dryfit: shops
shops:
  pellam:
    currency: EUR
    flat: 0
    offers:
      gale-2207:
        - pack: 1
          price: 21.90
          seen: 2026-10-02
      brisk-2306:
        - pack: 1
          price: 18.50
      fan-51:
        - pack: 4
          price: 3.20
`,
};
