/** The frozen column of names, how a zone folds out, and the headers. */
export const nameStyles = `
.runnel-sheet .handsontable td.runnel-name {
  position: relative;
  overflow: hidden;
  padding: 0 0.4em;
  padding-inline-start: 1.6em;
  background: var(--_paper);
  color: var(--_ink);
  font-size: calc(var(--_size) * 0.93);
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
  font-weight: 500;
  overflow-wrap: anywhere;
  -webkit-box-orient: vertical;
  -webkit-line-clamp: 2;
}

.runnel-sheet .runnel-detail {
  display: block;
  overflow: hidden;
  color: var(--_quiet);
  font-size: 0.84em;
  unicode-bidi: plaintext;
  text-overflow: ellipsis;
  white-space: nowrap;
}

.runnel-sheet td:is(.runnel-low, .runnel-planting) .runnel-name-text,
.runnel-sheet .runnel-zone .runnel-name-text {
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
  inline-size: 1.6em;
  margin: 0;
  padding: 0;
  border: 0;
  background: none;
  color: var(--_ink);
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
  border-width: 0 1.5px 1.5px 0;
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

.runnel-narrow .handsontable td.runnel-zone .runnel-name-text {
  display: -webkit-box;
  white-space: normal;
}

.runnel-compact .handsontable td.runnel-zone.runnel-long-name .runnel-name-text {
  display: -webkit-box;
  white-space: normal;
}

.runnel-compact td.runnel-zone.runnel-long-name .runnel-detail {
  display: none;
}

.runnel-compact .handsontable td.runnel-name {
  font-size: calc(var(--_size) * 0.87);
  line-height: 1.1;
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

.runnel-sheet .handsontable thead th.runnel-this-week {
  background: var(--_ink);
  color: var(--_paper);
  font-weight: 650;
}

.runnel-sheet .handsontable thead th.runnel-this-week,
.runnel-sheet .handsontable thead th.runnel-this-week :is(.relative, .colHeader) {
  overflow: visible;
}

.runnel-sheet .handsontable thead th.runnel-this-week :is(.relative, .colHeader) {
  position: static;
}

.runnel-sheet .runnel-now {
  position: absolute;
  display: grid;
  place-content: center;
  inset-block-end: 100%;
  inset-inline: 0;
  block-size: var(--_months, 100%);
  background: var(--_ink);
  font-size: 11px;
  font-weight: 400;
  line-height: 1.2;
  white-space: nowrap;
}

.runnel-sheet .handsontable thead th:is(.runnel-month-of-now, .runnel-from-now) {
  text-align: start;
}

.runnel-sheet .handsontable thead th.runnel-from-now .relative {
  margin-inline-start: var(--_week);
}

.runnel-at-now .handsontable thead tr:first-child th.runnel-month-of-now .relative {
  inset-inline-start: calc(var(--_frozen, 0px) + var(--_week));
}

.runnel-sheet .handsontable thead th.runnel-lead .colHeader:has(b) {
  display: block;
  overflow: visible;
  font-size: 11px;
  line-height: 13px;
  text-align: end;
  white-space: nowrap;
}

.runnel-sheet .handsontable thead th.runnel-lead b {
  display: block;
  font-size: 13px;
  font-weight: 650;
}

.runnel-sheet .handsontable thead th.runnel-lead .colHeader > span {
  float: inline-start;
  margin-inline-start: 2px;
  font-size: 13px;
}

.runnel-sheet .handsontable thead th.runnel-lead i {
  margin-inline-end: 0.3em;
  color: var(--_rain);
  font-style: normal;
}

.runnel-sheet .handsontable thead th.runnel-lead:has(b) .relative {
  padding: 0 3px;
}

.runnel-sheet .handsontable th.runnel-pointed {
  background: color-mix(in oklab, var(--_ink) 18%, var(--_paper));
}
`;
