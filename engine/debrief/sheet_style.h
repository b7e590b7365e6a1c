// How the page looks: black on white, grey for what is allowed, and one blue that prints dark; red and white
// belong to the lights. Every colour comes with a word or a mark, so that it reads in black and white.
#pragma once

namespace slopewise {

inline constexpr const char* sheet_style = R"(
@page { margin: 10mm; }
* { box-sizing: border-box; }
body { font: 8.6pt/1.25 system-ui, sans-serif; color: #111; background: #fff; margin: 0 auto; max-width: 190mm; }
h1 { font-size: 14pt; margin: 0; } h2 { font-size: 9.5pt; margin: 1.8mm 0 .6mm; }
p { margin: 0 0 1mm; } header { display: flex; justify-content: space-between; gap: 6mm; border-bottom: .4mm solid #111; padding-bottom: 1mm; }
header > p { text-align: right; white-space: nowrap; } td:first-child, th { white-space: nowrap; }
table { border-collapse: collapse; width: 100%; font-variant-numeric: tabular-nums; }
th, td { border-bottom: .2mm solid #999; padding: .35mm 1mm; text-align: right; } th:first-child, td:first-child, .words { text-align: left; }
th { font-weight: 600; } td.out { font-weight: 700; text-decoration: underline; }
.columns { display: grid; grid-template-columns: 3fr 2fr; gap: 5mm; }
.fault { border: .5mm solid #0b4a8f; padding: 1.5mm 2.5mm; } .fault h2 { margin-top: 0; }
.box { border: .2mm solid #555; min-height: 12mm; padding: 1mm 2mm; } .ticks span { margin-right: 8mm; }
footer { border-top: .2mm solid #555; margin-top: 2mm; padding-top: 1mm; font-size: 7pt; }
svg { width: 100%; display: block; } svg text { font: 10px system-ui, sans-serif; fill: #111; }
.grid { stroke: #ccc; stroke-width: .6; } .path { stroke: #555; stroke-dasharray: 5 3; } .wedge { fill: #e3e9f0; }
.trace { fill: none; stroke: #0b4a8f; stroke-width: 1.8; } .gate { stroke: #555; stroke-width: .7; stroke-dasharray: 1 2; }
.mark { fill: #111; } .white { fill: #fff; stroke: #111; stroke-width: .5; } .red { fill: #c8102e; stroke: #111; stroke-width: .5; } .label { fill: #fff; }
@media print { body { print-color-adjust: exact; -webkit-print-color-adjust: exact; } }
)";

}  // namespace slopewise
