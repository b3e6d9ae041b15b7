/** A day of ground of which lines wet a part, in the bare loop: what they wet and the rest, mm over the ground of each. */

/** What is missing of each at the end of the day, below 0 what drains; and what both gave, over all of the ground. */
export const WETTED = 0;
export const DRY = 1;
export const USED = 2;
export const storesEnd = new Float64Array(3);

/** `water` is over the wetted ground; `isAlone`: roots are in that alone. */
export function runStores(
  share: number,
  need: number,
  allowed: number,
  taw: number,
  wetted: number,
  dry: number,
  soaked: number,
  water: number,
  isAlone: boolean,
): void {
  const rest = 1 - share;
  const wetter = wetted - soaked - water;
  const soakedDry = dry - soaked;
  let ofWetted = 0;
  let ofDry = 0;
  if (isAlone || rest === 0) {
    ofWetted = Math.min((stress(wetter, allowed, taw) * need) / share, taw - wetter);
  } else {
    const readyDry = ready(soakedDry, allowed);
    ofWetted = Math.min(ready(wetter, allowed), (need - rest * Math.min(need, readyDry)) / share);
    ofDry = Math.min(readyDry, (need - share * ofWetted) / rest);
    const lacking = need - share * ofWetted - rest * ofDry;
    if (lacking > 0) {
      ofWetted = Math.min(ofWetted + lacking * stress(wetter, allowed, taw), taw - wetter);
      ofDry = Math.min(ofDry + lacking * stress(soakedDry, allowed, taw), taw - soakedDry);
    }
  }
  storesEnd[WETTED] = wetter + ofWetted;
  storesEnd[DRY] = soakedDry + ofDry;
  storesEnd[USED] = share * ofWetted + rest * ofDry;
}

/** Readily available water of a day, after what it brought. */
export function ready(depletion: number, allowed: number): number {
  return Math.max(0, allowed - depletion);
}

function stress(depletion: number, allowed: number, taw: number): number {
  if (depletion <= allowed) return 1;
  return depletion < taw ? (taw - depletion) / (taw - allowed) : 0;
}

/** What the wetted ground is to give where the rest gives so much. */
export function drawn(share: number, need: number, ofDry: number): number {
  return need + ((1 - share) / share) * (need - ofDry);
}
