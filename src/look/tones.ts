/**
 * The grounds under the sheet's cells: tones of water by the depth of water in a week. The limits are round depths and not shares of a
 * greatest one, so that a tone means one depth in every garden.
 */
import type { UnitSystem } from '../engine/units.ts';

const MM_PER_INCH = 25.4;

/** Depth beyond which each tone but the first begins, mm: 0.25, 0.5, 1 and 1.5 in, or 5, 10, 25 and 40 mm. */
const LIMITS_MM: Readonly<Record<UnitSystem, readonly number[]>> = {
  us: [0.25, 0.5, 1, 1.5].map((inches) => inches * MM_PER_INCH),
  metric: [5, 10, 25, 40],
};

/** Palest first. Neighbours differ by CIEDE2000 5.9 to 8.7 in light, 5.1 to 7.5 in dark; ink stands at 5.1:1 or more on each. */
const COLOURS = [
  { light: '#ddf1f4', dark: '#193335' },
  { light: '#bae2e7', dark: '#194147' },
  { light: '#98cfd8', dark: '#195058' },
  { light: '#77bcc9', dark: '#1b5f6b' },
  { light: '#55a8b9', dark: '#1f6e7d' },
] as const;

/** Number of grounds: blank, where plants get no water, and the tones. */
export const TONES = COLOURS.length + 1;

/** Less than this is no water: no figure shows it. */
const LEAST_MM = 0.05;

/** Depth beyond which a ground begins, mm, the blank one first. */
export function toneLimitsMm(units: UnitSystem): readonly number[] {
  return [0, LEAST_MM, ...LIMITS_MM[units]];
}

/** Which ground a week's gross depth of water stands on: 0 is blank, `TONES - 1` the deepest. */
export function toneOf(depthMm: number, units: UnitSystem): number {
  if (!(depthMm > LEAST_MM)) return 0;
  return 1 + LIMITS_MM[units].filter((limit) => depthMm > limit).length;
}

const names = COLOURS.map((_, index) => `--runnel-tone-${index + 1}`);

/** Registered, so that a colour is found once for the grid and not once a cell. */
export const toneRegistrations = names
  .map((name) => `@property ${name} { syntax: '<color>'; inherits: true; initial-value: transparent; }`)
  .join('\n');

/** Declarations for a rule of the sheet's root. */
export const toneDeclarations = COLOURS.map(
  ({ light, dark }, index) => `${names[index]}: light-dark(${light}, ${dark});`,
).join('\n');

/** Rules for the sheet's cells and its key. */
export const toneRules = ['var(--_blank)', ...names.map((name) => `var(${name})`)]
  .map(
    (ground, tone) =>
      `.runnel-sheet .handsontable td.runnel-tone-${tone}, .runnel-key .runnel-tone-${tone} { background-color: ${ground}; }`,
  )
  .join('\n');
