/** The serial ports of a flight controller and who sits on each, and the ledger of its rails, as rows. Works nothing out itself. */
import type { PortPlan } from '../plan/ports';
import type { Rails } from '../plan/rails';
import type { Rows } from './table';

export function portRows(plan: PortPlan): Rows {
  const rows = plan.ports.map((port) => {
    const device = [...plan.taken].find(([, taken]) => taken.port === port.name);
    const need = device && plan.needs.find((one) => one.device === device[0]);
    const pads = port.soft
      ? 'slow, by software'
      : [port.rx && 'RX', port.tx && 'TX'].filter(Boolean).join(' and ') || 'no pads';
    const use = port.reserved
      ? `taken by the board: ${port.reserved}`
      : need
        ? `${need.words}${device[1].said ? '' : ' (worked out)'}`
        : 'free';
    return [port.name, pads, use];
  });
  for (const { need } of plan.left) rows.push(['none left', '', need.words]);
  return { heads: ['port', 'pads', 'for'], rows };
}

/** As a ledger has them: whole mA, and tenths from an ampere on. */
export const amperes = (value: number): string =>
  value < 1 ? `${Math.round(value * 1000)} mA` : `${value.toFixed(1)} A`;

export function railRows(rails: Rails): Rows {
  const rows = rails.ledgers.map((ledger) => {
    const on = ledger.draws
      .map((draw) => `${draw.device.replaceAll('-', ' ')} ${amperes(draw.current)}${draw.known ? '' : ' (usual)'}`)
      .join(', ');
    const left = ledger.limit ? amperes(Math.max(0, ledger.limit.value - ledger.sum)) : 'unknown';
    return [
      ledger.rail,
      on || 'nothing',
      amperes(ledger.sum),
      ledger.limit ? amperes(ledger.limit.value) : 'unknown',
      left,
    ];
  });
  for (const { device, watts } of rails.onBattery)
    rows.push(['battery', `${device.replaceAll('-', ' ')} ${watts.toFixed(1)} W`, '', '', '']);
  return { heads: ['rail', 'feeds', 'takes', 'gives', 'left'], rows };
}
