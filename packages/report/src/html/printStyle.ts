/** Style on paper, A4 or Letter: black on white, everything unfolded, rows and findings kept whole. */
export const printStyle = `
@media print {
  :root { --sheet: #fff; --ink: #000; --faint: #333; --rule: #999; --tint: #fff; --warn: #000; --link: #000; }
  @page { margin: 14mm 13mm 16mm; @bottom-right { content: counter(page) " / " counter(pages); font-size: 8pt; } }
  html { font-size: 9.5pt; }
  body { max-width: none; padding: 0; line-height: 1.3; background: #fff; }
  nav { display: none; }
  a { color: inherit; text-decoration: none; }
  .block { display: block; }
  h2 { margin-bottom: 2mm; }
  h2, h3, h4, figcaption, thead, .pairs > div:first-child { break-after: avoid; }
  tr, li, .pairs > div, .steps, .chart { break-inside: avoid; }
  .finding, .figures { break-inside: avoid; }
  thead { display: table-header-group; }
  .cautions { columns: 2; column-gap: 6mm; font-size: .85rem; line-height: 1.22; }
  .cautions details { display: none; }
  .paper { display: block; }
  details::details-content { content-visibility: visible; block-size: auto; display: block; }
  .good-findings summary { list-style: none; }
  .mark.danger { background: none; color: #000; border: 2px solid #000; text-transform: uppercase; }
  .steps .is-reached { border: 2px solid #000; }
  .chart .window { fill: #d4d4d4; }
  th, td { padding-right: 2.5mm; }
  .readings td:last-child, .chart { width: 62mm; }
}
`;
