/** Which camera widths count as the same. Words nothing. */
import { exceeds, fallsShort } from './beyond';

/** m: 20, 21 and 22 mm are sold as one class and share a cage; others are taken by their figure. Common practice. */
const inMiddleClass = (width: number): boolean => !fallsShort(width, 19.9e-3) && !exceeds(width, 22.1e-3);

export const camerasFit = (camera: number, cage: number): boolean =>
  !exceeds(Math.abs(camera - cage), 0.5e-3) || (inMiddleClass(camera) && inMiddleClass(cage));
