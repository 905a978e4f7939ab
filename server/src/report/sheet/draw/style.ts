/** The look of the sheet: one list of rules for the panel, the exported page and single pictures. Colours are names here; each face says what they are. */

/** What the colours are on paper and on screen without an editor. */
const light = `--paper:#fdfcf9;--ink:#22282e;--quiet:#59626b;--rule:#c9cec8;--raised:#f2f1ec;--blue:#1f5f99;--clay:#a2480f;--moss:#3d6b35;--plum:#74407c;--bad:#b3161b;--warn:#8a5a00;--good:#2d6a36;--focus:#1f5f99`;
const dark = `--paper:#1b1e21;--ink:#e6e4de;--quiet:#a7aeb4;--rule:#444b51;--raised:#25292d;--blue:#7ab8ee;--clay:#f0a060;--moss:#9ccb8d;--plum:#d3a4dc;--bad:#ff8a80;--warn:#e8bd5a;--good:#8fd19a;--focus:#7ab8ee`;
const forced = `--paper:Canvas;--ink:CanvasText;--quiet:CanvasText;--rule:CanvasText;--raised:Canvas;--blue:CanvasText;--clay:CanvasText;--moss:CanvasText;--plum:CanvasText;--bad:CanvasText;--warn:CanvasText;--good:CanvasText;--focus:Highlight`;

export const ownColours = `:root{color-scheme:light dark;${light}}
@media (prefers-color-scheme:dark){:root{${dark}}}
@media (forced-colors:active){:root{${forced}}}`;

/** Ink on white, whatever the screen is like. */
export const paperColours = `:root{color-scheme:light;${light};--paper:#fff}`;

export const colourNames = [...light.matchAll(/--([a-z]+):/g)].map((match) => match[1]!);

