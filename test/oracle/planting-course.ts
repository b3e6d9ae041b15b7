/** A planting on its way through the season: what it asks for on a morning, and what becomes of its soil by the evening. Depths in mm. */
import type { Garden, GardenZone } from '../../src/engine/garden.ts';
import { type DayBalance, realDay } from './day.ts';
import { type Expectation, expectationOn } from './expectation.ts';
import type { NearTies } from './near-ties.ts';
import { maskOf, openMask } from './open-days.ts';
import type { PlantingDay, PlantingFacts } from './planting-facts.ts';
import { type ExpectedFilling, expectedFilling, fillingMask, isDueOn, isFilled } from './refill.ts';
import { equalMinutes, goalAt, passAbove } from './request.ts';
import { sufficientRun } from './rounding.ts';
import { daysFrom, isInMask, lastReached, lastWatering, nextWatering } from './watering-days.ts';
import type { Asking } from './zone-minutes.ts';

/** A day in the ground as it went. */
export interface DayRecord extends DayBalance {
  readonly day: number;
  readonly facts: PlantingDay;
  readonly startMm: number;
  /** Minutes that its line ran; 0 where its shut-off was closed. */
  readonly minutes: number;
  readonly irrigationMm: number;
  /** Whether it was the week's last watering of the planting. */
  readonly isLast: boolean;
  /** What its morning knew would be missing of the goal of a planting that is kept, after the last watering; else 0. */
  readonly missedMm: number;
}

export class PlantingCourse {
  readonly facts: PlantingFacts;
  /** Minutes that it asked for in the week, in order: the latest stand. Infinity where no line could bring them. */
  requests: number[] = [];
  /** Days of the week on which its line is open, bit 0 = the first; undefined until they are known. */
  mask: number | undefined;
  /** Watering mornings of the week on which it was due. */
  dueOn: number[] = [];
  /** Of the week. */
  records: DayRecord[] = [];
  /** What was missing on mornings of the week on which it became due, or was still due from the week before. */
  toFillMm: number[] = [];
  /** What it is to be filled by, since the morning on which it became due; undefined where it is not due. */
  fillingMm: number | undefined;

  private depletionMm: number;
  /** Behind a shut-off: the filling that the week's first watering morning expects. */
  private filling: ExpectedFilling | undefined;
  private readonly garden: Garden;
  private readonly zone: GardenZone;
  private readonly ties: NearTies;

  constructor(garden: Garden, zone: GardenZone, facts: PlantingFacts, ties: NearTies) {
    this.garden = garden;
    this.zone = zone;
    this.facts = facts;
    this.ties = ties;
    this.depletionMm = facts.startMm;
  }

  startWeek(week: number): void {
    const { planting } = this.facts;
    const byHand = this.zone.choices.get(week)?.openDays?.get(planting.id);
    this.requests = [];
    this.records = [];
    this.dueOn = [];
    this.toFillMm = [];
    if (!planting.hasShutOff) this.mask = EVERY_DAY;
    else this.mask = byHand === undefined ? undefined : maskOf(this.zone.wateringDays, byHand);
  }

  /** Whether a morning is one of its own: in the ground, and not after the week's last watering. */
  isPresent(day: number): boolean {
    return this.facts.days[day]?.inGround === true && day <= (this.lastWatering(day) ?? -1);
  }

  hasLine(day: number): boolean {
    return (this.facts.days[day]?.netMmPerMinute ?? 0) > 0;
  }

  /** Looks whether a refill has become due. Behind a shut-off the morning is named on the first of the week. */
  lookWhetherDue(morning: number): void {
    const { planting } = this.facts;
    if (planting.watering === 'keep') return;
    const wasDue = this.fillingMm !== undefined;
    if (planting.hasShutOff && this.requests.length === 0) this.filling = this.expectFilling(morning);
    if (!wasDue && this.isDue(morning)) this.fillingMm = this.depletionMm;
    if (this.fillingMm === undefined) return;
    if (!wasDue || this.dueOn.length === 0) this.toFillMm.push(this.depletionMm);
    this.dueOn.push(morning);
  }

  private expectFilling(morning: number): ExpectedFilling | undefined {
    const { depletionMm } = this;
    if (this.fillingMm !== undefined) return { morning, depletionMm };
    const looks = this.morningsFrom(morning).map((each) => ({ morning: each, next: this.nextWatering(each) }));
    return expectedFilling(this.expectedOn(morning), looks, depletionMm, this.ties);
  }

  private isDue(morning: number): boolean {
    if (this.facts.planting.hasShutOff) return this.filling?.morning === morning && this.depletionMm > 0;
    const look = { morning, next: this.nextWatering(morning) };
    return isDueOn(this.expectedOn(morning), look, this.depletionMm, this.ties);
  }

  /** Whether it asks without any news: on its first watering morning of the week, and while a refill is due or has just been filled. */
  mustAskAnew(): boolean {
    const latest = this.requests.at(-1);
    if (latest === undefined) return true;
    return this.facts.planting.watering === 'refill' && (this.fillingMm !== undefined || latest > 0);
  }

  ask(morning: number): void {
    const { depletionMm } = this;
    const expected = this.expectedOn(morning);
    const netMmPerMinute = (day: number) => this.netOn(this.zone.wateringDays, day);
    if (this.facts.planting.watering === 'refill') {
      this.requests.push(this.fillingMm === undefined ? 0 : minutesFor(depletionMm, netMmPerMinute(morning)));
      return;
    }
    const last = this.lastWatering(morning);
    const goalMm = this.goalOn(morning);
    this.requests.push(equalMinutes({ expected, morning, depletionMm, goalMm, last, netMmPerMinute }));
  }

