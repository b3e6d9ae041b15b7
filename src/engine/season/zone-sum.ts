/** A zone's week from its plantings' weeks. */
import { grossIrrigation } from '../application/run-time.ts';
import {
  MINUTES_ORIGINS,
  PLANTING_FIELDS as P,
  type PlantingSeason,
  STATES,
  SUPPLY_FIELD_COUNT,
  ZONE_FIELDS as Z,
  type ZoneSeason,
} from './season.ts';
import type { WeekMinutes } from './week-minutes.ts';

const CLOSED_ORIGIN = MINUTES_ORIGINS.indexOf('closed');
const CLOSED = STATES.indexOf('closed');
const OFF = STATES.indexOf('off');

/** Fills the zone's figures of a week; its plantings', `own` of each in order, are already there. */
export function sumZoneWeek(season: ZoneSeason, own: readonly Float64Array[], week: number, run: WeekMinutes): void {
  const { zone, figures, weeks, plantings } = season;
  for (let field = 0; field < SUPPLY_FIELD_COUNT; field++) figures[field * weeks + week] = 0;
  let areaM2 = 0;
  let flowLpm = 0;
  let openFlowLpm = 0;
  let state = OFF;
  for (let at = 0; at < plantings.length; at++) {
    const { planting } = plantings[at] as PlantingSeason;
    const its = own[at] as Float64Array;
    if (its[P.groundDays * weeks + week] === 0) continue;
    addVolumes(figures, its, { weeks, week, areaM2: planting.areaM2 });
    const lineLpm = its[P.flowLpm * weeks + week] as number;
    areaM2 += planting.areaM2;
    flowLpm += lineLpm;
    if (its[P.openMask * weeks + week] !== 0) openFlowLpm += lineLpm;
    state = Math.min(state, its[P.state * weeks + week] as number);
  }
  const stayedLitres = figures[Z.rainStayedLitres * weeks + week] as number;
  const creditLitres = grossIrrigation(stayedLitres, zone.efficiency);
  figures[Z.minutes * weeks + week] = run.minutesPerDay * run.dayCount;
  figures[Z.minutesPerDay * weeks + week] = run.minutesPerDay;
  figures[Z.cycles * weeks + week] = run.cycles;
  figures[Z.minutesWanted * weeks + week] = run.wanted;
  figures[Z.rainCreditMm * weeks + week] = areaM2 > 0 ? stayedLitres / areaM2 : 0;
  figures[Z.rainCreditLitres * weeks + week] = creditLitres;
  figures[Z.rainCreditMinutes * weeks + week] = flowLpm > 0 ? creditLitres / flowLpm : 0;
  figures[Z.flowLpm * weeks + week] = openFlowLpm;
  figures[Z.state * weeks + week] = run.origin === CLOSED_ORIGIN && state !== OFF ? CLOSED : state;
  figures[Z.origin * weeks + week] = run.origin;
}

/** The same relations as `plantingVolume`, all at once. */
function addVolumes(
  figures: Float64Array,
  own: Float64Array,
  { weeks, week, areaM2 }: { readonly weeks: number; readonly week: number; readonly areaM2: number },
): void {
  const rain = own[P.rainMm * weeks + week] as number;
  const soaked = own[P.rainSoakedMm * weeks + week] as number;
  const rainDrained = own[P.rainDrainedMm * weeks + week] as number;
  const gross = own[P.irrigationGrossMm * weeks + week] as number;
  const net = own[P.irrigationNetMm * weeks + week] as number;
  const irrigationDrained = own[P.irrigationDrainedMm * weeks + week] as number;
  const stored = (own[P.depletionStartMm * weeks + week] as number) - (own[P.depletionEndMm * weeks + week] as number);
  const add = (field: number, mm: number) => {
    figures[field * weeks + week] = (figures[field * weeks + week] as number) + mm * areaM2;
  };
  add(Z.litres, gross);
  add(Z.rainLitres, rain);
  add(Z.demandLitres, own[P.demandMm * weeks + week] as number);
  add(Z.usedLitres, own[P.usedMm * weeks + week] as number);
  add(Z.rainStayedLitres, soaked - rainDrained);
  add(Z.irrigationStayedLitres, net - irrigationDrained);
  add(Z.drainedLitres, rainDrained + irrigationDrained);
  add(Z.lostLitres, rain - soaked + gross - net);
  add(Z.storageLitres, stored);
  add(Z.neededLitres, own[P.neededMm * weeks + week] as number);
}