/** Rules for drawings. Lines keep their width however large the drawing is shown. */
export const pictureRules = `svg.picture{display:block;color:var(--ink);font-family:var(--face,system-ui,sans-serif)}
svg.picture text{fill:var(--ink);stroke:none}
svg.picture .q{fill:var(--quiet)}
svg.picture .strong{font-weight:600}
svg.picture .bad-text,svg.picture .bad-text text{fill:var(--bad)}
svg.picture :is(line,path,circle,rect,polygon,polyline){vector-effect:non-scaling-stroke}
.plan :is(line,path,circle,rect,polygon){fill:none;stroke:var(--ink);stroke-width:1.2}
.plan .centre{stroke:var(--rule);stroke-width:1;stroke-dasharray:12 3 2 3}
.plan .diagonal{stroke:var(--quiet);stroke-width:1;stroke-dasharray:10 3 2 3}
.plan .arm{stroke:var(--quiet);stroke-width:2.4}
.plan .arm-inside{fill:var(--raised);stroke:none}
.plan .arm.unsaid,.plan .box.unsaid{stroke-dasharray:4 3}
.plan .propeller{stroke:var(--blue);fill:var(--blue);fill-opacity:.07}
.plan .duct{stroke:var(--quiet);stroke-width:2}
.plan .motor{fill:var(--raised)}
.plan .axis{fill:var(--ink);stroke:none}
.plan :is(.box.frame-body,.box.frame-bay,.box.frame-battery-plate){stroke:var(--quiet)}
.plan .box.flight-controller,.plan .box.all-in-one,.plan .box.stack,.plan .holes.flight-controller *,.plan .holes.all-in-one *{stroke:var(--moss)}
.plan .box.esc,.plan .holes.esc *{stroke:var(--plum)}
.plan .holes.frame-stack-mounts *{stroke:var(--quiet)}
.plan .pattern{stroke-dasharray:2 2;stroke-width:1}
.plan .box.pack{stroke:var(--clay);stroke-width:1.6}
.plan .box.camera{stroke:var(--blue);fill:var(--raised)}
.plan :is(.box,.propeller,.motor,.arm,.gap).clash,.plan .holes.clash :is(rect,circle){stroke:var(--bad);stroke-width:2.4;stroke-dasharray:6 3}
.plan .overlap{fill:url(#clash-hatch);stroke:var(--bad);stroke-width:1.6}
.plan .hatch{stroke:var(--bad);stroke-width:1.4}
.plan .gap{stroke:var(--ink);stroke-width:1.6}
.plan .dimension path,.plan .leader{stroke:var(--quiet);stroke-width:.8}
.plan .leader.bad{stroke:var(--bad)}
.plan .point{fill:var(--quiet);stroke:none}
.plan .balloon circle{fill:var(--paper);stroke:var(--quiet)}
.plan .balloon.bad circle{stroke:var(--bad);stroke-width:2}
.plan .balloon.bad text{fill:var(--bad);font-weight:600}
.plan .bar{stroke:var(--ink);stroke-width:1}
.plan .bar.full{fill:var(--ink)}
.plan .ahead{stroke-width:1.6}
.plot .grid{stroke:var(--rule);stroke-width:1}
.plot .base{stroke:var(--ink);stroke-width:1.2}
.plot .band{stroke:none;fill-opacity:.16}
.plot .curve{fill:none;stroke-width:2}
.plot .s0{stroke:var(--blue)}.plot .band.s0,.plot .dot.s0{fill:var(--blue)}
.plot .s1{stroke:var(--clay);stroke-dasharray:7 3}.plot .band.s1,.plot .dot.s1{fill:var(--clay)}
.plot .s2{stroke:var(--moss);stroke-dasharray:2 3}.plot .band.s2,.plot .dot.s2{fill:var(--moss)}
.plot .trial{stroke:var(--plum);stroke-dasharray:none;stroke-width:2.6}.plot .band.trial,.plot .dot.trial{fill:var(--plum)}
.plot .band{stroke:none}
.plot .mark{stroke:var(--ink);stroke-width:1;stroke-dasharray:3 3;fill:none}
.plot .limit{stroke:var(--bad);stroke-width:1.4;stroke-dasharray:8 3}
.plot .dot{stroke:var(--paper);stroke-width:1.2}
.bars .fill{fill:var(--blue);fill-opacity:.75;stroke:none}
.bars .odd{fill:var(--moss)}
.bars .over{fill:url(#over-hatch);stroke:var(--bad);stroke-width:1.6}
.bars .hatch{stroke:var(--bad);stroke-width:1.6}
.bars .room{fill:var(--raised);stroke:var(--quiet);stroke-width:1}
.bars .whisker{fill:none;stroke:var(--ink);stroke-width:1.2}
.bars .cut{stroke:var(--paper);stroke-width:1.2}
.wires .board{fill:var(--raised);stroke:var(--ink);stroke-width:1.4}
.wires .pad{fill:var(--paper);stroke:var(--quiet);stroke-width:1}
.wires .pad.taken{stroke:var(--ink)}
.wires .wire{fill:none;stroke:var(--blue);stroke-width:2}
.wires .wire.worked{stroke-dasharray:6 3}
.wires .wire.good{stroke:var(--good)}
.wires .wire.wrong{stroke:var(--bad);stroke-width:2.6;stroke-dasharray:5 3}
.wires .wire.moved{stroke:var(--plum);stroke-width:2.8}
.wires .plug{fill:none;stroke:var(--quiet);stroke-width:1}
.lit :is(line,path,circle,rect,polygon,polyline):not(.leader,.point),.lit>:is(circle,rect){stroke:var(--focus);stroke-width:3}
[data-spot]{cursor:pointer}
[data-spot]:focus{outline:none}
[data-spot]:focus-visible{outline:2px solid var(--focus);outline-offset:2px}`;

