/**
 * The look of a season in a grid: plain CSS for a page's own document, since the grid lives outside any shadow root.
 */
import { forcedTokenDeclarations, tokenDeclarations } from '../../look/tokens.ts';
import { toneDeclarations, toneRegistrations, toneRules } from '../../look/tones.ts';
import { barStyles } from './bar.styles.ts';
import { besideCellStyles } from './beside-cell.styles.ts';
import { nameStyles } from './name.styles.ts';
import { signStyles } from './sign.styles.ts';
import { tablePins } from './table-pins.styles.ts';

/**
 * `overflow`: a clip around every cell is what makes the sheet slow to scroll; figures are made to fit.
 * `direction`: figures and their signs run left to right in any page.
 * `.runnel-sheet .handsontableInput`: what is typed stays on one line, however long.
 * `.runnel-sheet .handsontable td.runnel-cell`: in forced colours: signs and bars are images, which that mode would take away;
 * grounds would leave too little contrast.
 */
export const sheetStyles = `
${toneRegistrations}

.runnel-sheet,
.runnel-key {
  ${tokenDeclarations}
  ${toneDeclarations}
}

.runnel-sheet {
  color: var(--_ink);
  font-family: var(--_font);
  font-size: var(--_size);
  font-variant-numeric: tabular-nums lining-nums;
}

${tablePins}
.runnel-sheet .handsontable td.runnel-cell {
  overflow: visible;
  padding: 0.15em 0.35em 0;
  background-color: var(--_paper);
  background-repeat: no-repeat;
  color: var(--_ink);
  font-family: var(--_font);
  font-size: calc(var(--_size) * 0.75);
  letter-spacing: normal;
  line-height: 1.2;
  text-align: end;
  text-align-last: justify;
  direction: ltr;
  white-space: nowrap;
}

.runnel-sheet .runnel-main {
  display: block;
  font-size: 1.42em;
  font-weight: 650;
  text-align: end;
  text-align-last: end;
}

.runnel-sheet .runnel-start {
  color: var(--_rain-on-tone);
  font-style: normal;
}

.runnel-sheet td:is(.runnel-planting, .runnel-total) .runnel-start {
  color: inherit;
}

.runnel-compact .handsontable td.runnel-cell {
  padding-block-start: 1px;
  font-size: calc(var(--_size) * 0.735);
  line-height: 1.15;
}

.runnel-compact .handsontable .runnel-main {
  font-size: 1.36em;
}

.runnel-narrow .handsontable td.runnel-cell {
  font-size: calc(var(--_size) * 0.87);
}

.runnel-narrow .handsontable .runnel-main {
  font-size: 1.23em;
}

.runnel-one-week .handsontable td.runnel-cell {
  padding-inline: 0.75em;
  font-size: var(--_size);
}

.runnel-one-week .handsontable .runnel-main {
  font-size: 1.4em;
}

.runnel-sheet .handsontable td.runnel-cell.runnel-one {
  padding: 0 0.35em;
  font-size: calc(var(--_size) * 1.1);
  font-weight: 650;
  text-align-last: end;
  vertical-align: middle;
}

.runnel-sheet .handsontable td.runnel-cell.runnel-long {
  padding-inline: 0.2em;
  font-size: calc(var(--_size) * 0.67);
}

.runnel-sheet .handsontable td.runnel-cell.runnel-one.runnel-long {
  font-size: calc(var(--_size) * 0.87);
}

${toneRules}

.runnel-sheet .handsontable td.runnel-state-off {
  background-color: var(--_paper);
}

.runnel-sheet td.runnel-idle.runnel-cell.runnel-one,
.runnel-sheet td.runnel-idle .runnel-main {
  font-weight: 400;
}

.runnel-sheet td:is(.runnel-state-closed, .runnel-skipped) .runnel-main {
  font-size: 1em;
  line-height: 1.5;
}

.runnel-sheet td.runnel-noted:is(.runnel-state-closed, .runnel-skipped) .runnel-main {
  padding-inline-end: 9px;
}

.runnel-sheet td.runnel-zone:is(.runnel-tone-0, .runnel-season) .runnel-start {
  color: var(--_rain);
}

${signStyles}

.runnel-sheet td.runnel-planting .runnel-main {
  font-size: 1.28em;
  font-weight: 500;
}

.runnel-sheet td.runnel-by-hand .runnel-main,
.runnel-sheet td.runnel-by-hand.runnel-one {
  text-decoration: underline;
  text-decoration-thickness: 1.5px;
  text-underline-offset: 0.12em;
}

.runnel-sheet td.runnel-run .runnel-main,
.runnel-sheet td.runnel-run.runnel-one {
  text-decoration: underline double 1px var(--_growth);
}

.runnel-sheet .handsontable td.runnel-planting.runnel-cell.runnel-one {
  font-size: var(--_size);
  font-weight: 500;
}

${barStyles}

.runnel-sheet .handsontableInput {
  white-space: pre;
}

.runnel-sheet .ht_clone_bottom td.runnel-total,
.runnel-sheet .ht_clone_bottom_inline_start_corner td.runnel-total {
  box-shadow: inset 0 1px 0 var(--_ink);
}

/* The room of the library's edge, where the next row would show. */
.runnel-sheet .handsontable:is(.ht_clone_bottom, .ht_clone_bottom_inline_start_corner) {
  box-shadow: 0 -1px 0 var(--_paper);
}

.runnel-sheet .handsontable td:is(.runnel-season, .runnel-total).runnel-cell {
  background-color: var(--_paper);
}

${nameStyles}
${besideCellStyles}
@media (prefers-reduced-motion: no-preference) {
  .runnel-sheet .handsontable td.runnel-changed {
    animation: runnel-changed 1.4s ease-out;
  }
}

@keyframes runnel-changed {
  from {
    background-color: color-mix(in oklab, var(--_growth) 45%, var(--_paper));
  }
}

@media (forced-colors: active) {
  .runnel-sheet,
  .runnel-key {
    ${forcedTokenDeclarations}
  }

  .runnel-sheet .handsontable td.runnel-cell {
    background-color: Canvas;
    forced-color-adjust: none;
  }

  /* A plate behind its words would be of their own colour. */
  .runnel-sheet .handsontable thead th.runnel-this-week,
  .runnel-sheet .runnel-hint {
    forced-color-adjust: none;
  }
}
`;
