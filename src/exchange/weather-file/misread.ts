/** Single figures are misread or misprinted: more than this share of them, and more than two, say that the unit is another. */
const MOST_MISREAD_SHARE = 0.01;
const MOST_MISREAD = 2;

/** Whether so few of a reading's figures are beyond what is physically possible that each is a misprint. */
export function areMisprints(beyond: number, figures: number): boolean {
  return beyond <= Math.max(MOST_MISREAD, MOST_MISREAD_SHARE * figures);
}
