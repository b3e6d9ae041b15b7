/** Weeks that a key moves by; the ends of the season for Home and End. */
const STEPS: Readonly<Record<string, number>> = {
  ArrowLeft: -1,
  ArrowDown: -1,
  ArrowRight: 1,
  ArrowUp: 1,
  PageDown: -4,
  PageUp: 4,
  Home: Number.NEGATIVE_INFINITY,
  End: Number.POSITIVE_INFINITY,
};

/** The week that a key moves to from `week` (undefined = none yet, which stands at the end); undefined for other keys. */
export function weekAfterKey(key: string, week: number | undefined, weeks: number): number | undefined {
  const step = STEPS[key];
  if (step === undefined) return undefined;
  return Math.min(Math.max((week ?? weeks) + step, 0), weeks - 1);
}
