/** A zone's week from its plantings' weeks. */
import {
  MINUTES_ORIGINS,
  PLANTING_FIELDS as P,
  STATES,
  SUPPLY_FIELD_COUNT,
  ZONE_FIELDS as Z,
  type ZoneSeason,
} from './season.ts';

const CLOSED_ORIGIN = MINUTES_ORIGINS.indexOf('closed');
const CLOSED = STATES.indexOf('closed');
const OFF = STATES.indexOf('off');

export interface ZoneRun {
  /** Place in MINUTES_ORIGINS. */
  readonly origin: number;
  readonly minutesPerDay: number;
  readonly cycles: number;
  /** Minutes a watering day before rounding. */
  readonly wanted: number;
  /** Watering days of the week. */
  readonly dayCount: number;
}

/** Fills the zone's figures of a week; its plantings' are already there. */
export function sumZoneWeek({ zone, figures, weeks, plantings }: ZoneSeason, week: number, run: ZoneRun): void {
  for (let field = 0; field < SUPPLY_FIELD_COUNT; field++) {
    let sum = 0;
    for (const planting of plantings) sum += planting.figures[field * weeks + week] as number;
    figures[field * weeks + week] = sum;
  }
  let areaM2 = 0;
  let flowLpm = 0;
  let openFlowLpm = 0;
  let state = OFF;
  for (const { planting, days, figures: own } of plantings) {
    const groundDays = own[P.groundDays * weeks + week] as number;
    if (groundDays === 0) continue;
    const lastDay = Math.min(week * 7 + 7, days.demand.end) - 1;
    const lineLpm = ((days.netMmPerMinute[lastDay] as number) / zone.efficiency) * planting.areaM2;
    areaM2 += planting.areaM2;
    flowLpm += lineLpm;
    if ((own[P.openMask * weeks + week] as number) !== 0) openFlowLpm += lineLpm;
    state = Math.min(state, own[P.state * weeks + week] as number);
  }
  const rainStayed = figures[Z.rainStayedLitres * weeks + week] as number;
  const put = (field: number, value: number) => {
    figures[field * weeks + week] = value;
  };
  put(Z.minutes, run.minutesPerDay * run.dayCount);
  put(Z.minutesPerDay, run.minutesPerDay);
  put(Z.cycles, run.cycles);
  put(Z.minutesWanted, run.wanted);
  put(Z.rainCreditMm, areaM2 > 0 ? rainStayed / areaM2 : 0);
  put(Z.rainCreditLitres, rainStayed / zone.efficiency);
  put(Z.rainCreditMinutes, flowLpm > 0 ? rainStayed / zone.efficiency / flowLpm : 0);
  put(Z.flowLpm, openFlowLpm);
  put(Z.state, run.origin === CLOSED_ORIGIN && state !== OFF ? CLOSED : state);
  put(Z.origin, run.origin);
}
