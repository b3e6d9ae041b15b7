/** What the forms of zones, plantings and lines say. Trade facts are common practice, no source, unless one is named. */
import { area } from '../area.ts';
import type { Format } from '../format/format.ts';

const PLANTINGS = { one: 'planting', other: 'plantings' };

export const gardenZones = {
  /** Names of what is added; from then on they are the plan's own. */
  newZone: ({ number }: Format, index: number) => `Zone ${number(index + 1)}`,
  newPlanting: 'New planting',
  line: ({ number }: Format, index: number) => `Line ${number(index + 1)}`,
  addZone: 'Add a zone',
  addPlanting: 'Add a planting',
  addLine: 'Add a line beside these',
  addFirstLine: 'Add a line',
  noZones: 'No zones yet. A zone is one valve or timer station: everything in it runs together.',
  noPlantings: 'Nothing grows in it yet.',
  noPlantingsYet:
    'Nothing grows in it yet. Add a planting, or open one of another zone and choose where it says “Move to zone”.',
  noLines: 'No lines yet: only rain waters it.',
  /** Flow in L/min. */
  zoneSummary: ({ count, listed }: Format, plantings: number, flowLpm: number) =>
    `${count(plantings, PLANTINGS)}, ${listed(flowLpm, 'supplyFlow')} when all is open`,
  /** Beside the name of a planting that is folded. */
  plantingSummary: {
    /** `size`: as it is typed; flow in L/min. */
    flows: ({ listed }: Format, size: string, flowLpm: number) => `${size}, ${listed(flowLpm, 'supplyFlow')}`,
    assumed: ({ list }: Format, parts: readonly string[]) => `Assumed: ${list(parts)}`,
    parts: { need: 'water use', plantedOn: 'planting day', extent: 'size', lines: 'lines' },
    /** `first`: the planting at which it stands in full. */
    asAt: (first: string) => `The same as at ${first}.`,
    right: 'What is assumed is right',
  },
  /** Flow in L/h, rate in mm/h. */
  lineSummary: ({ quantity }: Format, flowLph: number, rateMmPerHour: number) =>
    `Gives ${quantity(flowLph, 'emitterFlow')}; application rate ${quantity(rateMmPerHour, 'rate')}.`,
  /** Lengths in m. */
  longestRun: ({ quantity }: Format, longestM: number, laidM: number) =>
    `One run of it may be ${quantity(longestM, 'length')} long; it is ${quantity(laidM, 'length')}.`,
  runTooLong: ({ quantity }: Format, longestM: number, laidM: number) =>
    `One run of it may be ${quantity(longestM, 'length')} long, and it is ${quantity(laidM, 'length')}: too long.`,

  zone: {
    name: {
      label: 'Zone name',
      help: 'One valve or timer station: everything in it runs together, for the same minutes.',
    },
    wateringDays: { label: 'Watering days a week' },
    isFixed: { label: 'On fixed weekdays' },
    weekdays: { label: 'It waters on' },
    daysByMonth: {
      none: 'Other watering days in some months',
      /** 0 = January. */
      some: ({ list, month }: Format, months: readonly number[]) => `Other watering days in ${list(months.map(month))}`,
      help: 'So many days a week in that month. Leave a month empty to water as in the rest of the season.',
      of: (month: string) => `Days a week, ${month}`,
      asAlways: 'as always',
    },
    rule: {
      label: 'Minutes are set by',
      options: { thirstiest: 'the thirstiest planting', 'area-weighted': 'all plantings, by area' },
    },
    folds: {
      timer: 'What the timer can do with it',
      ground: 'Soil, slope and efficiency of this zone',
      cut: 'When water is cut; note',
    },
    /** A planting by its name. */
    ruledBy: (planting: string) => `${planting} alone`,
    timerStepMinutes: {
      label: 'Timer step',
      unit: 'min',
      help: 'Smallest step that the timer can be set in. Minutes are rounded up to it.',
    },
    longestCycleMinutes: {
      label: 'Longest cycle',
      unit: 'min',
      empty: 'from the soil',
      help: 'Longest run before a pause. Where water comes faster than the soil takes it, a run is cut into cycles with time to soak.',
    },
    startsADay: {
      label: 'Starts a day',
      help: 'How many times a day the timer can start this zone: a day’s run has at most so many cycles.',
    },
    soil: { label: 'Soil of this zone', empty: 'as the garden' },
    slopePercent: { label: 'Slope of this zone', unit: '%', empty: 'as the garden' },
    application: {
      label: 'Irrigation efficiency',
      options: {
        efficiency: 'efficiency is known',
        'distribution-uniformity': 'distribution uniformity is known',
        computed: 'computed from the lines',
      },
    },
    cutOrder: {
      label: 'Place in line when water is cut',
      empty: 'its place in the list',
      help: '1 keeps its water longest. The last in line gives up water first.',
    },
    cutExempt: { label: 'Keeps its water when water is cut' },
    /** The usual share with drip. */
    usualApplication: ({ number }: Format, share: number) => `as usual (drip: ${number(share, 2)})`,
    share: {
      efficiency: { label: 'Efficiency', unit: '0–1' },
      'distribution-uniformity': { label: 'Distribution uniformity', unit: '0–1' },
    },
    note: { label: 'Note' },
  },

  planting: {
    name: { label: 'Planting name' },
    needKind: {
      label: 'Water need by',
      options: { class: 'water-use class', type: 'plant type', crop: 'crop and planting day' },
    },
    class: {
      label: 'Water-use class',
      help: ({ number }: Format) =>
        `Very low: under ${number(0.1, 1)} of reference ET; low: ${number(0.1, 1)} to ${number(0.3, 1)}; moderate: ${number(0.4, 1)} to ${number(0.6, 1)}; high: ${number(0.7, 1)} to ${number(0.9, 1)} (WUCOLS).`,
    },
    type: { label: 'Plant type' },
    factor: { label: 'Plant factor', empty: 'as usual' },
    density: {
      label: 'Density factor',
      help: ({ number }: Format) =>
        `1 for an average planting; ${number(0.5, 1)} to ${number(0.9, 1)} for a sparse one, ${number(1.1, 1)} to ${number(1.3, 1)} for plants in layers.`,
    },
    microclimate: {
      label: 'Microclimate factor',
      help: ({ number }: Format) =>
        `1 in the open; ${number(0.5, 1)} to ${number(0.9, 1)} in shade and shelter, ${number(1.1, 1)} to ${number(1.4, 1)} beside walls and paving.`,
    },
    crop: { label: 'Crop' },
    plantedOn: { label: 'Planting day' },
    hasStages: {
      label: 'Enter its growth stages',
      help: 'Days of each, from the seed packet or your own notes. Else the first published row is used.',
    },
    stages: {
      initial: { label: 'Initial stage', unit: 'days' },
      development: { label: 'Development', unit: 'days' },
      mid: { label: 'Mid-season', unit: 'days' },
      late: { label: 'Late season', unit: 'days' },
    },
    hasCoefficients: {
      label: 'Enter its crop coefficients',
      help: 'From a local table. Else the published ones are used.',
    },
    coefficients: {
      initial: { label: 'Kc, initial' },
      mid: { label: 'Kc, mid-season' },
      end: { label: 'Kc at the end' },
    },
    rootDepth: {
      label: 'Root depth',
      empty: 'as usual',
      help: 'Dig beside a plant and look how deep most roots go.',
    },
    watering: {
      label: 'Watering',
      empty: 'as usual for its kind',
      help: 'Deep and infrequent: left alone until the allowed depletion is nearly reached, then filled. For shrubs behind a shut-off.',
      options: { keep: 'every week, back to its target', refill: 'deep and infrequent' },
    },
    shutOff: {
      label: 'Has a shut-off: a hand valve in front of it',
      help: 'It is opened only on some of the zone’s watering days.',
    },
    inGround: { from: { label: 'In the ground from' }, to: { label: 'In the ground to' } },
    establishing: {
      until: { label: 'Establishing until' },
      factor: { label: 'Until then, multiply its need by' },
    },
    zone: { label: 'Move to zone' },
    /** A zone by its name: the one that the planting is in. */
    thisZone: (zone: string) => `${zone} (stays here)`,
    folds: {
      needMore: 'Water need in figures',
      roots: 'Roots and soil of this planting',
      days: 'Days in the ground, new plants, note',
    },
    allowedDepletion: {
      label: 'Allowed depletion',
      empty: 'as published',
      help: 'Share of the soil’s available water that may be used before it is short, 0 to 1. Leave it empty for what is published for its crop or type.',
    },
    target: {
      label: 'Target depletion',
      help: 'What may remain after watering, as a share of the allowed depletion: 0 is full, 1 is where it begins to go short.',
    },
    startDepletion: {
      label: 'Starting depletion',
      help: 'On the season’s first day, as a share of the allowed depletion: 0 is full, 1 is where it begins to go short.',
    },
    note: { label: 'Note' },
    lines: 'Lines',
  },

  lineForm: {
    kind: {
      label: 'Kind',
      options: {
        rows: 'dripline in rows',
        loops: 'dripline in loops around each plant',
        length: 'dripline by its length',
        point: 'point emitters',
        spray: 'micro-sprays',
        solid: 'solid line (no emitters yet)',
      },
    },
    from: { label: 'Lies from', help: 'Leave it empty for the planting’s first day.' },
    to: {
      label: 'Lies to',
      help: 'Leave it empty while it lies. Lines whose days overlap run together. To lay a bed anew, end its line and add another from the day after.',
    },
    asZone: 'as the zone',
    flow: { label: 'Flow of one emitter' },
    spacing: {
      label: 'Emitter spacing',
      help: ({ reader }: Format) =>
        reader.units === 'us'
          ? 'About 6 in where plants stand densely, about 18 in around shrubs.'
          : 'About 15 cm where plants stand densely, about 45 cm around shrubs.',
    },
    length: { label: 'Length' },
    solidLength: {
      label: 'Length',
      empty: 'not known',
      help: 'From where it branches off to its planting: what the water loses on the way.',
    },
    rowLength: { label: 'Row length' },
    rows: { label: 'Rows' },
    perPlant: { label: 'Loops around each plant' },
    loopDiameter: { label: 'Across one loop', empty: 'as the plant' },
    emitterCount: { label: 'Emitters for each plant' },
    sprayCount: { label: 'Micro-sprays' },
    topology: {
      label: 'Line layout',
      help: 'A loop returns to where it began: it is fed from both ends and carries about twice as far.',
      options: { 'dead-end': 'dead end', loop: 'loop' },
    },
    slopeSide: {
      label: 'Side on a slope',
      help: 'Lay it uphill of the plants: water from a line below them is largely lost.',
      options: {
        level: 'on level ground',
        uphill: 'uphill of the plants',
        downhill: 'downhill of the plants',
      },
    },
    more: 'Days, far end, slope, emitters and tubing',
    days: 'Days that it lies there',
    emitter: {
      label: 'Emitters',
      help: 'The package says so. Plain ones give less where the pressure is less; pressure-compensating ones, down to a least pressure, do not.',
      options: { compensating: 'pressure-compensating', plain: 'plain' },
    },
    leastPressure: { label: 'Minimum operating pressure' },
    exponent: {
      label: 'Emitter exponent x',
      help: ({ number }: Format) =>
        `From the data sheet: flow = k × pressure to the power of x. About ${number(0.5, 1)} for most plain emitters.`,
    },
    insideDiameter: {
      label: 'Inside diameter',
      empty: 'as usual',
      help: 'Of the tubing, from the data sheet. Leave it empty for that of usual dripline.',
    },
    risePercent: {
      label: 'Rise',
      unit: '%',
      help: (format: Format) => riseHelp(format, 'meter'),
    },
  },
};

/** Weight of a column of water, 1 m: 9.8 kPa; 1 ft: 0.433 psi. */
function riseHelp({ reader, number }: Format, meter: string): string {
  const each =
    reader.units === 'us'
      ? `foot of rise takes ${number(0.433, 3)} psi`
      : `${meter} of rise takes ${number(9.8, 1)} kPa`;
  return `From its feed, over 100 of length; negative where the line runs downhill. Each ${each}.`;
}

export const gardenZonesWords = area('gardenZones', gardenZones, {
  lineForm: {
    risePercent: {
      help: (format: Format) => riseHelp(format, 'metre'),
    },
  },
});
