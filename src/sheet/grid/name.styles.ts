/** The frozen column of names, how a zone folds out, and the headers. */
export const nameStyles = `
.runnel-sheet .handsontable td.runnel-name {
  position: relative;
  overflow: hidden;
  padding: 0.15em 0.5em;
  padding-inline-start: 1.9em;
  background: var(--_paper);
  color: var(--_ink);
  line-height: 1.15;
  text-align: start;
  vertical-align: middle;
  white-space: normal;
}

.runnel-sheet .handsontable[dir='rtl'] td.runnel-name {
  text-align: right;
}

.runnel-sheet .handsontable thead th:not(:first-child) .colHeader {
  direction: ltr;
}

.runnel-sheet .runnel-name-text {
  display: -webkit-box;
  overflow: hidden;
  unicode-bidi: plaintext;
  font-weight: 600;
  overflow-wrap: anywhere;
  -webkit-box-orient: vertical;
  -webkit-line-clamp: 2;
}

.runnel-sheet .runnel-detail {
  display: block;
  overflow: hidden;
  color: var(--_quiet);
  font-size: 0.8em;
  unicode-bidi: plaintext;
  text-overflow: ellipsis;
  white-space: nowrap;
}

.runnel-sheet td:is(.runnel-low, .runnel-planting) .runnel-name-text {
  display: block;
  text-overflow: ellipsis;
  white-space: nowrap;
}

.runnel-sheet td:is(.runnel-eto, .runnel-rain) :is(.runnel-name-text, .runnel-detail) {
  display: inline;
}

.runnel-sheet .handsontable td:is(.runnel-eto, .runnel-rain).runnel-name {
  text-overflow: ellipsis;
  white-space: nowrap;
}

.runnel-sheet td:is(.runnel-eto, .runnel-rain) .runnel-detail {
  margin-inline-start: 0.5em;
}

.runnel-sheet td.runnel-planting .runnel-name-text {
  font-weight: 400;
}

.runnel-sheet .runnel-fold {
  position: absolute;
  inset-block: 0;
  inset-inline-start: 0;
  inline-size: 1.9em;
  margin: 0;
  padding: 0;
  border: 0;
  background: none;
  color: var(--_water);
  font: inherit;
  cursor: pointer;
}

.runnel-sheet .runnel-fold[hidden] {
  display: none;
}

.runnel-sheet .runnel-fold::before {
  display: inline-block;
  inline-size: 0.45em;
  block-size: 0.45em;
  border: solid currentcolor;
  border-width: 0 2px 2px 0;
  rotate: -45deg;
  content: '';
}

.runnel-sheet .runnel-fold[aria-expanded='true']::before {
  rotate: 45deg;
}

.runnel-narrow .handsontable td.runnel-name {
  padding-inline: 1.5em 0.2em;
  font-size: 0.87em;
  hyphens: auto;
}

.runnel-narrow .handsontable td:is(.runnel-eto, .runnel-rain, .runnel-total, .runnel-planting).runnel-name {
  padding-inline-start: 0.4em;
}

.runnel-narrow td.runnel-zone .runnel-detail {
  display: none;
}

.runnel-narrow .handsontable td.runnel-zone.runnel-low .runnel-name-text {
  display: -webkit-box;
  white-space: normal;
}

.runnel-narrow .runnel-fold {
  inline-size: 1.5em;
}

.runnel-sheet .handsontable thead th.runnel-lead {
  text-align: start;
}

.runnel-sheet .handsontable thead th.runnel-lead .relative {
  padding-inline: 5px;
}

.runnel-sheet .handsontable th.runnel-this-week {
  box-shadow: inset 0 -3px 0 var(--_growth);
  font-weight: 700;
}

.runnel-sheet .handsontable th.runnel-pointed {
  background: color-mix(in oklab, var(--_water) 18%, var(--_paper));
}
`;
