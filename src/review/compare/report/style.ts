/** How the report looks: ink on paper, nothing told by colour alone, nothing fetched. */
export const style = `
:root { color-scheme: light; }
body { margin: 2rem auto; padding: 0 1rem; max-width: 50rem; font: 1rem/1.5 system-ui, sans-serif; color: #111; background: #fff; }
h1 { font-size: 1.5rem; margin-bottom: 0.25rem; }
h2 { font-size: 1.2rem; margin-top: 2rem; border-bottom: 2px solid #111; }
h3 { font-size: 1rem; margin-bottom: 0.25rem; }
.verdict { border: 3px solid #111; padding: 0.75rem 1rem; font-weight: 600; }
.caution { border-top: 1px solid #111; margin-top: 2rem; padding-top: 0.5rem; }
.change { border-left: 6px solid #111; padding-left: 1rem; margin: 1.5rem 0; break-inside: avoid-page; }
.change.higher { border-left-style: double; }
.change.otherwise { border-left-style: dotted; }
table { border-collapse: collapse; width: 100%; }
th, td { border: 1px solid #555; padding: 0.3rem 0.5rem; text-align: left; vertical-align: top; overflow-wrap: anywhere; }
code { font-size: 0.85rem; overflow-wrap: anywhere; }
ul { padding-left: 1.25rem; margin: 0.25rem 0; }
@media print { body { margin: 0; max-width: none; font-size: 10.5pt; } h2 { break-after: avoid; } tr { break-inside: avoid; } }
`;
