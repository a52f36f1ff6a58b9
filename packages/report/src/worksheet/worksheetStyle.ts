/** What a bench sheet adds to the page's style: room to write in, one stage after the other, whole rows on A4 paper. */
export const worksheetStyle = `
.fill { display: block; min-width: 4.5rem; height: 1.5rem; border-bottom: 1px solid var(--ink); }
.facts { display: grid; grid-template-columns: repeat(auto-fit, minmax(16rem, 1fr)); gap: .3rem 1.5rem; margin: .6rem 0 0; }
.facts div { display: flex; gap: .6rem; align-items: end; }
.facts .fill { flex: 1; }
.warn { border-left: 4px solid var(--warn); padding-left: .75rem; list-style: none; }
.warn li { margin: .25rem 0; }
.bench section { border-bottom: 1px solid var(--ink); padding: .8rem 0 1rem; }
.bench h2 { font-size: 1.25rem; }
@media print {
  @page { size: A4; }
  .bench section { break-inside: auto; }
  .stage-sheet { break-before: page; }
  .fill { height: 6.5mm; min-width: 18mm; }
  table { font-size: .85rem; }
}
`;
