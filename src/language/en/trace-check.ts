/** What the trace says of where the water went, and of how the week ends. */
import type { State } from '../../engine/season/season.ts';
import type { CheckSteps } from '../../explain/trace/step-kinds.ts';
import { area } from '../area.ts';
import type { Format } from '../format/format.ts';
import type { StepTexts } from '../trace-words.ts';

const SUMS = { zone: 'sum over the plantings', garden: 'sum over the zones' };

const VOLUME = 'volume = depth × ground; one millimeter on one square meter is one liter';
const VOLUME_GB = 'volume = depth × ground; one millimetre on one square metre is one litre';
const VOLUMES = { planting: VOLUME, ...SUMS };

const RUNNING_SAYS = 'One more week is added to what the weeks before came to.';
const RUNNING = 'sum = the weeks before + this week';

const LOST_SAYS = 'Rain that dried off, ran off or found no room, and irrigation that fell unevenly.';
const STORAGE_SAYS = 'Above zero the soil ends the week wetter than it began, below zero drier.';

/** A figure that a planting has as a depth besides. */
const asVolume = (title: string) => ({ planting: `${title}, as a volume`, zone: title, garden: title });

/** The same for a zone and the whole garden. */
const ofAll = <Text extends string>(planting: Text, all: Text) => ({ planting, zone: all, garden: all });

const STAYED = 'The rain that stayed where roots can reach it';
const IRRIGATION_STAYED = 'The irrigation that stayed where roots can reach it.';

const STATES: Readonly<Record<State, string>> = {
  dry: 'Dry: the week ends with the soil drier than the plants can bear.',
  short: 'Short: on some day the plants could not use all they would, or the week’s watering brought too little.',
  over: 'Overwatered: irrigation that the plants had not asked for drained past the roots, more than rounding the minutes explains.',
  met: 'Met: the plants had what they need, and nothing to speak of was wasted.',
  closed: 'Closed: the zone was closed for the week by hand.',
  off: 'Off: nothing is in the ground.',
};

const ELSE =
  'else short where demand went unmet, a refill is still due, or more is missed than a tenth of the need and than rounding explains; ' +
  'else overwatered where more irrigation drained than leaching explains, and more came than was asked for, both by more than rounding explains; ' +
  'else met; at rest met or overwatered; ' +
  'below 0.05 mm no difference counts';

