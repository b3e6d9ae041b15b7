/** The bars behind the figures of the weather, in steps, so that no cell needs a style of its own. */
import { BAR_STEPS } from '../cells/make-cell-view.ts';

const bar = (colour: string, share: number) =>
  `linear-gradient(color-mix(in oklab, var(${colour}) ${share}%, var(--_paper)) 0 0)`;
const notch = 'linear-gradient(225deg, var(--_ink) 7px, transparent 7.5px)';

const heights = Array.from(
  { length: BAR_STEPS + 1 },
  (_, step) => `.runnel-sheet td.runnel-bar-${step} { --_bar: ${(100 * step) / BAR_STEPS}%; }`,
).join('\n');

export const barStyles = `
.runnel-sheet .handsontable td.runnel-weather.runnel-cell:not(.runnel-season) {
  background-position: 0 100%;
}

.runnel-sheet .handsontable td.runnel-weather.runnel-cell {
  padding-block: 0;
  background-image: ${bar('--_rain', 34)};
  background-size: 100% var(--_bar, 0);
  font-size: var(--_size);
  font-weight: 400;
  vertical-align: middle;
}

.runnel-sheet .handsontable td.runnel-weather.runnel-cell.runnel-eto {
  background-image: ${bar('--_growth', 26)};
}

.runnel-sheet .handsontable td.runnel-weather.runnel-cell.runnel-by-hand:not(.runnel-season) {
  background-image: ${notch}, ${bar('--_rain', 34)};
  background-position: 100% 0, 0 100%;
  background-size: 12px 12px, 100% var(--_bar, 0);
}

.runnel-sheet .handsontable td.runnel-weather.runnel-cell.runnel-by-hand.runnel-eto {
  background-image: ${notch}, ${bar('--_growth', 26)};
}

${heights}
`;
