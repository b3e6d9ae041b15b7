/** The steps behind the first, and what they have come to. */
export { makeStep as season } from './start-season.ts';
export { makeStep as lines } from './step-lines.ts';
export { makeStep as plants } from './step-plants.ts';
export { makeStep as timer } from './step-timer.ts';
export { makeStep as water } from './step-water.ts';