export const traceCheck = {
  'depletion-end': {
    title: 'Depletion at the week’s end',
    says: 'This much water is then missing from a full root zone.',
    formula: 'Dr end = Dr start + used − effective rain − net irrigation + drained + what roots grew into',
  },
  'rain-stayed': {
    title: 'Rain counted',
    says: `${STAYED}, and need not be watered.`,
    formula: 'rain counted = effective rain − rain drained',
  },
  'irrigation-stayed': {
    title: 'Irrigation kept',
    says: IRRIGATION_STAYED,
    formula: 'irrigation kept = net irrigation − irrigation drained',
  },
  lost: {
    title: 'Lost on the way',
    says: LOST_SAYS,
    formula: 'lost = rain − effective rain + gross irrigation − net irrigation',
  },
  'storage-change': {
    title: 'Change of the water in the soil',
    says: STORAGE_SAYS,
    formula: 'change = depletion at the start + what roots grew into − depletion at the end',
  },
  closing: {
    title: 'The water of the week adds up',
    says: 'All that came went somewhere: nothing is left over.',
    formula: ofAll(
      'left over = rain + gross irrigation − used − rain drained − irrigation drained − lost − change of the water in the soil',
      'left over = rain + water applied − used − drained − lost − change of the water in the soil',
    ),
  },
  litres: {
    title: ofAll('Water received', 'Water applied'),
    says: 'What the meter would show.',
    formula: VOLUMES,
  },
  'needed-litres': {
    title: asVolume('Net need'),
    says: 'What had to reach the roots to bring the soil to its goal.',
    formula: VOLUMES,
  },
  'demand-litres': {
    title: asVolume('Demand'),
    says: 'What the plants would use if they never went short.',
    formula: VOLUMES,
  },
  'used-litres': {
    title: asVolume('Water used'),
    says: 'What the plants took up.',
    formula: VOLUMES,
  },
  'rain-stayed-litres': {
    title: asVolume('Rain counted'),
    says: `${STAYED}.`,
    formula: VOLUMES,
  },
  'irrigation-stayed-litres': {
    title: asVolume('Irrigation kept'),
    says: IRRIGATION_STAYED,
    formula: VOLUMES,
  },
  'drained-irrigation-litres': {
    title: 'Irrigation drained, as a volume',
    says: 'Irrigation that drained past the roots and helped nobody.',
    formula: VOLUME,
  },
  'unmet-litres': {
    title: 'Demand that went unmet',
    says: 'What the plants would have used and did not get.',
    formula: 'unmet = demand − used',
  },
  'rain-litres': { title: 'Rain that fell', says: 'All rain on the ground of the plantings.', formula: SUMS },
  'drained-litres': {
    title: 'Drained past the roots',
    says: 'Rain and irrigation beyond what the soil holds.',
    formula: SUMS,
  },
  'lost-litres': { title: 'Lost on the way', says: LOST_SAYS, formula: SUMS },
  'storage-litres': { title: 'Change of the water in the soil', says: STORAGE_SAYS, formula: SUMS },
  'rain-credit': {
    title: 'Rain counted, as a depth',
    says: `${STAYED}, over the ground of the plantings.`,
    formula: 'rain counted = its volume / ground; 0 without plantings',
  },
  'rain-credit-litres': {
    title: 'Irrigation that the rain saved',
    says: 'This much would have had to be applied to do what the rain did.',
    formula: { zone: 'irrigation saved = rain counted / efficiency', garden: SUMS.garden },
  },
  'rain-credit-minutes': {
    title: 'Minutes that the rain saved',
    says: 'The zone would have had to run this long to do what the rain did.',
    formula: 'minutes saved = irrigation saved / flow of all its lines; 0 without lines',
  },
  'cumulative-rain': { title: 'Rain counted since the season began', says: RUNNING_SAYS, formula: RUNNING },
  'cumulative-irrigation': {
    title: 'Irrigation kept, since the season began',
    says: RUNNING_SAYS,
    formula: RUNNING,
  },
  'cumulative-demand': { title: 'Demand since the season began', says: RUNNING_SAYS, formula: RUNNING },
  'cumulative-from-soil': {
    title: 'Taken out of the soil since the season began',
    says: 'Beside rain and irrigation the plants have lived on what the soil held at the start.',
    formula: 'taken out = − change of the water in the soil since the season began, at least 0',
  },
  'cumulative-unmet': {
    title: 'Demand that went unmet since the season began',
    says: 'The plants have gone short by this much so far.',
    formula: 'unmet = demand − water used, both since the season began, at least 0',
  },
  missed: {
    title: 'Missed by the last watering',
    says: 'What the week’s last watering left beyond the depletion to reach, as expected.',
    formula: {
      whole: 'missed = max(0, Dr + demand less rain − irrigation − depletion to reach)',
      part: 'missed = wetted share × max(0, Dr + demand less rain − irrigation − depletion to reach), all of the wetted part',
    },
  },
  state: {
    title: 'State of the week',
    says: (_: Format, { state }: { readonly state: State }) => STATES[state],
    formula: {
      planting: `dry where the depletion at the end is beyond RAW; ${ELSE}`,
      part: `dry where the depletion at the end of the less dry part is beyond RAW, of the wetted part while roots are in it alone; ${ELSE}`,
      zone: 'the worst of its plantings’ states: dry, short, overwatered, met; closed where it was closed by hand; off where nothing grows',
      off: 'off where no day of the week is in the ground',
    },
  },
} satisfies Partial<StepTexts<CheckSteps>>;

const VOLUMES_GB = { formula: { planting: VOLUME_GB } };

export const traceCheckWords = area('traceCheck', traceCheck, {
  litres: VOLUMES_GB,
  'needed-litres': VOLUMES_GB,
  'demand-litres': VOLUMES_GB,
  'used-litres': VOLUMES_GB,
  'rain-stayed-litres': VOLUMES_GB,
  'irrigation-stayed-litres': VOLUMES_GB,
  'drained-irrigation-litres': { formula: VOLUME_GB },
});
