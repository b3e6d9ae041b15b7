import { WIDEST_EMITTER_SPACING_M } from '../../../engine/line/emitter-spacing.data.ts';
import type { Season } from '../../../engine/season/season.ts';
import { lineSpans, placeOfLine } from '../line-spans.ts';
import type { FoundNotice } from '../notice.ts';

/** Sizes of the trade are rounded to whole inches or centimetres: 18 in is sold as 46 cm. */
const ROUNDING_M = 0.01;

/**
 * Dripline whose emitters stand too far apart for what they wet to join in this soil: one notice each
 * (`WIDEST_EMITTER_SPACING_M`: common practice, no source).
 */
export function emittersFarApart(season: Season): readonly FoundNotice<'emitters-far-apart'>[] {
  return lineSpans(season).flatMap((spans): readonly FoundNotice<'emitters-far-apart'>[] => {
    const [span] = spans;
    const spacingM = span?.line.spacingM;
    if (span === undefined || span.line.kind !== 'dripline' || spacingM === undefined) return [];
    const widestSpacingM = WIDEST_EMITTER_SPACING_M[span.zone.zone.soil.texture];
    if (spacingM <= widestSpacingM + ROUNDING_M) return [];
    return [
      {
        kind: 'emitters-far-apart',
        ...placeOfLine(spans),
        figures: { spacingM, widestSpacingM },
      },
    ];
  });
}
