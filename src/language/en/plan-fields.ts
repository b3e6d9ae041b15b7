/**
 * What each field of a plan file means, by its path: `.*` stands for the items of a list or the entries of a record, `[kind]` for the
 * fields of one kind. English alone, for those who write plans by hand or program: read where the plan's JSON Schema is built, by no page.
 */
import type { Plan } from '../../plan/schema/plan-schema.ts';

/** Every field of a plan, but `kind`, which the fields of its kind stand for. */
type FieldPath<Whole, At extends string = ''> = Whole extends readonly (infer Item)[]
  ? FieldPath<Item, `${At}.*`>
  : Whole extends object
    ? string extends keyof Whole
      ? FieldPath<Whole[keyof Whole], `${At}.*`>
      : PathsOf<Whole, At extends '' ? '' : `${At}${KindOf<Whole>}.`>
    : never;

type PathsOf<Whole extends object, Start extends string> = {
  [Field in Exclude<keyof Whole, 'kind'> & string]-?:
    | `${Start}${Field}`
    | FieldPath<NonNullable<Whole[Field]>, `${Start}${Field}`>;
}[Exclude<keyof Whole, 'kind'> & string];

type KindOf<Whole> = Whole extends { readonly kind: infer Kind extends string } ? `[${Kind}]` : '';

