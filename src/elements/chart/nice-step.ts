/** The least of 1, 2 and 5 times a power of ten that is no less than `least`: a step of a scale that reads well. */
export function niceStep(least: number): number {
  const power = 10 ** Math.floor(Math.log10(least));
  const times = [1, 2, 5, 10].find((each) => each * power >= least) ?? 10;
  return times * power;
}
