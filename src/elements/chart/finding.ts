import type { SeasonSpan } from '../../engine/garden.ts';
import type { Cumulative } from '../../engine/season/cumulative.ts';
import { chartWords } from '../../language/en/chart.ts';
import { formatFor } from '../../language/format/format.ts';
import { isolated } from '../../language/format/isolated.ts';
import type { Reader } from '../../language/reader.ts';

/** What the chart has to say before anyone reads it. Weeks are of the season, from 0. */
export type Finding =
  | { readonly kind: 'nothing-grows' }
  /** No reference ET is given: nothing is known of the demand. */
  | { readonly kind: 'no-climate' }
  | {
      readonly kind: 'met';
      readonly rainLitres: number;
      readonly irrigationLitres: number;
      /** What is missing all the same, too little of the whole to be the finding; 0 for nothing. */
      readonly unmetLitres: number;
    }
  | { readonly kind: 'short'; readonly litres: number; readonly firstWeek: number; readonly lastWeek: number };

/** Less than this in a week is rounding, not a shortfall. */
const LEAST_LITRES = 0.5;

/** A shortfall below this share of the demand is told beside the finding. */
const LEAST_SHARE = 0.005;

/** Reads the running totals of a whole season. `hasClimate`: whether reference ET is known of any of its weeks. */
export function findingOf(totals: Cumulative, hasClimate = true): Finding {
  const { weeks, rain, irrigation, demand, unmet, firstShortWeek } = totals;
  const end = weeks - 1;
  const at = (running: Float64Array, week: number) => running[week] ?? 0;
  if (!hasClimate) return { kind: 'no-climate' };
  if (at(demand, end) < LEAST_LITRES) return { kind: 'nothing-grows' };
  const litres = firstShortWeek < 0 ? 0 : at(unmet, end);
  if (litres < LEAST_SHARE * at(demand, end)) {
    return { kind: 'met', rainLitres: at(rain, end), irrigationLitres: at(irrigation, end), unmetLitres: litres };
  }
  let lastWeek = end;
  while (lastWeek > firstShortWeek && at(unmet, lastWeek) - at(unmet, lastWeek - 1) < LEAST_LITRES) lastWeek--;
  return { kind: 'short', litres, firstWeek: firstShortWeek, lastWeek };
}

/** Below this share of the irrigation the rain is not what the season is about. */
const LEAST_RAIN_SHARE = 0.02;

/** The same as the chart's title. `zone`: the name of the one that nearly all of the lack is in. */
export function findingWords(finding: Finding, span: SeasonSpan, reader: Reader, zone?: string): string {
  const say = chartWords(reader.language).finding;
  const format = formatFor(reader);
  const where = zone === undefined ? '' : say.nearlyAllIn(isolated(zone));
  switch (finding.kind) {
    case 'no-climate':
      return say.noClimate;
    case 'nothing-grows':
      return say.nothingGrows;
    case 'met': {
      const { rainLitres, irrigationLitres, unmetLitres } = finding;
      return rainLitres >= irrigationLitres * LEAST_RAIN_SHARE
        ? say.metWithRain(format, unmetLitres, rainLitres, where)
        : say.metWithIrrigation(format, unmetLitres, irrigationLitres, where);
    }
    case 'short': {
      const { litres, firstWeek, lastWeek } = finding;
      const first = span.firstDay + 7 * firstWeek;
      if (lastWeek === span.weeks - 1 && firstWeek < lastWeek) return say.shortFrom(format, litres, first, where);
      if (firstWeek === lastWeek) return say.shortInWeek(format, litres, first, where);
      return say.shortBetween(format, litres, first, span.firstDay + 7 * lastWeek + 6, where);
    }
  }
}
