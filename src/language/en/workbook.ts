/** All that a season's workbook says. */
import { area } from '../area.ts';
import type { Format } from '../format/format.ts';

export const workbook = {
  /** Name of the file; `plan`: that of the plan's own. */
  file: (plan: string) => `${plan}-season.xlsx`,
  /** Names of the sheets, at most 31 letters each. */
  sheets: {
    season: 'Season',
    weather: 'Weather',
    plantings: 'Plantings',
    supply: 'Supply',
    runs: 'Run times',
    explained: 'How it was computed',
  },
  headings: { change: 'Change it?', byDay: 'Computed by day', difference: 'Difference' },
  change: 'yes',
  allZones: 'All zones',
  /** What stands in the rows, beside what the table of everything has. */
  rows: {
    area: 'Area',
    efficiency: 'Irrigation efficiency',
    coefficient: 'Use against reference ET',
    rainShare: 'Share of rain that counts',
    fromSoil: 'Taken from the soil',
    flow: 'Flow while it runs',
    gross: 'Needed at the meter',
    minutesNeeded: 'Time needed',
    days: 'Watering days',
    runs: 'Runs',
    cycles: 'Cycles a day',
  },
  supply: {
    week: 'Week from',
    share: 'Share of irrigation kept',
    stays: 'Irrigation kept',
    supplied: 'Supply so far',
    demand: 'Demand so far',
    ahead: 'Supply less demand',
    cost: 'Cost',
    tank: 'In the tank at the end',
    total: 'Season',
    unit: (heading: string, unit: string) => `${heading} (${unit})`,
    byDay: (heading: string) => `${heading}, computed by day`,
    price: { us: 'Price of 1,000 gal', metric: 'Price of 1,000 L' },
    source: (name: string) => `${name}: flow`,
    pressure: (name: string) => `${name}: pressure`,
    window: 'Watering window, hours a day',
    perWeek: 'Allowance of a week',
    perSeason: 'Allowance of the season',
    left: 'Left of the season’s allowance',
    capacity: 'Tank holds',
    chart: 'Supply and demand since the season began',
  },
  runs: {
    week: 'Week number',
    from: 'Week from',
    choose: 'Type another week’s number in the marked cell.',
    eachDay: 'Minutes each day',
    allWeeks: 'All weeks',
  },
  explained: {
    title: (plan: string) => `How the season of “${plan}” was computed`,
    marked: 'Change what stands on a yellow ground with an edge: the rest of the workbook follows.',
    slanted:
      'Slanted figures come from the plan’s own calculation, day by day. They stay as they are when you change something here.',
    weatherTitle: 'What you may change',
    weather: 'On Weather: the rain and the reference ET of each week.',
    minutes: 'On Season: the minutes that each zone runs in each week.',
    area: 'On Plantings: the area of each planting.',
    price: 'On Supply: the price of water. Type it, and the cost follows.',
    stepsTitle: 'The formulas of a week',
    use: {
      us: 'Water that the plants use = use against reference ET × reference ET × area. An inch of water on a square foot is 144/231 gal.',
      metric:
        'Water that the plants use = use against reference ET × reference ET × area. A millimeter of water on a square meter is 1 L.',
    },
    rain: 'Rain counted = rain × its share that counts × area. The share is what the roots kept of that week’s rain.',
    needed:
      'Needed at the roots = water that the plants use, less rain counted, less what is taken from the soil. It is never below 0.',
    gross:
      'Needed at the meter = needed at the roots ÷ irrigation efficiency. Time needed = needed at the meter ÷ flow while it runs.',
    zone: 'A zone’s time needed follows its rule: the thirstiest planting, the mean by flow, or the planting that you named. Plantings behind a shut-off count where there is no other.',
    apply:
      'Water to apply = minutes to run × flow while it runs. It follows the minutes that stand there, not the time needed.',
    supply:
      'Supply so far = rain counted and irrigation kept, added up. Demand so far = water that the plants use, added up.',
    differenceTitle: 'Why a week’s sum differs from the days’',
    difference: [
      'The plan looks at every day. Rain that falls on wet soil drains away; the same rain a day later would have stayed. A week’s sum does not know the day.',
      'Soil holds water from one week for the next. What is taken from the soil stands here as the daily calculation found it. With other rain the soil would give more or less, and only the plan itself can say how much.',
      'A plan runs whole steps of the timer on its watering days, and skips a day that asks for too little. A week’s sum gives fractions of a minute.',
      'So use this workbook to see what a change does, roughly. Then make the change in the plan, and save a new workbook.',
    ],
    sourcesTitle: 'Sources',
    sources: [
      'Allen, Pereira, Raes and Smith (1998), Crop evapotranspiration, FAO Irrigation and Drainage Paper 56: coefficients, reference ET, and the daily balance of the root zone (equation 85).',
      'Costello, Matheny and Clark (2000), A Guide to Estimating Irrigation Water Needs of Landscape Plantings in California: the landscape coefficient.',
    ],
    cautionsTitle: 'Before you dig, connect or rely on this',
    written: ({ day }: Format, today: number) => `Written ${day(today, 'full')}.`,
  },
};

export const workbookWords = area('workbook', workbook, {
  supply: { price: { metric: 'Price of 1,000 L' } },
  explained: {
    use: {
      metric:
        'Water that the plants use = use against reference ET × reference ET × area. A millimetre of water on a square metre is 1 L.',
    },
  },
});
