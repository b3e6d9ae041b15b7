/**
 * The look of a season in a grid: plain CSS for a page's own document, since the grid lives outside any shadow root. The
 * tokens are the kit's custom properties with the kit's defaults.
 */
import { TONES } from '../tone.ts';
import { nameStyles } from './name.styles.ts';
import { saidStyles } from './said.styles.ts';

const TOKENS = `
  --_paper: var(--runnel-paper, light-dark(#fbfaf5, #171d1c));
  --_ink: var(--runnel-ink, light-dark(#22302d, #e8ebe3));
  --_quiet: var(--runnel-quiet, light-dark(#586560, #a9b5ae));
  --_line: var(--runnel-line, light-dark(#d8d7cb, #35413e));
  --_water: var(--runnel-water, light-dark(#12697a, #5fbcca));
  --_rain: var(--runnel-rain, light-dark(#4669ad, #9ab6f0));
  --_growth: var(--runnel-growth, light-dark(#3c7338, #93c684));
  --_short: var(--runnel-short, light-dark(#ad3a1c, #f38f6b));
  --_font: var(--runnel-font, system-ui, sans-serif);
  --_size: var(--runnel-font-size, 0.9375rem);
`;

/** Water in the ground of the deepest tone, percent: ink stands at 4.5:1 on it. */
const DEEPEST_LIGHT = 57;
const DEEPEST_DARK = 45;

const tones = Array.from({ length: TONES - 1 }, (_, at) => {
  const tone = at + 1;
  const share = (deepest: number) => Math.round((deepest * (tone + 0.5)) / (TONES - 0.5));
  const mix = (deepest: number) => `color-mix(in oklab, var(--_water) ${share(deepest)}%, var(--_paper))`;
  return `.runnel-sheet .handsontable td.runnel-tone-${tone}, .runnel-key .runnel-tone-${tone} { --_ground: light-dark(${mix(DEEPEST_LIGHT)}, ${mix(DEEPEST_DARK)}); }`;
}).join('\n');

export const sheetStyles = `
.runnel-sheet {
  ${TOKENS}
  color: var(--_ink);
  font-family: var(--_font);
  font-size: var(--_size);
  font-variant-numeric: tabular-nums lining-nums;
}

.runnel-sheet .handsontable td.runnel-cell {
  --_ground: var(--_paper);
  --_notch: none;
  --_fold: none;
  --_hatch: none;
  position: relative;
  overflow: hidden;
  padding: 0.1em 0.4em;
  background-color: var(--_ground);
  background-image: var(--_notch), var(--_fold), var(--_hatch);
  background-repeat: no-repeat;
  color: var(--_ink);
  font-family: var(--_font);
  line-height: 1.2;
  text-align: end;
  vertical-align: middle;
  white-space: nowrap;
}

.runnel-sheet .runnel-main,
.runnel-sheet .runnel-line {
  display: block;
}

.runnel-sheet .runnel-line:empty {
  display: none;
}

.runnel-sheet .runnel-main {
  font-size: 1.1em;
  font-weight: 650;
}

.runnel-sheet .runnel-line {
  font-size: 0.78em;
}

.runnel-sheet td.runnel-idle .runnel-main {
  font-weight: 400;
}

${tones}

/* State: a chip in the corner; dry has an edge that is seen from afar. */
.runnel-sheet .handsontable td.runnel-state-dry::after,
.runnel-sheet .handsontable td.runnel-state-short::after,
.runnel-sheet .handsontable td.runnel-state-over::after {
  position: absolute;
  inset-block-start: 3px;
  inset-inline-start: 3px;
  inline-size: 1.15em;
  block-size: 1.15em;
  border-radius: 50%;
  background: var(--_paper);
  color: var(--_short);
  font-size: 0.68em;
  line-height: 1.15em;
  text-align: center;
  content: '▽' / '';
}

.runnel-sheet .handsontable td.runnel-state-dry::after {
  background: var(--_short);
  color: var(--_paper);
  content: '▼' / '';
}

.runnel-sheet .handsontable td.runnel-state-over::after {
  color: var(--_water);
  content: '△' / '';
}

.runnel-sheet .handsontable td.runnel-state-dry {
  box-shadow: inset 3px 0 0 var(--_short);
}

/* Set by hand: a notch; a note: a folded corner. Closed weeks: hatched. */
.runnel-sheet .handsontable td.runnel-state-closed {
  --_hatch: repeating-linear-gradient(-45deg, transparent 0 5px, color-mix(in oklab, var(--_quiet) 32%, transparent) 5px 6px);
}

.runnel-sheet .handsontable td.runnel-by-hand {
  --_notch: linear-gradient(225deg, var(--_ink) 7px, transparent 7.5px);
}

.runnel-sheet .handsontable td.runnel-run {
  --_notch: linear-gradient(225deg, var(--_growth) 7px, transparent 7.5px);
}

.runnel-sheet .handsontable td.runnel-noted {
  --_fold: linear-gradient(45deg, var(--_rain) 6px, transparent 6.5px);
}

.runnel-sheet .handsontable td.runnel-by-hand .runnel-line:nth-child(2) {
  font-weight: 700;
}

.runnel-sheet .handsontable td.runnel-planting {
  font-size: 0.93em;
}

.runnel-sheet .handsontable td.runnel-planting .runnel-main {
  font-size: 1em;
  font-weight: 500;
}

/* Weather: a bar stands behind each figure. */
.runnel-sheet .handsontable td.runnel-weather {
  --_bar: 0%;
  --_bar-colour: color-mix(in oklab, var(--_rain) 34%, var(--_paper));
  background-image: var(--_notch), linear-gradient(to top, var(--_bar-colour) var(--_bar), transparent var(--_bar));
  vertical-align: bottom;
}

.runnel-sheet .handsontable td.runnel-weather.runnel-eto {
  --_bar-colour: color-mix(in oklab, var(--_growth) 26%, var(--_paper));
}

.runnel-sheet .handsontable td.runnel-weather.runnel-season {
  vertical-align: middle;
}

.runnel-sheet .handsontable td.runnel-weather .runnel-main {
  font-size: 0.9em;
  font-weight: 400;
}

.runnel-sheet .handsontable td.runnel-season,
.runnel-sheet .handsontable td.runnel-total {
  --_ground: color-mix(in oklab, var(--_ink) 5%, var(--_paper));
}

${nameStyles}
${saidStyles}
@media (prefers-reduced-motion: no-preference) {
  .runnel-sheet td.runnel-changed .runnel-main {
    animation: runnel-changed 1.4s ease-out;
  }
}

@keyframes runnel-changed {
  from {
    background: color-mix(in oklab, var(--_growth) 45%, transparent);
  }
}

@media (forced-colors: active) {
  .runnel-sheet {
    --_paper: Canvas;
    --_ink: CanvasText;
    --_quiet: CanvasText;
    --_line: CanvasText;
    --_water: CanvasText;
    --_rain: CanvasText;
    --_growth: CanvasText;
    --_short: CanvasText;
  }
}
`;
