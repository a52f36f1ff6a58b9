/** Style of the page on a screen: a ruled sheet, headings in the margin, light and dark. */
export const pageStyle = `
:root {
  color-scheme: light dark;
  --sheet: #fbfaf5; --ink: #1d1b16; --faint: #625d50; --rule: #c9c3b2; --tint: #efece1; --warn: #8c1c13; --link: #1f4a6b;
}
@media (prefers-color-scheme: dark) {
  :root { --sheet: #191814; --ink: #e8e4d8; --faint: #a8a292; --rule: #4a463b; --tint: #25231d; --warn: #ff9d8f; --link: #9cc8ea; }
}
* { box-sizing: border-box; }
html { font-size: 1rem; }
body {
  margin: 0 auto; max-width: 78rem; padding: 1rem clamp(.75rem, 3vw, 2.5rem) 4rem; background: var(--sheet); color: var(--ink);
  font: 1rem/1.42 "Iowan Old Style", "Palatino Linotype", Palatino, "Book Antiqua", Georgia, serif;
  font-variant-numeric: tabular-nums lining-nums; overflow-wrap: anywhere;
}
a { color: var(--link); text-underline-offset: .15em; }
:focus-visible { outline: 2px solid currentColor; outline-offset: 2px; }
h1 { font-size: 1.8rem; line-height: 1.15; margin: 0 0 .5rem; font-weight: 600; }
h2 { font-size: 1.1rem; line-height: 1.2; margin: 0; font-weight: 700; }
h3 { font-size: 1.05rem; margin: 1.1rem 0 .35rem; }
h3 small { color: var(--faint); font-weight: 400; font-size: .85rem; }
h4 { font-size: 1rem; margin: 0 0 .25rem; }
p { margin: .25rem 0; }
ul, ol { margin: .25rem 0; padding-left: 1.6rem; }
.kicker, dt, thead th, caption, figcaption, nav, .empty { font-family: "Gill Sans", "Gill Sans MT", Optima, Candara, "Noto Sans", sans-serif; }
.kicker { color: var(--faint); letter-spacing: .12em; text-transform: uppercase; font-size: .75rem; }
header { border-bottom: 3px double var(--ink); padding-bottom: .75rem; }
nav ul { list-style: none; display: flex; flex-wrap: wrap; gap: .1rem 1.1rem; padding: 0; margin: .75rem 0 0; font-size: .9rem; }
.block { display: grid; grid-template-columns: minmax(0, 9rem) minmax(0, 1fr); gap: 0 1.5rem; border-bottom: 1px solid var(--ink); padding: .8rem 0 1rem; }
.content > :first-child, .content > section:first-child > h3 { margin-top: 0; }
.empty { color: var(--faint); font-style: italic; }
.pairs { margin: 0; }
.pairs > div { display: grid; grid-template-columns: 6.5rem minmax(0, 1fr); gap: 0 .75rem; }
dt { color: var(--faint); font-size: .85rem; line-height: 1.67; }
dd { margin: 0; }
.mark { font-family: "Gill Sans", "Gill Sans MT", Optima, Candara, "Noto Sans", sans-serif; font-size: .85em; padding: 0 .35em; border: 1px solid transparent; white-space: nowrap; }
.mark.danger { background: var(--warn); color: var(--sheet); border-color: var(--warn); }
.mark.replace { border: 2px solid currentColor; }
.mark.adjust { border: 1px solid currentColor; }
.mark.watch { border: 1px dashed currentColor; }
.mark.unmeasured { border: 1px dotted currentColor; font-style: italic; font-weight: 400; }
.mark.good { padding: 0; font-weight: 400; }
.cautions, .dangers { list-style: none; padding: 0; }
.cautions summary { font-weight: 600; cursor: pointer; }
.cautions details p { margin: .2rem 0 .6rem 1.1rem; max-width: 46rem; }
.paper { display: none; }
.reached { font-size: 1.15rem; }
.steps { list-style: none; padding: 0; display: grid; grid-template-columns: repeat(auto-fit, minmax(11rem, 1fr)); border: 1px solid var(--ink); margin: .5rem 0; }
.steps li { padding: .35rem .6rem .45rem; border-left: 1px solid var(--rule); margin-left: -1px; }
.steps em { display: block; font-size: .85rem; }
.steps span { display: block; color: var(--faint); font-size: .9rem; line-height: 1.3; }
.steps .is-reached { background: var(--tint); }
.steps .is-held strong { font-weight: 400; }
.dangers li { border-left: 4px solid var(--warn); padding-left: .75rem; margin: .5rem 0; }
.next > li { margin-bottom: .4rem; }
.stage + .stage { border-top: 1px solid var(--rule); margin-top: 1.2rem; }
.finding { margin: .9rem 0 0; padding-left: calc(.75rem + 3px); border-left: 1px solid var(--rule); }
.finding.danger { border-left: 4px solid var(--warn); padding-left: .75rem; }
.finding.replace { border-left: 3px solid var(--ink); padding-left: calc(.75rem + 1px); }
.finding.good .pairs > div, .finding.good .pairs dt, .finding.good .pairs dd { display: inline; }
.finding.good .pairs dt { margin-right: .35em; }
.finding.good .pairs dd { margin-right: .9em; }
.good-findings { margin-top: .9rem; }
.good-findings summary { cursor: pointer; }
table { border-collapse: collapse; width: 100%; font-size: .92rem; line-height: 1.3; margin: .4rem 0; }
caption { position: absolute; width: 1px; height: 1px; overflow: hidden; clip-path: inset(50%); white-space: nowrap; }
th, td { text-align: left; vertical-align: top; padding: .25rem .8rem .25rem 0; border-bottom: 1px solid var(--rule); }
thead th { color: var(--faint); font-size: .82rem; font-weight: 400; border-bottom: 1px solid var(--ink); white-space: nowrap; }
tbody th { font-weight: 600; }
.short { white-space: nowrap; }
.short small { white-space: normal; }
figure { margin: 0; }
figcaption { color: var(--faint); font-size: .85rem; max-width: 52rem; }
.readings small { display: block; font-weight: 400; font-size: .88em; color: var(--faint); }
.readings td:last-child { width: 19rem; padding-right: 0; }
.chart { display: block; width: 19rem; max-width: 100%; height: auto; color: var(--ink); }
.chart .window { fill: var(--rule); stroke: currentColor; stroke-width: .8; }
.chart .published { fill: none; stroke: currentColor; stroke-width: .8; }
.chart .axis { fill: none; stroke: var(--faint); stroke-width: .8; }
.chart .nominal { stroke: currentColor; stroke-width: 1; }
.chart .measured { fill: currentColor; stroke: var(--sheet); stroke-width: 1; }
.chart .measured.line { fill: none; stroke: currentColor; stroke-width: 2.4; }
.chart text { fill: var(--faint); font: 10px "Gill Sans", "Noto Sans", sans-serif; text-anchor: middle; }
.remarks { font-size: .92rem; }
.order input { width: 1.1rem; height: 1.1rem; margin: 0; }
@media (max-width: 60rem) {
  .block { display: block; }
  h2 { margin-bottom: .4rem; }
}
@media screen and (max-width: 48rem) {
  table, tbody, tr, th, td { display: block; }
  thead { position: absolute; width: 1px; height: 1px; overflow: hidden; clip-path: inset(50%); }
  tbody tr { border-bottom: 1px solid var(--rule); padding: .35rem 0; }
  tbody th, tbody td { border: 0; padding: .05rem 0; display: grid; grid-template-columns: 6.5rem minmax(0, 1fr); gap: 0 .75rem; justify-items: start; }
  tbody th::before, tbody td::before { content: attr(data-label); color: var(--faint); font: 400 .85rem/1.5 "Gill Sans", "Noto Sans", sans-serif; }
  tbody .blank { display: none; }
  .readings td:last-child { display: block; width: auto; }
  .readings td:last-child::before { content: none; }
  .chart { width: 100%; max-width: 26rem; }
}
`;
