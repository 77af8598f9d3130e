/** The look of the handbook, on a screen and on paper: black on white, so that nothing is lost on a ward's printer. */
export const style = `
:root { --ink: #111; --soft: #444; --line: #777; }
* { box-sizing: border-box; }
body { margin: 0 auto; max-width: 60rem; padding: 1.5rem; color: var(--ink); background: #fff;
  font: 11pt/1.42 "Source Serif 4", Georgia, "Times New Roman", serif; overflow-wrap: break-word; }
h1, h2, h3, h4, h5, th, .kind, .running, .label, .name { font-family: "Source Sans 3", "Helvetica Neue", Arial, sans-serif; }
h1 { font-size: 22pt; line-height: 1.15; margin: 0 0 0.4rem; }
h2 { font-size: 15pt; margin: 2rem 0 0.5rem; border-bottom: 2px solid var(--ink); }
h3 { font-size: 12.5pt; margin: 1.4rem 0 0.4rem; }
h4.group { margin: 1.1rem 0 0.3rem; padding: 0.15rem 0.5rem; border: 1px solid var(--ink); border-left-width: 6px; font-size: 11pt; }
h5, article h4 { font-size: 11pt; margin: 0.9rem 0 0.2rem; }
article code { font-weight: 400; font-size: 8.5pt; color: var(--soft); }
code { font-family: Consolas, Menlo, monospace; font-size: 0.9em; }
p { margin: 0.3rem 0; }
ul, ol { margin: 0.2rem 0; padding-left: 1.3rem; }
.lists { display: grid; grid-template-columns: 1fr 1fr; column-gap: 1.2rem; }
.label { margin: 0.4rem 0 0; font-weight: 700; font-size: 10pt; }
.kind { letter-spacing: 0.08em; text-transform: uppercase; font-size: 9pt; }
.status { font-weight: 700; border: 2px solid var(--ink); padding: 0.4rem 0.6rem; }
.caution, .lacking { border: 1px solid var(--ink); border-left-width: 6px; padding: 0.4rem 0.6rem; }
pre { white-space: pre-wrap; font: 8.5pt/1.35 Consolas, Menlo, monospace; margin: 0.2rem 0; padding: 0.3rem 0.6rem; border: 1px solid var(--line); }
.says { display: block; font: 400 9.5pt/1.35 Georgia, "Times New Roman", serif; color: var(--soft); }
.cites { color: var(--soft); font-size: 9.5pt; }
ul.logic { list-style: none; padding: 0.3rem 0.6rem; border-left: 3px solid var(--ink); background: #f6f6f6; }
ul.logic ul { padding-left: 1.3rem; list-style: square; }
table { border-collapse: collapse; width: 100%; margin: 0.5rem 0; font-size: 10pt; }
th, td { border: 1px solid var(--line); padding: 0.25rem 0.4rem; text-align: left; vertical-align: top; }
thead th { background: #eee; }
.levels tbody { border-bottom: 2px solid var(--ink); }
.levels .says { margin: 0; }
.facts th { width: 11rem; font-weight: 600; }
.facts td { word-break: break-word; }
.case-list { table-layout: fixed; }
.case-list thead th:first-child { width: 27%; }
.case-list thead th:last-child { width: 22%; }
.case-list tbody th { font-weight: 600; }
.map svg:not(.swatch) { width: 100%; max-width: 44rem; display: block; font-family: Arial, sans-serif; }
.map { margin: 0.5rem 0; }
.legend { list-style: none; padding: 0; display: grid; grid-template-columns: repeat(auto-fill, minmax(17rem, 1fr)); gap: 0.2rem 1rem; }
.swatch { width: 2.4rem; height: 1.2rem; vertical-align: middle; }
.edge { fill: none; stroke: #000; stroke-width: 1.4; }
.frame { fill: none; stroke: #000; }
.box { stroke: #000; }
.tick { stroke: #000; fill: none; }
.number { font-size: 12px; }
.axis { font-size: 13px; }
.disc { fill: #fff; stroke: #000; }
.letter { font-size: 14px; font-weight: 700; text-anchor: middle; }
.sheet .blanks { display: flex; gap: 0.3rem 1rem; flex-wrap: wrap; }
.sheet .blanks span { flex: 1 0 4rem; border-bottom: 1px solid var(--ink); padding-bottom: 0.9rem; font-size: 8.5pt; }
.sheet .columns { columns: 2; column-gap: 1.2rem; }
.sheet .level { break-inside: auto; }
.sheet .level .name { font-weight: 700; border-bottom: 1px solid var(--ink); margin: 0.3rem 0 0.1rem; break-after: avoid; }
.sheet .level ul { padding-left: 0.9rem; }
.sheet li { break-inside: avoid; }
.running { font-size: 8pt; color: var(--soft); }
.running .short { font-weight: 700; color: var(--ink); }
.running.top { border-bottom: 1px solid var(--line); margin-bottom: 0.6rem; }
.running.bottom { border-top: 1px solid var(--line); margin-top: 0.6rem; }
@page { size: A4; margin: 11mm 15mm 12mm; @bottom-right { content: "page " counter(page) " of " counter(pages); font: 8pt Arial, sans-serif; } }
@media print {
  body { max-width: none; padding: 0; font-size: 9.5pt; line-height: 1.33; }
  .paper { display: table; width: 100%; table-layout: fixed; }
  .running.top { display: table-header-group; }
  .running.bottom { display: table-footer-group; }
  .running { break-inside: avoid; }
  .running > div { padding: 0 0 2mm; }
  .running.bottom > div { padding: 2mm 0 0; }
  .body { display: table-row-group; }
  h2, h3, h4, h5, .label { break-after: avoid; }
  .measure, .map-page, .plan, tr, .levels tbody, .logic, .lists { break-inside: avoid; }
  .rule p { orphans: 3; widows: 3; }
  h1 { font-size: 19pt; }
  h2 { margin-top: 1.2rem; }
  section.protocol, section.sheet, section.ladder { break-before: page; }
  ul.logic, thead th { background: none; }
  a { color: inherit; text-decoration: none; }
  .case-list { font-size: 8.5pt; }
  .case-list .says { font-size: 8pt; }
  .sheet { font-size: 9pt; line-height: 1.25; }
  .sheet h2 { font-size: 13pt; margin-top: 0; }
  .sheet table { font-size: 8pt; margin: 0.25rem 0; }
  .sheet th, .sheet td { padding: 0.1rem 0.3rem; }
  .sheet.dense { font-size: 7.6pt; }
  .sheet.dense table { font-size: 7pt; }
  .sheet.tight { font-size: 6.9pt; line-height: 1.18; }
  .sheet.tight table { font-size: 6.4pt; }
  .sheet.smallest { font-size: 6.4pt; line-height: 1.15; }
  .sheet.smallest table { font-size: 6.1pt; }
}
`;
