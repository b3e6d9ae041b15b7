/** What the forms of the garden's place say: its site, its climate by month, its water supply. Trade facts are common practice, no source, unless one is named. */
import { NOMINAL_PRESSURE_KPA } from '../../engine/line/usual-pressures.data.ts';
import { area } from '../area.ts';
import type { Format } from '../format/format.ts';

export const gardenPlace = {
  site: {
    latitude: {
      label: 'Latitude',
      unit: '°',
      help: 'Degrees north of the equator; put a minus in front for the south. It says how high the sun stands where ETo comes from temperatures.',
    },
    elevation: { label: 'Elevation' },
    soil: {
      label: 'Soil',
      help: 'Squeeze a moist handful. Falls apart: sandy. Holds a ball but makes no ribbon: loam. Presses into a long ribbon: clay.',
    },
    slopePercent: {
      label: 'Slope',
      unit: '%',
      help: 'Rise over 100 of length. On steep or heavy ground water runs off sooner, so runs are split.',
    },
    windHeight: {
      label: 'Height of the wind gauge',
      help: ({ quantity }: Format) =>
        `Above the ground. Wind is converted to ${quantity(2, 'height')}, the height that reference ET is defined for.`,
    },
    missingWeather: {
      label: 'When only temperatures are known',
      help: 'How reference ET is computed on days without humidity, wind or sunshine (FAO-56 chapter 3).',
      options: {
        'hargreaves-samani': 'Hargreaves-Samani',
        'penman-monteith': 'Penman-Monteith, the rest estimated',
      },
    },
    setting: {
      label: 'Where the garden lies',
      help: 'Beside a large water the same swing of temperature means more sun (FAO-56 eq. 50).',
      options: { interior: 'Inland', coastal: 'On a coast' },
    },
  },
  /** 0 is what a new plan begins with. */
  onEquator: (help: string) => `0 is the equator: enter your own. ${help}`,
  rain: {
    method: {
      label: 'How rain is counted',
      help: 'For usual rain. Days from a rain gauge are followed one by one, whatever is chosen here.',
      /** By the names that their publishers gave them. */
      options: {
        tr21: 'USDA SCS, TR-21',
        fao: 'FAO Training Manual 3',
        'scs-simplified': 'USDA SCS, simplified',
        fraction: 'a fixed share',
        balance: 'what each soil keeps',
      },
    },
    fraction: { label: 'Share of rain counted', unit: '0–1' },
  },
  station: 'Weather station',
  climate: {
    table: {
      label: 'Use a published table',
      empty: 'Choose a place…',
    },
    kind: {
      label: 'Figures by month',
      options: { eto: 'Reference ET (ETo) and rain', temperature: 'Temperatures and rain' },
      help: 'Reference ET (ETo) is the water that a well-watered lawn would use: the measure for everything else.',
    },
    source: { label: 'Source of these figures' },
    noClimate: 'Fill in these months first: without them no water can be planned.',
    noRain: 'No rain is entered. The published tables have none: type or paste that of a station nearby.',
    month: 'Month',
    columns: {
      eto: 'ETo',
      rain: 'Rain',
      minTemperature: 'Lowest temperature',
      maxTemperature: 'Highest temperature',
    },
    columnIn: (column: string, unit: string) => `${column} (${unit})`,
    monthOf: (column: string, month: string) => `${column}, ${month}`,
    pasteHelp: 'Paste a column of twelve numbers into its first field.',
  },
  supply: {
    source: ({ number }: Format, index: number) => `Source ${number(index + 1)}`,
    addSource: 'Add a source',
    folds: {
      pressure: 'Pressure, a barrel, share of the bucket test',
      limits: 'Restrictions, weeks with less water, allowance',
      more: 'Tank, price, salty water',
    },
    name: { label: 'Name' },
    from: { label: 'From', help: 'Leave it empty for the season’s first day.' },
    flowKind: {
      label: 'The flow is',
      options: { unknown: 'not known yet', typed: 'known', bucket: 'from a bucket test' },
    },
    flow: { label: 'Flow' },
    volume: {
      label: 'Bucket size',
      help: 'Open the faucet fully, hold a bucket of known size under it, and time how long it takes to fill.',
    },
    seconds: { label: 'Time to fill it', unit: 'seconds' },
    share: {
      label: 'Share to plan on',
      unit: '0–1',
      help: 'An open bucket takes more than the lines will get: plan on less.',
    },
    /** Flow of the test in L/min; the share of it that is planned on. */
    bucketGives: ({ quantity, percent }: Format, flowLpm: number, share: number) =>
      `The bucket took ${quantity(flowLpm, 'supplyFlow')}; the plan counts on ${percent(share)} of it: ${quantity(flowLpm * share, 'supplyFlow')}.`,
    pressure: {
      label: 'Pressure while water runs',
      help: ({ quantity }: Format) =>
        `At the line, after any regulator: read a gauge there while water runs. Leave it empty to use the usual ${quantity(NOMINAL_PRESSURE_KPA, 'pressure')} behind a regulator.`,
    },
    waterHeight: {
      label: 'Height of the water above the beds',
      help: 'For a barrel, in place of a pressure: from the beds up to the surface of the water.',
    },
    hoursPerDay: {
      label: 'Watering window: hours a day',
      unit: 'hours',
      empty: 'all day',
      help: 'When water may run. Check local watering restrictions first; then the hours that your neighbors and the sun leave you.',
    },
    opensAt: {
      label: 'Watering window: opens at',
      help: 'Start times are counted from here. Early morning loses least to sun and wind.',
    },
    weekdays: { label: 'Watering window: days' },
    restrictions: {
      title: 'Watering restrictions',
      help: 'What your water supplier or town allows. Their rules come first: water runs on these days only, whatever a zone is set to.',
      add: 'Add a restriction',
      unnamed: ({ number }: Format, index: number) => `Restriction ${number(index + 1)}`,
    },
    restriction: {
      name: { label: 'Name' },
      from: { label: 'From', help: 'Leave it empty if it is in force already.' },
      to: { label: 'To', help: 'Leave it empty if no end is named.' },
      hoursPerDay: { label: 'Hours a day', unit: 'hours', empty: 'as the watering window' },
      weekdays: { label: 'Water may run on' },
    },
    cuts: {
      title: 'Weeks with less water',
      help: 'For a drought: zones give up water in their order, the last in line first. What then falls short is shown.',
      add: 'Add weeks with less water',
      unnamed: ({ number }: Format, index: number) => `Less water ${number(index + 1)}`,
    },
    cut: {
      from: { label: 'From', help: 'Every week that begins from here to the last day.' },
      to: { label: 'To' },
      kind: {
        label: 'Water is cut',
        options: { share: 'by a share of what was computed', perWeek: 'to so much a week' },
      },
      share: { label: 'Share taken away', unit: '0–1' },
      perWeek: { label: 'Water for a week' },
    },
    perWeek: { label: 'Allowance for a week', empty: 'no limit' },
    perSeason: { label: 'Allowance for the season', empty: 'no limit' },
    perArea: {
      label: 'The same by area',
      empty: 'no limit',
      help: 'For all ground that is planted at the same time. If both are filled in, the lower one counts.',
    },
    price: { label: 'Water has a price', help: 'Then changes are compared in money too.' },
    amount: { label: 'Price' },
    per: { label: 'For', help: 'The water that it pays for.' },
    currency: { label: 'Currency', help: 'Three letters, as USD.' },
    tank: {
      label: 'There is a rain tank',
      help: 'Tank water is not for drinking. Mark its faucets, and keep its pipes apart from the drinking water.',
    },
    capacity: { label: 'Tank capacity' },
    start: { label: 'Level at the start' },
    roofArea: { label: 'Roof area that feeds it', empty: 'none' },
    runoffCoefficient: {
      label: 'Runoff coefficient',
      unit: '0–1',
      help: 'Share of the roof’s rain that reaches the tank.',
    },
  },
};

export const gardenPlaceWords = area('gardenPlace', gardenPlace, {
  supply: {
    tank: {
      help: 'Tank water is not for drinking. Mark its taps, and keep its pipes apart from the drinking water.',
    },
    volume: {
      help: 'Open the tap fully, hold a bucket of known size under it, and time how long it takes to fill.',
    },
    hoursPerDay: {
      help: 'When water may run. Check local watering restrictions first; then the hours that your neighbours and the sun leave you.',
    },
  },
});
