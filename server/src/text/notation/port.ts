/** `uart2`, `soft-serial 1`: the serial port of a flight controller that a device is wired to. */

import { splitOrigin } from '../origin';
import { misread, type Read } from '../quantity';

export interface SerialPort {
  readonly is: 'uart' | 'soft';
  readonly number: number;
}

export function readSerialPort(text: string): Read<SerialPort> {
  const { said, origin } = splitOrigin(text);
  const uart = /^uart(\d{1,2})$/.exec(said);
  if (uart) return { ok: true, value: { is: 'uart', number: Number(uart[1]) }, origin };
  const soft = /^soft-serial(\d)$/.exec(said);
  if (soft) return { ok: true, value: { is: 'soft', number: Number(soft[1]) }, origin };
  const loose = /^(?:uart|serial|u)\s*(\d{1,2})$/i.exec(said);
  return misread(
    `\`${said}\` is not a serial port; write \`uart2\` or \`soft-serial1\``,
    ...(loose ? [`uart${loose[1]}`] : []),
  );
}
