/**
 * Depth of water in a week, mm, at which the ground under a cell deepens by one step. Fixed, so that a depth looks the
 * same in every plan; the last is the week of a thirsty bed in a hot summer (reference ET of some 6 mm a day).
 */
const STEPS_MM = [0.5, 4, 8, 13, 19, 26, 34, 43] as const;

/** Number of grounds, paper among them. */
export const TONES = STEPS_MM.length + 1;

/** Depth at which a ground begins, mm. */
export const TONE_STARTS_MM: readonly number[] = [0, ...STEPS_MM];

/** Which ground a week's gross depth of water stands on: 0 is paper, `TONES - 1` the deepest. */
export function toneOf(depthMm: number): number {
  let tone = 0;
  while (tone < STEPS_MM.length && depthMm >= (STEPS_MM[tone] as number)) tone++;
  return tone;
}
