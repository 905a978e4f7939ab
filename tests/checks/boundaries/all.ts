/** Every written boundary. */
import { assembly } from './assembly';
import { battery } from './battery';
import type { Boundary } from './boundary';
import { data } from './data';
import { harness } from './harness';
import { mass } from './mass';
import { mechanical } from './mechanical';
import { order } from './order';
import { power } from './power';
import { propulsion } from './propulsion';
import { radio } from './radio';
import { rules } from './rules';
import { signals } from './signals';

export const boundaries: readonly Boundary[] = [
  ...mechanical,
  ...power,
  ...battery,
  ...signals,
  ...harness,
  ...radio,
  ...propulsion,
  ...mass,
  ...rules,
  ...order,
  ...assembly,
  ...data,
];