/** Rules for the page around them. */
export const pageRules = `*{box-sizing:border-box}
body{margin:0;background:var(--paper);color:var(--ink);font:var(--size,14px)/1.45 var(--face,system-ui,sans-serif)}
main{max-width:1080px;margin:0 auto;padding:0 16px 32px}
h1,h2,h3{font-weight:600;line-height:1.25;margin:0}
h1{font-size:1.5em}h2{font-size:1.2em}h3{font-size:1em;margin-top:12px}
section{border-top:2px solid var(--ink);padding:10px 0 18px}
section>h2 .what{color:var(--quiet);font-weight:400}
p{margin:6px 0}ul,ol{margin:6px 0;padding-left:1.4em}li{margin:2px 0}.steps{padding-left:2.2em}td:first-child{min-width:8.5em}code{font-family:ui-monospace,monospace;font-size:.92em}
.block{display:grid;grid-template-columns:2fr 1fr 1fr;border:1.5px solid var(--ink);margin:12px 0 16px}
.block>div{border:1px solid var(--rule);padding:6px 10px;min-width:0}
.block .wide{grid-column:1/-1}
.block .k{display:block;color:var(--quiet);font-size:.8em}
.headline{font-size:1.15em;font-weight:600}
.pictures{display:grid;grid-template-columns:repeat(auto-fit,minmax(min(100%,330px),1fr));gap:14px;align-items:start}
figure{margin:8px 0;min-width:0;max-width:540px}figcaption{font-weight:600;margin-bottom:2px}
svg.picture{width:100%;height:auto}
figure.drawing{max-width:680px}
table{border-collapse:collapse;margin:6px 0;max-width:100%}
th,td{text-align:left;padding:2px 12px 2px 0;vertical-align:top;border-bottom:1px solid var(--rule)}
th{font-weight:600}td.n,th.n{text-align:right;font-variant-numeric:tabular-nums;white-space:nowrap}
.q{color:var(--quiet)}
.scroll{overflow-x:auto}
summary{cursor:pointer;color:var(--quiet)}
.finding{border-left:4px solid var(--rule);padding:2px 10px;margin:8px 0}
.finding.error{border-left-color:var(--bad);border-left-style:double;border-left-width:6px}
.finding.warning{border-left-color:var(--warn)}
.finding .sev{font-weight:600}.finding.error .sev{color:var(--bad)}.finding.warning .sev{color:var(--warn)}
.bad-text{color:var(--bad)}.good-text{color:var(--good)}
.finding[data-spot]:hover,.step:hover{background:var(--raised)}
tr.lit td,li.lit,.finding.lit{background:var(--raised);box-shadow:inset 3px 0 0 var(--focus)}
.caution{border-left:4px double var(--warn);padding-left:8px}
.try{border:1px solid var(--rule);padding:8px 10px;margin:8px 0;background:var(--raised)}
.try label{display:block}.try input{width:min(100%,420px);accent-color:var(--focus)}
button{font:inherit;color:var(--ink);background:var(--raised);border:1px solid var(--quiet);padding:3px 10px;border-radius:2px;cursor:pointer}
button:disabled{opacity:.55;cursor:default}
:is(button,input,summary,a):focus-visible{outline:2px solid var(--focus);outline-offset:2px}
@media (max-width:520px){.block{grid-template-columns:1fr 1fr}.block .first{grid-column:1/-1}}`;

/** @param size of the paper */
export const printRules = (
  size: 'A4' | 'letter',
): string => `@page{size:${size === 'A4' ? 'A4' : 'letter'} portrait;margin:14mm}
@media print{:root{${light};--paper:#fff;--size:9.5pt}body{background:#fff}main{max-width:none;padding:0}
section,figure,tr,.finding,.step,.block{break-inside:avoid}section.long{break-inside:auto}h2,h3{break-after:avoid}details{display:block}details>summary{display:none}
details::details-content{content-visibility:visible;block-size:auto}.pictures{grid-template-columns:1fr 1fr}
*{print-color-adjust:exact;-webkit-print-color-adjust:exact}}`;