export const planFields = {
  format: 'Tells this file from others.',
  version: 'Version of the format.',
  units: 'Unit system of every value of this file.',
  name: 'Name of the plan.',
  notes: 'Notes about the plan.',
  season: 'The weeks that are planned.',
  'season.firstDay': 'First day of the first week; every week starts on this weekday.',
  'season.weeks': 'Number of weeks.',
  site: 'The place: soil and climate.',
  'site.latitude': 'North of the equator; negative lies south.',
  'site.elevation': 'Above sea level. Left out: 0.',
  'site.windHeight': 'Height above the ground at which wind was measured. Left out: 2 m.',
  'site.setting':
    'On the coast of a large water, or not: for radiation from temperatures (FAO-56 eq. 50). Left out: interior.',
  'site.missingWeather':
    'Reference ET where temperatures are known, and humidity, wind or sun is not: hargreaves-samani from the temperatures alone, or penman-monteith with estimates for what is missing. Left out: hargreaves-samani.',
  'site.soil': 'Texture of the soil.',
  'site.slopePercent': 'Slope of the ground. Left out: 0.',
  'site.exposure': 'Sun, shade and wind in words.',
  'site.climate': 'Monthly normals, January first: ETo, or lowest and highest temperature, and rain.',
  'site.climate.source': 'Where the figures come from.',
  'site.climate.eto': 'Reference evapotranspiration of each whole month.',
  'site.climate.minTemperature': 'Mean of the daily lowest temperatures.',
  'site.climate.maxTemperature': 'Mean of the daily highest temperatures.',
  'site.climate.dewPoint': 'Mean dew point.',
  'site.climate.wind': 'Mean wind speed, at the site’s wind height.',
  'site.climate.sunshineHours': 'Mean hours of bright sunshine a day.',
  'site.climate.rain': 'Rain of each whole month.',
  'site.climate.rainDays': 'Days of each month with rain: at least 0.01 in (0.25 mm), or rainDayThreshold.',
  'site.climate.rainDayThreshold':
    'Least rain of the days that rainDays counts, where it is another: the days are converted. Left out: 0.01 in (0.25 mm).',
  'site.years': 'Real seasons by day: rain and reference evapotranspiration of as many years as are known.',
  'site.years.source': 'Where the figures come from.',
  'site.years.stretches': 'Days in a row, in any order; no day stands in two. At most 60 years in all.',
  'site.years.stretches.*.from': 'Day of the first figure of rain and of eto.',
  'site.years.stretches.*.rain':
    'Rain of each day: whole numbers with one space between, - for a missing day. In ten-thousandths of an inch (us) or hundredths of a millimetre (metric): 0.35 in is 3500, 8.9 mm is 890.',
  'site.years.stretches.*.eto':
    'Reference evapotranspiration of each day, as many days as rain has, written like it: 0.17 in is 1700, 4.32 mm is 432.',
  'site.rain': 'How a month’s usual rain is counted; balance: what each planting’s own soil keeps. Left out: balance.',
  'site.rain.method': 'Method by which it is credited.',
  'site.rain.fraction': 'Share of the rain that counts, for the method fraction.',
  'site.rain.runoff': 'Share of an observed day’s rain that runs off. Left out: 0.',
  supply: 'Where the water comes from.',
  'supply.sources': 'Each from a day on: the hose now, the main later.',
  'supply.sources.*.name': 'Name of the source.',
  'supply.sources.*.from': 'Day from which it serves. Left out: the season’s first.',
  'supply.sources.*.flow': 'What the source gives: read off a meter or a sheet, or from a bucket test.',
  'supply.sources.*.flow[typed].flow': 'Flow of the source.',
  'supply.sources.*.flow[bucket].volume': 'What the bucket holds.',
  'supply.sources.*.flow[bucket].seconds': 'Time in which it filled.',
  'supply.sources.*.pressure': 'Pressure at the source while water runs.',
  'supply.window': 'When water may run.',
  'supply.window.weekdays': 'Days on which water may run. Left out: every day.',
  'supply.window.hoursPerDay': 'Hours a day in which water may run.',
  'supply.allowance': 'How much may be used.',
  'supply.allowance.perWeek': 'Most water in a week.',
  'supply.allowance.perSeason': 'Most water in the season.',
  'supply.tank': 'A rain tank. Its water is not for drinking.',
  'supply.tank.capacity': 'What the tank holds.',
  'supply.tank.start': 'What is in it on the season’s first day.',
  'supply.tank.roofArea': 'Roof that feeds it, as seen from above. Left out: none.',
  'supply.tank.runoffCoefficient': 'Share of the roof’s rain that reaches it.',
  zones: 'Each is one valve or timer station: everything in it runs together.',
  'zones.*.id': 'Names the zone inside the plan; it is never shown.',
  'zones.*.name': 'Name of the zone.',
  'zones.*.soil': 'Left out: the site’s.',
  'zones.*.slopePercent': 'Left out: the site’s.',
  'zones.*.wateringDays': 'A number is spread over the days on which water may run; a list names the weekdays.',
  'zones.*.rule': 'Whose need sets the minutes where plantings differ. Left out: thirstiest.',
  'zones.*.rule[planting].planting': 'Id of the planting of this zone that decides.',
  'zones.*.timerStepMinutes': 'Smallest step of the timer. Left out: 1.',
  'zones.*.longestCycleMinutes': 'Longest run before a pause. Left out: from the soil’s intake.',
  'zones.*.startsADay': 'Times a day that the timer can start it: most cycles of a day. Left out: 4.',
  'zones.*.application': 'Left out: the usual efficiency of drip or spray.',
  'zones.*.application[efficiency].value': 'Share of the water that counts as net.',
  'zones.*.application[distribution-uniformity].value': 'Mean of the lowest quarter over the mean of all.',
  'zones.*.plantings': 'Plants alike enough to share a number.',
  'zones.*.plantings.*.id': 'Names the planting inside the plan; it is never shown.',
  'zones.*.plantings.*.name': 'Name of the planting.',
  'zones.*.plantings.*.need': 'What decides how much it drinks: a water-use class, a type of plant, or a crop.',
  'zones.*.plantings.*.need[class].class': 'Water-use class.',
  'zones.*.plantings.*.need[class].factor':
    'Share of reference ET. Left out: the middle of the class, or the type’s own.',
  'zones.*.plantings.*.need[class].density': 'Density factor kd. Left out: 1.',
  'zones.*.plantings.*.need[class].microclimate': 'Microclimate factor kmc. Left out: 1.',
  'zones.*.plantings.*.need[type].type': 'Type of plant, which brings its class.',
  'zones.*.plantings.*.need[type].factor':
    'Share of reference ET. Left out: the middle of the class, or the type’s own.',
  'zones.*.plantings.*.need[type].density': 'Density factor kd. Left out: 1.',
  'zones.*.plantings.*.need[type].microclimate': 'Microclimate factor kmc. Left out: 1.',
  'zones.*.plantings.*.need[crop].crop': 'Crop of FAO-56.',
  'zones.*.plantings.*.need[crop].plantedOn':
    'Day of planting; for a crop that stays, the day on which growth resumes.',
  'zones.*.plantings.*.need[crop].stages': 'Days of each growth stage. Left out: the crop’s first published row.',
  'zones.*.plantings.*.need[crop].stages.initial': 'Days of the initial stage.',
  'zones.*.plantings.*.need[crop].stages.development': 'Days of the development stage.',
  'zones.*.plantings.*.need[crop].stages.mid': 'Days of the mid-season stage.',
  'zones.*.plantings.*.need[crop].stages.late': 'Days of the late-season stage.',
  'zones.*.plantings.*.need[crop].coefficients': 'Left out: the published ones.',
  'zones.*.plantings.*.need[crop].coefficients.initial': 'Crop coefficient Kc, initial.',
  'zones.*.plantings.*.need[crop].coefficients.mid': 'Crop coefficient Kc, mid-season.',
  'zones.*.plantings.*.need[crop].coefficients.end': 'Crop coefficient Kc, at the end.',
  'zones.*.plantings.*.extent': 'Its size: an area, or plants and their canopy.',
  'zones.*.plantings.*.extent[area].area': 'Ground that the planting covers.',
  'zones.*.plantings.*.extent[canopy].count': 'Number of plants.',
  'zones.*.plantings.*.extent[canopy].diameter': 'Across the canopy of one plant.',
  'zones.*.plantings.*.rootDepth': 'Left out: the crop’s smaller published depth, or the type’s usual.',
  'zones.*.plantings.*.allowedDepletion': 'Share of the available water that may be used before watering.',
  'zones.*.plantings.*.watering':
    'keep: back to its target every week. refill: left alone until it would pass its allowed depletion, then filled.',
  'zones.*.plantings.*.target':
    'Room for rain that watering leaves, as a share of the allowed depletion. Left out: 0.3, none where a refill fills up.',
  'zones.*.plantings.*.startDepletion':
    'Depletion on the first day, as a share of the allowed depletion. Left out: 0, full.',
  'zones.*.plantings.*.inGround': 'When the planting is there to be watered.',
  'zones.*.plantings.*.inGround.from': 'First day. Left out: an annual crop’s planting day, else the season’s first.',
  'zones.*.plantings.*.inGround.to':
    'Last day. Left out: the end of an annual crop’s last stage, else the season’s last.',
  'zones.*.plantings.*.establishing': 'New plants need other amounts until they are settled.',
  'zones.*.plantings.*.establishing.until': 'Last day of establishing.',
  'zones.*.plantings.*.establishing.factor': 'Multiplies what the plants use until then.',
  'zones.*.plantings.*.shutOff': 'Whether a hand valve stands in front of this planting.',
  'zones.*.plantings.*.lines': 'Each from a day on: a bed re-laid in June has two.',
  'zones.*.plantings.*.lines.*[dripline].from': 'Day from which the line lies. Left out: the planting’s first day.',
  'zones.*.plantings.*.lines.*[dripline].flow': 'Flow of one emitter.',
  'zones.*.plantings.*.lines.*[dripline].spacing': 'Distance between emitters along the line.',
  'zones.*.plantings.*.lines.*[dripline].layout': 'How the tubing is laid.',
  'zones.*.plantings.*.lines.*[dripline].layout[length].length': 'Length of all the dripline, as measured.',
  'zones.*.plantings.*.lines.*[dripline].layout[rows].rows': 'Number of equal rows.',
  'zones.*.plantings.*.lines.*[dripline].layout[rows].length': 'Length of one row.',
  'zones.*.plantings.*.lines.*[dripline].layout[loops].perPlant': 'Loops of dripline round each plant.',
  'zones.*.plantings.*.lines.*[dripline].layout[loops].diameter':
    'Across one loop. Left out: the canopy’s own diameter.',
  'zones.*.plantings.*.lines.*[dripline].topology': 'Fed from one end, or from both. Left out: dead-end.',
  'zones.*.plantings.*.lines.*[dripline].slopeSide': 'Side of the plants on which the line lies. Left out: level.',
  'zones.*.plantings.*.lines.*[dripline].risePercent': 'Rise along the line from its inlet; negative runs downhill.',
  'zones.*.plantings.*.lines.*[dripline].insideDiameter':
    'Inside diameter of the tubing. Left out: that of usual dripline.',
  'zones.*.plantings.*.lines.*[dripline].emitter': 'How the flow answers to pressure. Left out: compensating.',
  'zones.*.plantings.*.lines.*[dripline].emitter[compensating].leastPressure':
    'Pressure from which the flow no longer changes.',
  'zones.*.plantings.*.lines.*[dripline].emitter[plain].exponent': 'Exponent x of flow = k pressure^x.',
  'zones.*.plantings.*.lines.*[point].from': 'Day from which the line lies. Left out: the planting’s first day.',
  'zones.*.plantings.*.lines.*[point].flow': 'Flow of one emitter.',
  'zones.*.plantings.*.lines.*[point].count':
    'Emitters at each plant where plants are counted, else in the whole planting.',
  'zones.*.plantings.*.lines.*[point].topology': 'Fed from one end, or from both. Left out: dead-end.',
  'zones.*.plantings.*.lines.*[point].slopeSide': 'Side of the plants on which the line lies. Left out: level.',
  'zones.*.plantings.*.lines.*[point].risePercent': 'Rise along the line from its inlet; negative runs downhill.',
  'zones.*.plantings.*.lines.*[point].insideDiameter':
    'Inside diameter of the tubing. Left out: that of usual dripline.',
  'zones.*.plantings.*.lines.*[point].emitter': 'How the flow answers to pressure. Left out: compensating.',
  'zones.*.plantings.*.lines.*[point].emitter[compensating].leastPressure':
    'Pressure from which the flow no longer changes.',
  'zones.*.plantings.*.lines.*[point].emitter[plain].exponent': 'Exponent x of flow = k pressure^x.',
  'zones.*.plantings.*.lines.*[spray].from': 'Day from which the line lies. Left out: the planting’s first day.',
  'zones.*.plantings.*.lines.*[spray].flow': 'Flow of one emitter.',
  'zones.*.plantings.*.lines.*[spray].count': 'Micro-sprays in the whole planting.',
  'zones.*.plantings.*.lines.*[spray].topology': 'Fed from one end, or from both. Left out: dead-end.',
  'zones.*.plantings.*.lines.*[spray].slopeSide': 'Side of the plants on which the line lies. Left out: level.',
  'zones.*.plantings.*.lines.*[spray].risePercent': 'Rise along the line from its inlet; negative runs downhill.',
  'zones.*.plantings.*.lines.*[spray].insideDiameter':
    'Inside diameter of the tubing. Left out: that of usual dripline.',
  'zones.*.plantings.*.lines.*[spray].emitter': 'How the flow answers to pressure. Left out: compensating.',
  'zones.*.plantings.*.lines.*[spray].emitter[compensating].leastPressure':
    'Pressure from which the flow no longer changes.',
  'zones.*.plantings.*.lines.*[spray].emitter[plain].exponent': 'Exponent x of flow = k pressure^x.',
  'zones.*.plantings.*.lines.*[solid].from': 'Day from which the line lies. Left out: the planting’s first day.',
  'zones.*.plantings.*.note': 'A note about the planting.',
  'zones.*.note': 'A note about the zone.',
  log: 'What was observed, forecast and really run.',
  'log.days': 'Weather by day.',
  'log.days.*.rain': 'Rain gauge.',
  'log.days.*.eto': 'Reference evapotranspiration.',
  'log.days.*.minTemperature': 'Lowest air temperature.',
  'log.days.*.maxTemperature': 'Highest air temperature.',
  'log.days.*.dewPoint': 'Dew point.',
  'log.days.*.minHumidityPercent': 'Lowest relative humidity.',
  'log.days.*.maxHumidityPercent': 'Highest relative humidity.',
  'log.days.*.wind': 'Mean wind speed, at the site’s wind height.',
  'log.days.*.radiationMj': 'Solar radiation.',
  'log.days.*.sunshineHours': 'Hours of bright sunshine.',
  'log.weeks': 'Totals by week, under any day of the week (its first, when this kit writes it).',
  'log.weeks.*.rain': 'Rain of the week, through the day that it was read.',
  'log.weeks.*.rainThrough':
    'Day of the week that the rain was read through; later days keep their normals. Left out: the week’s last.',
  'log.weeks.*.eto': 'Reference evapotranspiration of the whole week.',
  'log.runs':
    'What really ran, by zone and a day of the week: minutes of the whole week, or what ran on each of its days.',
  'log.runs.*.*.days': 'By day of the week. Days that are left out were not run.',
  'log.runs.*.*.days.*.minutes': 'Minutes run on the day.',
  'log.runs.*.*.days.*.open': 'Ids of the plantings whose shut-off was open. Left out: as computed.',
  'log.forecasts': 'What was expected of days to come, one forecast a day of issue.',
  'log.forecasts.*.issued': 'Day on which it was known.',
  'log.forecasts.*.days': 'By day, none before the day of issue.',
  'log.forecasts.*.days.*.rain': 'Rain that was expected.',
  'log.forecasts.*.days.*.eto': 'Reference evapotranspiration that was expected.',
  choices: 'What was set by hand, by zone and a day of the week.',
  'choices.*.*.minutes': 'Minutes of the whole week, set by hand.',
  'choices.*.*.closed': 'Whether the zone stays shut for the week.',
  'choices.*.*.openDays': 'Watering days of the week on which a shut-off is open, by planting.',
  'choices.*.*.note': 'A note about the week.',
} satisfies Readonly<Record<FieldPath<Plan>, string>>;
