/** All that the weather's element says: the place, its climate by month, a weather service, files of weather offices. */
import type { RecordReading } from '../../engine/record/daily-record.ts';
import { area } from '../area.ts';
import type { Format } from '../format/format.ts';

const DAYS = { one: 'day', other: 'days' } as const;
const YEARS = { one: 'year', other: 'years' } as const;

const READINGS: Readonly<Record<RecordReading, string>> = {
  rainMm: 'rain',
  etoMm: 'reference ET',
  minTemperatureC: 'lows',
  maxTemperatureC: 'highs',
  dewPointC: 'dew point',
  maxHumidityPercent: 'highest humidity',
  minHumidityPercent: 'lowest humidity',
  meanHumidityPercent: 'humidity',
  windMs: 'wind',
  radiationMj: 'sun',
  sunshineHours: 'hours of sun',
};

export const weather = {
  title: 'Weather',
  place: {
    title: 'Place',
    search: { label: 'Find your town', help: 'Type the beginning of its name. Nothing leaves this page.' },
    none: 'No place of this name is in the list. Try a larger town nearby, or fill in the fields below.',
    /** Where one was typed, and none was picked. */
    unpicked: (typed: string) =>
      `“${typed}” is typed, but no place is picked yet. Pick one from the list, or type latitude and climate yourself.`,
    notFetched: 'The list of places did not come. Check your connection, then type again.',
    found: 'Places',
    /** `where`: state and country. */
    choice: (name: string, where: string) => `${name}, ${where}`,
    state: (state: string, country: string) => `${state}, ${country}`,
    /** Their source and its licence follow. */
    credit: 'Places from',
    source: 'GeoNames',
    licence: 'CC BY 4.0',
    here: 'Use where I am',
    hereFailed: 'Your browser did not say where you are. Find your town.',
    place: { label: 'Name of the place', empty: 'not given' },
    latitude: { label: 'Latitude', unit: '°', help: 'North of the equator; a minus in front for the south.' },
    longitude: {
      label: 'Longitude',
      unit: '°',
      help: 'East of Greenwich; a minus in front for the west.',
      empty: 'not given',
    },
    elevation: { label: 'Height above sea level' },
    timeZone: { label: 'Time zone', empty: 'not given' },
  },
  /** Published tables of reference ET, by how near their places are. */
  tables: {
    placeFirst: 'Name your place first: then the nearest stand on top.',
    nearFirst: 'Nearest first. These tables have no rain.',
    noneNear: ({ distance }: Format, nearest: string, km: number) =>
      `None is near: ${nearest}, the nearest, is ${distance(km)} away. What you take from there is shown as assumed. Better: a service, a file, or figures of your own.`,
    near: 'Near your place',
    far: 'Of other places',
    regions: 'By California’s own zones',
    away: ({ distance }: Format, name: string, km: number) => `${name}, ${distance(km)} away`,
    /** Beside the source of figures that were taken from afar. */
    ofOtherPlace: ({ distance }: Format, source: string, km: number) => `${source}; of a place ${distance(km)} away`,
  },
  climate: {
    title: 'Climate by month',
    /** The picture in a sentence. */
    finding: ({ month, quantity }: Format, driest: number, etoMm: number, rainMm: number) =>
      `${month(driest)} needs most: a lawn would use ${quantity(etoMm, 'depth')}, and ${quantity(rainMm, 'depth')} of rain falls.`,
    /** In place of the picture, where every figure is 0. */
    none: 'No climate yet. Get it from a weather service or a file above, or fill in the figures below.',
    eto: 'Reference ET (ETo)',
    rain: 'Rain',
    season: 'months of the season',
    from: (source: string) => `From: ${source}`,
    noSource: 'not said where from',
    table: 'The figures by month',
    rainDays: 'Rain days',
    /** Of a column of temperatures: its unit follows. */
    lowest: 'Low',
    highest: 'High',
    threshold: {
      label: 'A rain day has at least',
      help: 'Weather offices count rain days from different amounts on. Enter the one of your source.',
    },
    pasteHelp: 'Paste twelve numbers, or a block of several columns, anywhere in the table: it begins in January.',
    lowAboveHigh: 'The low is above the high. Kept here until you enter the other one.',
  },
  years: {
    /** `source`: left out where it is that of the climate. */
    held: ({ count }: Format, years: number, source: string | undefined) =>
      `The plan holds ${count(years, YEARS)} of daily weather.${source === undefined ? '' : ` From: ${source}`}`,
    none: 'The plan holds no years of daily weather: years made from the figures by month stand in for them.',
    remove: 'Remove the years',
    title: 'Dry and wet years',
    compare: 'Compare the years',
    busy: 'Running the season over every year…',
    year: 'Year',
    rain: 'Rain',
    eto: 'ETo',
    water: 'Irrigation',
    rows: { wet: 'wet', middle: 'middle', dry: 'dry' },
    help: ({ count }: Format, years: number) =>
      `The season was run over ${count(years, YEARS)}, each with its own rain and ETo, ranked by the water that the garden needs; wet and dry are nearest to 1 of 10 (Weibull).`,
  },
  season: {
    title: 'Readings of this season',
    notBegun: ({ day }: Format, first: number) => `The season begins on ${day(first, 'full')}.`,
    counts: {
      rain: ({ list }: Format, parts: readonly string[]) => `Rain: ${list(parts)}.`,
      eto: ({ list }: Format, parts: readonly string[]) => `Reference ET: ${list(parts)}.`,
    },
    days: ({ count }: Format, days: number, from: string) => `${count(days, DAYS)} ${from}`,
    from: {
      typed: 'typed',
      week: 'in a typed total of the week',
      file: 'from a file',
      service: 'from the weather service',
      estimate: 'estimated over a gap',
      temperatures: 'from low and high',
      none: 'not read (usual weather stands in)',
    },
    /** `issued`: the day of the forecast. */
    ahead: ({ count, day }: Format, days: number, issued: number) =>
      `Forecast of ${day(issued)}: ${count(days, DAYS)} to come.`,
    help: 'What you type always wins: rain in “This week” or on the sheet. Figures from a service can be refreshed; typed ones stay.',
    table: 'Day by day',
    day: 'Day',
    rain: 'Rain',
    eto: 'ETo',
    lowHigh: (low: string, high: string) => `${low} to ${high}`,
    forecast: (from: string) => `forecast, ${from}`,
  },
  unusual: {
    title: 'A hot week, a dry month',
    about: 'Try weeks hotter or drier than usual. Days read or forecast stay; so does the plan until you keep it.',
    hot: 'A hot week',
    dry: 'A dry month',
    from: 'From the week of',
    weeks: 'Weeks',
    eto: 'ETo, % of usual',
    rain: 'Rain, % of usual',
    try: 'Try it',
    busy: 'Running the season…',
    tried: (what: string) => `Only tried: ${what}`,
    asIs: 'As it is',
    with: 'With it',
    rows: {
      water: 'Water',
      minutes: 'Run time',
      short: 'Days short',
      weeksOver: 'Weeks over the allowance',
      seasonOver: 'Season’s allowance',
      tank: 'Tank cannot give',
    },
    enough: 'enough',
    usedUp: ({ day }: Format, when: number) => `used up in the week of ${day(when)}`,
    keep: 'Plan with it',
    drop: 'Drop it',
    name: 'Name of this what-if',
    keepBeside: 'Keep beside the plan',
    kept: 'It is in the plan.',
    inPlan: 'The plan expects:',
    beside: 'Kept beside the plan:',
    show: 'Show',
    showLabel: (what: string) => `Show: ${what}`,
    remove: 'Take out',
    removeLabel: (what: string) => `Take out: ${what}`,
  },
  service: {
    title: 'From a weather service',
    noPlace: 'Find your town first, or fill in latitude and longitude.',
    /** What leaves the page. `where`: servers. */
    says: ({ number }: Format, latitudeDeg: number, longitudeDeg: number, where: string) =>
      `Sends latitude ${number(latitudeDeg, 2)} and longitude ${number(longitudeDeg, 2)} (rounded to 0.05°) to ${where} when you press, and nothing before.`,
    file: 'Get the file',
    fileSays: (where: string) => `Fetches a file from ${where} when you press. Nothing about your garden is sent.`,
    climate: 'Get climate and years',
    season: 'Get this season’s weather',
    model: 'A model on a grid of miles, not a gauge beside the bed. Your readings always win.',
    source: (host: string, first: number, last: number) => `${host}, daily weather ${first} to ${last}`,
    asking: 'Asking the weather service…',
    cancel: 'Cancel',
    gotClimate: ({ count }: Format, first: number, last: number, years: number) =>
      `Climate of ${first} to ${last} is in the plan, with ${count(years, YEARS)} of daily weather.`,
    filled: ({ count }: Format, days: number) => `${count(days, DAYS)} filled in.`,
    refreshed: ({ count }: Format, days: number) =>
      `Newer figures for ${count(days, DAYS)} that were filled in before.`,
    kept: ({ count }: Format, days: number) =>
      `Readings of ${count(days, DAYS)} that you typed or took from a file stay as they are.`,
    estimated: ({ count }: Format, days: number) => `On ${count(days, DAYS)} a gap is filled with an estimate.`,
    gotForecast: 'The forecast is in the plan.',
    nothingNew: 'Nothing new: it has no figures that the plan lacks.',
    missing: ({ count }: Format, days: number) => `No rain is known for ${count(days, DAYS)}: usual rain stands in.`,
    notStarted: 'The season has not begun; no forecast reaches it.',
    failed: {
      unreachable: 'The weather service cannot be reached. Check your connection; try again.',
      timeout: ({ count }: Format, seconds: number) =>
        `The weather service gave no answer in ${count(seconds, { one: 'second', other: 'seconds' })}. Try again later.`,
      tooMany: 'The weather service has been asked too often. Try again tomorrow.',
      tooManyUntil: ({ count }: Format, seconds: number) =>
        `The weather service has been asked too often. Try again in ${count(seconds, { one: 'second', other: 'seconds' })}.`,
      refused: (status: number, reason: string) =>
        `The weather service says no (${status})${reason === '' ? '.' : `: “${reason}”.`} Nothing was changed.`,
      tooLong: 'The answer is too long. Nothing was changed.',
      /** `what`: the part of the answer. */
      layout: (what: string) =>
        `The answer is not understood (“${what}”). Nothing was changed. Tell whoever runs this page.`,
      noDays: 'The answer has no days of weather. Nothing was changed.',
      hourly: 'The answer has hours, not days. Nothing was changed. Tell whoever runs this page.',
    },
  },
  file: {
    title: 'From a file',
    says: 'Days of a weather office, or your own log: NCEI, GHCN-Daily (.dly), Open-Meteo, or a table with a date, rain, low and high. You see what was understood before anything is taken.',
    choose: 'Choose a file…',
    drop: 'or drop it here',
    reading: 'Reading…',
    notRead: 'This file cannot be read. Choose one with daily weather.',
    kinds: {
      'open-meteo-json': 'an answer in the Open-Meteo layout',
      'open-meteo-csv': 'a table in the Open-Meteo layout',
      'ghcn-daily': 'a GHCN-Daily file',
      'ncei-access': 'an NCEI file (access layout)',
      'ncei-search': 'an NCEI file (search layout)',
      log: 'a table of days',
    },
    readAs: (kind: string) => `Read as ${kind}.`,
    at: (place: string) => `Measured at: ${place}.`,
    covers: ({ day, count, list }: Format, first: number, last: number, days: number, readings: readonly string[]) =>
      `${count(days, DAYS)}, ${day(first, 'full')} to ${day(last, 'full')}: ${list(readings)}.`,
    readings: READINGS,
    units: {
      us: '°F and inches',
      metric: '°C and millimeters',
      by: {
        layout: (units: string) => `Units: ${units}, as this layout always has.`,
        file: (units: string) => `Units: ${units}, as the file says.`,
        size: (units: string) => `Units: ${units}; the other ones are impossible.`,
        choice: (units: string) => `Units: ${units}, as you said.`,
      },
    },
    ask: {
      place: 'Which place?',
      units: 'The file does not name its units. Which are they?',
      decimal: 'How are decimals written?',
      days: 'How are days written?',
      choose: 'Choose…',
      decimals: { '.': 'with a point', ',': 'with a comma' },
      orders: { 'year-month-day': 'year first', 'day-month-year': 'day first', 'month-day-year': 'month first' },
    },
    leftOut: {
      flagged: ({ count }: Format, days: number, reading: string) =>
        `${reading}: left out on ${count(days, DAYS)}, since the office’s own check rejects them.`,
      impossible: ({ count }: Format, days: number, reading: string) =>
        `${reading}: left out on ${count(days, DAYS)}, since no place on earth has such figures.`,
      accumulated: ({ count }: Format, days: number, reading: string) =>
        `${reading}: sums of several days left out on ${count(days, DAYS)}.`,
      trace: ({ count }: Format, days: number, reading: string) =>
        `${reading}: too little to measure on ${count(days, DAYS)}, taken as 0.`,
      unread: ({ count }: Format, days: number, reading: string) =>
        `${reading}: no number on ${count(days, DAYS)}, left out.`,
      twice: ({ count }: Format, days: number, reading: string) =>
        `${reading}: given twice on ${count(days, DAYS)}; the first one counts.`,
      'high-below-low': ({ count }: Format, days: number) => `High below low on ${count(days, DAYS)}: both left out.`,
    },
    /** `first`, `last`: the longest gap. */
    gap: ({ count, days }: Format, reading: string, missing: number, first: number, last: number) =>
      `${reading}: missing on ${count(missing, DAYS)}; the longest gap is ${days(first, last, 'full')}.`,
    bridge: ({ count }: Format, most: number) =>
      `Fill gaps of up to ${count(most, DAYS)} in temperatures with a straight line. Missing rain stays missing.`,
    rows: ({ count }: Format, rows: number) => `${count(rows, { one: 'row', other: 'rows' })} could not be read.`,
    takeClimate: 'Use as climate and years',
    takeSeason: 'Fill in this season',
    noSeason: 'It has no days of this season that have passed.',
    noClimate: 'It has too little for a climate: each month of the year is needed.',
    close: 'Close',
    source: (name: string, first: number, last: number) => `${name}, daily weather ${first} to ${last}`,
    refused: {
      hourly: 'This file has hours, not days. Ask your source for daily values.',
      'no-days':
        'No day with rain, a low or a high was found in it. The first row of a table names its columns: date, rain, low, high.',
      service: (reason: string) => `The server says: “${reason}”`,
      layout: (what: string) => `It begins like such a file and then goes on otherwise: “${what}”`,
      /** `value`: a figure of the file. */
      'wrong-units': (reading: string, value: string) =>
        `Figures of ${reading} such as ${value} are impossible in these units. Nothing was taken: check the units.`,
    },
  },
  undo: 'Undo',
};

export const weatherWords = area('weather', weather, {
  file: { units: { metric: '°C and millimetres' } },
});
