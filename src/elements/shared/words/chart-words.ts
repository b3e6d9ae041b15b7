/** All that the chart says. */
import type { SeasonSpan } from '../../../engine/garden.ts';
import { formatDay, formatWeek } from '../../../language/format/dates.ts';
import { formatQuantity, type Reading } from '../../../language/format/quantity.ts';
import type { Finding } from '../../chart/finding.ts';

export const chartWords = {
  names: {
    demand: 'Demand',
    short: 'Short',
    fromSoil: 'From the soil',
    irrigation: 'Irrigation',
    rain: 'Rain counted',
    tank: 'In the tank',
    allowance: 'Allowance used',
    'weekly-allowance': 'Used in the week',
  },
  atRoots: (gross: string) =>
    `Rain and irrigation count here as far as they stayed at the roots. The meter shows ${gross} of irrigation by then.`,
  about: 'Running totals: rain and irrigation that stayed at the roots, against what the plants would use.',
  whose: 'Water of',
  wholeGarden: 'Whole garden',
  noZone: 'Selected zone',
  table: 'The same figures as a table',
  week: 'Week',
  tableCaption: (unit: string) => `Running totals at the end of each week, in ${unit}`,
  selectWeek: (week: string) => `Select week ${week}`,
  readWeeks: 'Weeks of the season: arrow keys move from week to week',
  byWeek: (week: string) => `By the end of ${week}`,
  bySeasonEnd: (day: string) => `By the season’s end, ${day}`,
} as const;

/** The chart's title: what it shows, said in words. */
export function findingWords(finding: Finding, span: SeasonSpan, reading: Reading): string {
  const gallons = (litres: number) => formatQuantity(litres, 'volume', reading);
  switch (finding.kind) {
    case 'no-climate':
      return 'Not known yet: the climate is not filled in';
    case 'nothing-grows':
      return 'Nothing needs water this season';
    case 'met': {
      const { rainLitres, irrigationLitres, unmetLitres } = finding;
      const met = unmetLitres === 0 ? 'Demand is met all season' : `Demand is met but for ${gallons(unmetLitres)}`;
      return rainLitres >= irrigationLitres * LEAST_RAIN_SHARE
        ? `${met}; ${gallons(rainLitres)} of rain counted`
        : `${met}, with ${gallons(irrigationLitres)} of irrigation at the roots`;
    }
    case 'short':
      return `Short by ${gallons(finding.litres)} ${shortWhen(finding, span, reading.locale)}`;
  }
}

/** Below this share of the irrigation the rain is not what the season is about. */
const LEAST_RAIN_SHARE = 0.02;

function shortWhen(
  { firstWeek, lastWeek }: { readonly firstWeek: number; readonly lastWeek: number },
  { firstDay, weeks }: SeasonSpan,
  locale: string,
): string {
  const first = firstDay + 7 * firstWeek;
  if (lastWeek === weeks - 1 && firstWeek < lastWeek) return `from ${formatDay(first, locale)}`;
  if (firstWeek === lastWeek) return `in the week of ${formatWeek(first, locale)}`;
  return `between ${formatDay(first, locale)} and ${formatDay(firstDay + 7 * lastWeek + 6, locale)}`;
}
