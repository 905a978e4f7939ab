/** Writes what a thrust stand or a flight log reads, for messages. Decides nothing. */
import { amperes, percent } from './words';

export { amperes };

export const thrust = (newtons: number): string => `${Math.round((newtons / 9.80665) * 1000)} g`;
export const rotationSpeed = (perMinute: number): string => `${Math.round(perMinute / 100) * 100} rpm`;
export const throttle = percent;
