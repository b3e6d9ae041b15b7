/**
 * The bars beside the figures of the weather, in steps, so that no cell needs a style of its own: full where the week was read, hollow
 * for usual weather. No figure stands over one.
 */
import { BAR_STEPS } from '../cells/make-cell-view.ts';

const solid = (colour: string) => `linear-gradient(${colour} 0 0)`;

const heights = Array.from(
  { length: BAR_STEPS + 1 },
  (_, step) => `.runnel-sheet td.runnel-bar-${step} { --_bar: ${Math.round((84 * step) / BAR_STEPS)}%; }`,
).join('\n');

const hollow = (colour: string) => `
  background-image: ${solid('var(--_paper)')}, ${solid(`var(${colour})`)};
  background-position: 4px calc(100% - 3px), 3px calc(100% - 2px);
  background-size: 8px max(0px, calc(var(--_bar, 0%) - 2px)), 10px var(--_bar, 0);
`;
const full = (colour: string) => `
  background-image: ${solid(`var(${colour})`)};
  background-position: 3px calc(100% - 2px);
  background-size: 10px var(--_bar, 0);
`;

const WEATHER = '.runnel-sheet .handsontable td.runnel-weather.runnel-cell';

export const barStyles = `
${WEATHER} {
  padding-block: 0;
  font-size: calc(var(--_size) * 0.87);
  font-weight: 400;
  text-align-last: end;
  text-decoration: none;
  vertical-align: middle;
}

${WEATHER}:not(.runnel-season) {${hollow('--_rain')}}

${WEATHER}.runnel-eto:not(.runnel-season) {${hollow('--_growth')}}

${WEATHER}.runnel-by-hand:not(.runnel-season) {${full('--_rain')}}

${WEATHER}.runnel-by-hand.runnel-eto:not(.runnel-season) {${full('--_growth')}}

${heights}
`;
