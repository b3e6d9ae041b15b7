/**
 * What each field of a plan file means, by its path: `.*` stands for the items of a list or the entries of a record, `[kind]` for the
 * fields of one kind. English alone, for those who write plans by hand or program: read where the plan's JSON Schema is built, by no page.
 */
import type { Plan } from '../../plan/schema/plan-schema.ts';
import { whatIfFields } from './plan-fields-what-ifs.ts';
import { planLogFields } from './plan-log-fields.ts';

/** What an edit of a what-if holds means what it means where it is made. */
const TRIED = 'whatIfs.*.edits.*';

/** Every field of a plan, but `kind`, which the fields of its kind stand for. */
type FieldPath<Whole, At extends string = ''> = At extends `${typeof TRIED}.${string}`
  ? never
  : Whole extends readonly (infer Item)[]
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
  identity: 'Name that the plan had first. Calendars know its entries by it; left out: its name.',
  notes: 'Notes about the plan.',
  season: 'The weeks that are planned.',
  'season.firstDay': 'First day of the first week; every week starts on this weekday.',
  'season.weeks': 'Number of weeks.',
  site: 'The place: soil and climate.',
  'site.place': 'Name of the place.',
  'site.latitude': 'North of the equator; negative lies south.',
  'site.longitude': 'East of Greenwich; negative lies west. For a weather service.',
  'site.timeZone': 'Time zone of the garden, by its IANA name.',
  'site.elevation': 'Above sea level. Left out: 0.',
  'site.windHeight': 'Height above the ground at which wind was measured. Left out: 2 m.',
  'site.setting':
    'On the coast of a large water, or not: for radiation from temperatures (FAO-56 eq. 50). Left out: interior.',
  'site.missingWeather':
    'Reference ET where temperatures are known, and humidity, wind or sun is not: hargreaves-samani from the temperatures alone, or penman-monteith with estimates for what is missing. Left out: hargreaves-samani.',
  'site.soil': 'Texture of the soil.',
  'site.availableWater':
    'Depth of water that plants can draw from a depth of soil: 0.15 is 1.8 in a foot (150 mm a metre). Left out: the texture’s.',
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
  'site.departures': 'Weeks that are expected to be hotter or cooler, wetter or drier than the climate says.',
  'site.departures.*.from': 'Day that the weeks begin on.',
  'site.departures.*.weeks': 'How many.',
  'site.departures.*.eto': 'Times the usual reference evapotranspiration. Left out: 1.',
  'site.departures.*.rain': 'Times the usual rain. Left out: 1.',
  'site.rain': 'How a month’s usual rain is counted; balance: what each planting’s own soil keeps. Left out: balance.',
  'site.rain.method': 'Method by which it is counted.',
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
  'supply.sources.*.flow[bucket].share': 'Share of the test’s flow that is planned on. Left out: 0.8.',
  'supply.sources.*.pressure': 'Pressure at the lines while water runs, behind any regulator. Left out: not known.',
  'supply.sources.*.waterHeight':
    'How far the water’s surface in a barrel stands above the beds, in place of a pressure.',
  'supply.window': 'When water may run.',
  'supply.window.weekdays': 'Days on which water may run. Left out: every day.',
  'supply.window.opensAt': 'Time from which water may run, on the 24-hour clock: 05:00.',
  'supply.window.hoursPerDay': 'Hours a day in which water may run.',
  'supply.allowance': 'How much may be used.',
  'supply.allowance.perWeek': 'Most water in a week.',
  'supply.allowance.perSeason': 'Most water in the season.',
  'supply.allowance.perArea':
    'Most water in the season on a unit of ground: of the most that is planted at the same time. Beside perSeason the lower one counts.',
  'supply.restrictions': 'Days of a restriction by those who give the water, beside the window.',
  'supply.restrictions.*.name': 'Name of the restriction.',
  'supply.restrictions.*.from': 'First day on which it is in force. Left out: always was.',
  'supply.restrictions.*.to': 'Last day on which it is in force. Left out: until further notice.',
  'supply.restrictions.*.weekdays': 'Days on which water may run while it is in force.',
  'supply.restrictions.*.hoursPerDay': 'Most hours a day in which water may run. Left out: as the window says.',
  'supply.cuts': 'Weeks with less water: every week that begins on a day of a cut. The later in the list wins.',
  'supply.cuts.*.from': 'First day.',
  'supply.cuts.*.to': 'Last day.',
  'supply.cuts.*.share': 'Share of what was computed that is taken away.',
  'supply.cuts.*.perWeek': 'Water that is left for a week, in place of a share.',
  'supply.leachingFraction': 'Share of the irrigation that is to drain where water is salty. Left out: 0.',
  'supply.price': 'What water costs.',
  'supply.price.amount': 'Money.',
  'supply.price.per': 'The water that it pays for.',
  'supply.price.currency': 'ISO 4217 code of the money: USD.',
  'supply.tank': 'A rain tank. Its water is not for drinking.',
  'supply.tank.capacity': 'What the tank holds.',
  'supply.tank.start': 'What is in it on the season’s first day.',
  'supply.tank.roofArea': 'Roof that feeds it, as seen from above. Left out: none.',
  'supply.tank.runoffCoefficient': 'Share of the roof’s rain that reaches it.',
  zones: 'Each is one valve or timer station: everything in it runs together.',
  'zones.*.id': 'Names the zone inside the plan; it is never shown.',
  'zones.*.name': 'Name of the zone.',
  'zones.*.soil': 'Left out: the site’s.',
  'zones.*.availableWater': 'Left out: the site’s; the texture’s where the zone has a soil of its own.',
  'zones.*.slopePercent': 'Left out: the site’s.',
  'zones.*.wateringDays': 'A number is spread over the days on which water may run; a list names the weekdays.',
  'zones.*.wateringDaysByMonth':
    'Watering days of months, by their number; a month that is left out has the usual ones. A week belongs to the month of its fourth day.',
  'zones.*.rule': 'Whose need sets the minutes where plantings differ. Left out: thirstiest.',
  'zones.*.rule[planting].planting': 'Id of the planting of this zone that decides.',
  'zones.*.timerStepMinutes': 'Smallest step of the timer. Left out: 1.',
  'zones.*.longestCycleMinutes': 'Longest run before a pause. Left out: from the soil’s intake.',
  'zones.*.startsADay': 'Times a day that the timer can start it: most cycles of a day. Left out: 4.',
  'zones.*.application': 'For every line that has none of its own. Left out: the usual efficiency of drip or spray.',
  'zones.*.application[efficiency].value': 'Share of the water that counts as net.',
  'zones.*.application[distribution-uniformity].value': 'Mean of the lowest quarter over the mean of all.',
  'zones.*.cutOrder':
    'Place in the order in which water is cut, the greatest first. Left out: its place in the list of zones.',
  'zones.*.cutExempt': 'Whether it keeps its water when water is cut.',
  'zones.*.plantings': 'Plants alike enough to share a number.',
  'zones.*.plantings.*.id': 'Names the planting inside the plan; it is never shown.',
  'zones.*.plantings.*.name': 'Name of the planting.',
  'zones.*.plantings.*.need': 'What decides how much it drinks: a water-use class, a type of plant, or a crop.',
  'zones.*.plantings.*.need[class].class': 'Water-use class.',
  'zones.*.plantings.*.need[class].plant': 'The plant that was found by its name, and brought its class.',
  'zones.*.plantings.*.need[class].plant.name': 'Its common name.',
  'zones.*.plantings.*.need[class].plant.botanical': 'Its botanical name.',
  'zones.*.plantings.*.need[class].plant.class':
    'The class that it brought. Where the class of the planting is another, somebody chose that, and it holds.',
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
  'zones.*.plantings.*.extent':
    'Its size, in the form in which it was typed: an area, a bed, rows, or plants and their canopy.',
  'zones.*.plantings.*.extent[area].area': 'Ground that the planting covers.',
  'zones.*.plantings.*.extent[bed].length': 'Length of the bed.',
  'zones.*.plantings.*.extent[bed].width': 'Width of the bed.',
  'zones.*.plantings.*.extent[rows].rows': 'Number of rows.',
  'zones.*.plantings.*.extent[rows].length': 'Length of each row.',
  'zones.*.plantings.*.extent[rows].apart': 'From row to row. Left out: 18 in (45.7 cm).',
  'zones.*.plantings.*.extent[canopy].count': 'Number of plants.',
  'zones.*.plantings.*.extent[canopy].diameter': 'Across the canopy of one plant.',
  'zones.*.plantings.*.extent[canopy].trunk':
    'Across the trunk of one tree. The ground is that of the canopy or of 24 trunks across, whichever is larger.',
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
  'zones.*.plantings.*.container': 'Pots, boxes or baskets that it grows in. Left out: the ground.',
  'zones.*.plantings.*.container.volume': 'Mix in one container.',
  'zones.*.plantings.*.container.count': 'Number of containers. Left out: one a plant, or one.',
  'zones.*.plantings.*.container.mix': 'Potting mix. Left out: potting.',
  'zones.*.plantings.*.container.availableWater':
    'Share of the mix’s volume that plants can draw. Left out: the mix’s.',
  'zones.*.plantings.*.container.opening': 'Across one opening. Left out: as wide as the pot is tall.',
  'zones.*.plantings.*.container.rainShare': 'Share of the rain on the opening that gets in. Left out: 1.',
  'zones.*.plantings.*.wettedShare':
    'Share of its ground that the lines wet, at the depth of the roots. Left out: from emitters, soil and roots.',
  'zones.*.plantings.*.mulch': 'What covers its ground. Left out: nothing.',
  'zones.*.plantings.*.mulch[organic].cover': 'Share of the ground that is covered. Left out: 1.',
  'zones.*.plantings.*.leaflessMonths': 'Months, by their number, in which it has no leaves and asks for nothing.',
  'zones.*.plantings.*.dryDownDays': 'Last days in the ground without water. Left out: the crop’s.',
  'zones.*.plantings.*.soak': 'Whether its ground is soaked before its first day.',
  'zones.*.plantings.*.shutOff': 'Whether a hand valve stands in front of this planting.',
  'zones.*.plantings.*.lines': 'Each from a day to a day; several may lie at once, fed side by side.',
  'zones.*.plantings.*.lines.*[dripline].from': 'Day from which the line lies. Left out: the planting’s first day.',
  'zones.*.plantings.*.lines.*[dripline].to': 'Last day on which it lies. Left out: it stays.',
  'zones.*.plantings.*.lines.*[dripline].application':
    'Its own efficiency. Left out: the zone’s, or the usual one of its kind.',
  'zones.*.plantings.*.lines.*[dripline].application[efficiency].value': 'Share of the water that counts as net.',
  'zones.*.plantings.*.lines.*[dripline].application[distribution-uniformity].value':
    'Mean of the lowest quarter over the mean of all.',
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
  'zones.*.plantings.*.lines.*[point].to': 'Last day on which it lies. Left out: it stays.',
  'zones.*.plantings.*.lines.*[point].application':
    'Its own efficiency. Left out: the zone’s, or the usual one of its kind.',
  'zones.*.plantings.*.lines.*[point].application[efficiency].value': 'Share of the water that counts as net.',
  'zones.*.plantings.*.lines.*[point].application[distribution-uniformity].value':
    'Mean of the lowest quarter over the mean of all.',
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
  'zones.*.plantings.*.lines.*[spray].to': 'Last day on which it lies. Left out: it stays.',
  'zones.*.plantings.*.lines.*[spray].application':
    'Its own efficiency. Left out: the zone’s, or the usual one of its kind.',
  'zones.*.plantings.*.lines.*[spray].application[efficiency].value': 'Share of the water that counts as net.',
  'zones.*.plantings.*.lines.*[spray].application[distribution-uniformity].value':
    'Mean of the lowest quarter over the mean of all.',
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
  'zones.*.plantings.*.lines.*[solid].to': 'Last day on which it lies. Left out: it stays.',
  'zones.*.plantings.*.lines.*[solid].length':
    'Length of the tubing, in front of the planting’s other lines. Left out: it costs no pressure.',
  'zones.*.plantings.*.lines.*[solid].insideDiameter': 'Inside diameter of the tubing. Left out: 0.6 in (15.24 mm).',
  'zones.*.plantings.*.lines.*[solid].risePercent': 'Rise along the line from its inlet; negative runs downhill.',
  'zones.*.plantings.*.note': 'A note about the planting.',
  'zones.*.plantings.*.assumed': 'What of it was filled in without anybody having said so, for it to be shown as such.',
  'zones.*.note': 'A note about the zone.',
  ...planLogFields,
  ...whatIfFields,
} satisfies Readonly<Record<FieldPath<Plan>, string>>;
