import type { Season } from '../../../engine/season/season.ts';
import { lineSpans, placeOfLine } from '../line-spans.ts';
import type { FoundNotice } from '../notice.ts';

/**
 * Lines on the downhill side of their plants: one notice each. On a slope the line lies on the uphill side, for on the
 * other its water runs away from the roots (common practice, no source).
 */
export function lineDownhill(season: Season): readonly FoundNotice<'line-downhill'>[] {
  return lineSpans(season).flatMap((spans): readonly FoundNotice<'line-downhill'>[] => {
    const [span] = spans;
    if (span === undefined || span.line.slopeSide !== 'downhill') return [];
    return [
      {
        kind: 'line-downhill',
        ...placeOfLine(spans),
        figures: { slopePercent: span.zone.zone.soil.slopePercent },
      },
    ];
  });
}
