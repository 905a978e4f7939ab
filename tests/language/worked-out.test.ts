/** What was worked out, where the builder looks: ports and rails on the flight controller, wires on the harness, ports beside the devices. */
import { describe, expect, it } from 'vitest';
import { analyse } from '../../server/src/analysis';
import { hover } from '../../server/src/language/hover';
import { inlayHints } from '../../server/src/language/inlay-hints';
import { everything } from '../../server/src/language/showing';
import { sampleUri, sampleWorkspace } from '../support/samples';

const workspace = sampleWorkspace();
const hoverAt = (name: string, word: string): string => {
  const uri = sampleUri(name);
  return hover(workspace, analyse(workspace, uri)!, workspace.get(uri)!.text.indexOf(word) + 1)?.markdown ?? '';
};

describe('hover', () => {
  it('shows ports and rails on the stack', () => {
    const text = hoverAt('builds/ossel-5.dryfit.yaml', 'stack:');
    expect(text).toContain('| uart2 | RX and TX | the receiver (CRSF) |');
    expect(text).toMatch(/\| 9V \| video transmitter \d+ mA \|/);
  });

  it('draws the stack to scale and the thrust over throttle', () => {
    const picture = (word: string): string =>
      decodeURIComponent(/data:image\/svg\+xml,([^)]*)\)/.exec(hoverAt('builds/ossel-5.dryfit.yaml', word))![1]!);
    // 30.5 mm at 3 px a mm: the sides of frame and boards are 91.5 px.
    expect(picture('stack:').match(/width="91\.5" height="91\.5"/g)).toHaveLength(3);
    expect(picture('motors:')).toContain('<polyline');
    expect(
      hover(
        workspace,
        analyse(workspace, sampleUri('builds/ossel-5.dryfit.yaml'))!,
        workspace.get(sampleUri('builds/ossel-5.dryfit.yaml'))!.text.indexOf('stack:') + 1,
        false,
      )!.markdown,
    ).not.toContain('data:image');
  });

  it('shows the wires on the harness', () => {
    expect(hoverAt('builds/dart-5.dryfit.yaml', 'harness:')).toContain('Plug it in');
    expect(hoverAt('faulty/mixed-stack.dryfit.yaml', 'harness:')).toContain('Do not plug it in');
  });
});

describe('inlay hints', () => {
  it('name the port that was chosen, only where the file does not say it', () => {
    const uri = 'file:///samples/builds/hinted.dryfit.yaml';
    const text = workspace.get(sampleUri('builds/ossel-5.dryfit.yaml'))!.text.replace('    serial: uart2\n', '');
    workspace.set(uri, text);
    const { file, crafts } = analyse(workspace, uri)!;
    const hints = inlayHints(workspace, file, crafts, { ...everything, weights: false, prices: false });
    expect(hints.map((hint) => hint.label)).toEqual([' uart2']);
    const line = text.split('\n')[hints[0]!.position.line];
    expect(line).toBe('  receiver:');
    expect(hints[0]!.position.character).toBe('  receiver:'.length);
  });

  it('tell weight and lowest price behind a use, and can be switched off', () => {
    workspace.set(
      'file:///samples/s.dryfit.yaml',
      'dryfit: shops\nshops:\n  a:\n    currency: EUR\n    offers:\n      ossel-225:\n        - price: 60\n        - pack: 2\n          price: 90\n',
    );
    const { file, crafts } = analyse(workspace, sampleUri('builds/ossel-5.dryfit.yaml'))!;
    const labels = (showing: object): unknown[] =>
      inlayHints(workspace, file, crafts, { ...everything, ...showing }).map((hint) => hint.label);
    expect(labels({})).toContain(' 118 g, 45.00 EUR');
    // 40.10 GBP are 46.115 EUR by that shop's own rate, and not less than 45.
    workspace.set('file:///samples/s.dryfit.yaml', 'dryfit: shops\nshops: {}\n');
    expect(labels({})).toContain(' 118 g, 46.12 EUR');
    expect(labels({ prices: false })).toContain(' 118 g');
    expect(labels({ weights: false, prices: false, ports: false })).toEqual([]);
    workspace.delete('file:///samples/s.dryfit.yaml');
  });
});
