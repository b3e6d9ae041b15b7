import type { SeasonSpan } from '../../engine/garden.ts';
import { chartWords } from '../../language/en/chart.ts';
import { formatFor } from '../../language/format/format.ts';
import type { Reader } from '../../language/reader.ts';
import type { Finding } from './finding.ts';

/** Below this share of the irrigation the rain is not what the season is about. */
const LEAST_RAIN_SHARE = 0.02;

/** The chart's title: what it shows, said in words. */
export function findingWords(finding: Finding, span: SeasonSpan, reader: Reader): string {
  const say = chartWords(reader.language).finding;
  const format = formatFor(reader);
  switch (finding.kind) {
    case 'no-climate':
      return say.noClimate;
    case 'nothing-grows':
      return say.nothingGrows;
    case 'met': {
      const { rainLitres, irrigationLitres, unmetLitres } = finding;
      return rainLitres >= irrigationLitres * LEAST_RAIN_SHARE
        ? say.metWithRain(format, unmetLitres, rainLitres)
        : say.metWithIrrigation(format, unmetLitres, irrigationLitres);
    }
    case 'short': {
      const { litres, firstWeek, lastWeek } = finding;
      const first = span.firstDay + 7 * firstWeek;
      if (lastWeek === span.weeks - 1 && firstWeek < lastWeek) return say.shortFrom(format, litres, first);
      if (firstWeek === lastWeek) return say.shortInWeek(format, litres, first);
      return say.shortBetween(format, litres, first, span.firstDay + 7 * lastWeek + 6);
    }
  }
}
