/** The grounds under the cells: water mixed into paper, by the depth of water in the week. */
import { TONES } from '../tone.ts';

/** Water in the deepest ground, percent: ink stands at 4.5:1 on it. */
const DEEPEST_LIGHT = 57;
const DEEPEST_DARK = 45;

const names = Array.from({ length: TONES - 1 }, (_, at) => `--runnel-tone-${at + 1}`);

/** Registered, so that a colour is mixed once for the grid and not once a cell. */
export const toneRegistrations = names
  .map((name) => `@property ${name} { syntax: '<color>'; inherits: true; initial-value: transparent; }`)
  .join('\n');

export const toneDeclarations = names
  .map((name, at) => {
    const share = (deepest: number) => Math.round((deepest * (at + 1.5)) / (TONES - 0.5));
    const mix = (deepest: number) => `color-mix(in oklab, var(--_water) ${share(deepest)}%, var(--_paper))`;
    return `${name}: light-dark(${mix(DEEPEST_LIGHT)}, ${mix(DEEPEST_DARK)});`;
  })
  .join('\n');

export const toneRules = names
  .map(
    (name, at) =>
      `.runnel-sheet .handsontable td.runnel-tone-${at + 1}, .runnel-key .runnel-tone-${at + 1} { background-color: var(${name}); }`,
  )
  .join('\n');