  /** Depletion to have at the end of the week's last watering, as it is known on a morning of the week. */
  goalOn(morning: number): number {
    const last = this.lastWatering(morning);
    return last === undefined ? 0 : this.goalAt(last, last, this.expectedOn(morning));
  }

  /** What it asks for, as the zone sees it on a morning. */
  asking(morning: number): Asking {
    const { planting } = this.facts;
    const passMm = passAbove(this.expectedOn(morning), morning, this.nextWatering(morning));
    const netMmPerMinute = this.netOn(this.zone.wateringDays, morning);
    return {
      id: planting.id,
      hasShutOff: planting.hasShutOff,
      minutes: this.requests.at(-1) ?? 0,
      litresPerMinute: netMmPerMinute * planting.areaM2,
      passes: (minutes) => this.ties.isClearlyAbove(this.depletionMm - minutes * netMmPerMinute, passMm),
    };
  }

  /**
   * On its first watering morning of the week, where nobody named the days. `minutes` are the zone's; `decides`: on each morning they will
   * be what it asks for.
   */
  chooseOpenDays(morning: number, minutes: number, decides: boolean): void {
    if (this.mask !== undefined) return;
    if (this.facts.planting.watering === 'refill') this.mask = this.maskToFill(morning, minutes, decides);
    else this.mask = this.maskToKeep(morning, minutes);
  }

  private maskToFill(morning: number, minutes: number, decides: boolean): number {
    const { filling, zone, ties } = this;
    const last = this.lastWatering(morning);
    if (filling === undefined || last === undefined) return 0;
    const netMmPerMinute = (day: number) => this.netOn(zone.wateringDays, day);
    const wanted = minutesFor(filling.depletionMm, netMmPerMinute(filling.morning));
    const own = decides && wanted < Number.POSITIVE_INFINITY ? sufficientRun(wanted, zone, ties).minutes : 0;
    const { wateringDays } = zone;
    const expected = this.expectedOn(morning);
    const question = { expected, filling, first: morning, last, wateringDays, netMmPerMinute };
    return fillingMask({ ...question, minutes: Math.max(minutes, own) }, ties);
  }

  private maskToKeep(morning: number, minutes: number): number {
    const { depletionMm } = this;
    const { wateringDays } = this.zone;
    const expected = this.expectedOn(morning);
    const askedOn = (mask: number) => {
      const last = lastReached(this.facts, mask, morning);
      if (last === undefined) return Number.POSITIVE_INFINITY;
      const goalMm = this.goalAt(last, this.lastWatering(morning) ?? last, expected);
      const netMmPerMinute = (day: number) => this.netOn(mask, day);
      return equalMinutes({ expected, morning, depletionMm, goalMm, last, netMmPerMinute });
    };
    return openMask({ wateringDays, minutes, asked: this.requests.at(-1) ?? 0, askedOn }, this.ties);
  }

  /** `open`: whether its shut-off is open, where that was written down. */
  passDay(day: number, zoneMinutes: number, open = isInMask(this.mask ?? 0, day)): void {
    const facts = this.facts.days[day];
    if (facts === undefined || !facts.inGround) return;
    const startMm = this.depletionMm;
    const minutes = open ? zoneMinutes : 0;
    const irrigationMm = minutes * facts.netMmPerMinute;
    const balance = realDay(facts, this.facts.tawMm, startMm, irrigationMm);
    const isLast = day === this.lastWatering(day);
    const missedMm = isLast && this.facts.planting.watering === 'keep' ? this.missedOn(day, irrigationMm) : 0;
    this.records.push({ ...balance, day, facts, startMm, minutes, irrigationMm, isLast, missedMm });
    this.depletionMm = balance.endMm;
    // A filling counts when it is brought, though the plants use some of it on the same day.
    const leastMm = Math.min(startMm - irrigationMm, balance.endMm);
    if (this.fillingMm !== undefined && isFilled(leastMm, this.fillingMm, this.ties)) this.fillingMm = undefined;
  }

  private missedOn(day: number, irrigationMm: number): number {
    const { etcMm, rainMm } = this.expectedOn(day)(day);
    return Math.max(0, this.depletionMm + etcMm - rainMm - irrigationMm - this.goalOn(day));
  }

  /** Depletion to have at the end of a day, so that it lasts until the watering after the week's last. */
  private goalAt(day: number, lastOfWeek: number, expected: Expectation): number {
    const targetMm = this.facts.days[day]?.targetMm ?? 0;
    return goalAt({ expected, targetMm, last: day, next: this.nextWatering(lastOfWeek) });
  }

  private expectedOn(morning: number): Expectation {
    return expectationOn(this.garden, this.facts, morning);
  }

  private lastWatering(day: number): number | undefined {
    return lastWatering(this.facts, this.zone.wateringDays, Math.floor(day / 7));
  }

  private nextWatering(day: number): number {
    return nextWatering(this.facts, this.zone.wateringDays, day);
  }

  /** Its watering mornings from this one to the week's last watering. */
  private morningsFrom(morning: number): readonly number[] {
    const last = this.lastWatering(morning) ?? morning;
    return daysFrom(morning, last).filter((day) => isInMask(this.zone.wateringDays, day) && this.isPresent(day));
  }

  private netOn(mask: number, day: number): number {
    return isInMask(mask, day) ? (this.facts.days[day]?.netMmPerMinute ?? 0) : 0;
  }
}

/** Without a shut-off its line is always open. */
const EVERY_DAY = 0b1111111;

/** Minutes that bring a depth; Infinity where no line brings any. */
function minutesFor(depthMm: number, netMmPerMinute: number): number {
  if (depthMm === 0) return 0;
  return netMmPerMinute > 0 ? depthMm / netMmPerMinute : Number.POSITIVE_INFINITY;
}
