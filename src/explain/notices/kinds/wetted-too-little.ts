import { emitterWidthsM } from '../../../engine/line/wetted-share.ts';
import type { Season } from '../../../engine/season/season.ts';
import { eachPlanting, placeOf } from '../each-planting.ts';
import type { FoundNotice } from '../notice.ts';

/** Of the roots' ground under a crown (Utah State University Extension, Drip irrigation for trees). */
const WANTED_UNDER_CROWNS = 0.5;

/** Of a bed: emitters, and so rows, stand at most 0.8 of what they wet apart to join (USDA-NRCS NEH 623 ch. 7; from memory). */
const WANTED_IN_BEDS = 0.8;

/** Plantings of whose ground the lines wet too little, by what is computed of them: one notice each. A share that is typed is taken as it is. */
export function wettedTooLittle(season: Season): readonly FoundNotice<'wetted-too-little'>[] {
  return eachPlanting(season, (zone, own) => {
    const { wettedShare = 1, isShareTyped, plants } = own.planting;
    const wantedShare = plants === undefined ? WANTED_IN_BEDS : WANTED_UNDER_CROWNS;
    if (isShareTyped === true || wettedShare >= wantedShare) return [];
    const widthM = Math.max(0, ...emitterWidthsM(own.planting, zone.zone.soil.texture));
    if (widthM === 0) return [];
    const isOfRows = plants === undefined && own.planting.lines.some(({ kind }) => kind === 'dripline');
    return [
      {
        kind: 'wetted-too-little',
        ...placeOf(zone, own),
        figures: { wettedShare, wantedShare, widthM, ...(isOfRows ? { apartM: widthM / wettedShare } : {}) },
      },
    ];
  });
}
