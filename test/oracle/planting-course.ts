/** A planting on its way through the season: what it asks for on a morning, and what becomes of its soil by the evening. Depths in mm. */
import type { Garden, GardenZone } from '../../src/engine/garden.ts';
import { type DayBalance, realDay } from './day.ts';
import { type Expectation, expectationOn } from './expectation.ts';
import type { NearTies } from './near-ties.ts';
import { maskOf, openMask } from './open-days.ts';
import type { PlantingDay, PlantingFacts } from './planting-facts.ts';
import { isDueInWeek, isFilled } from './refill.ts';
import { equalMinutes, gainFrom, goalAt, passAbove } from './request.ts';
import { daysFrom, isInMask, lastReached, lastWatering, nextWatering } from './watering-days.ts';
import type { Asking } from './zone-minutes.ts';

/** What was asked for on the morning on which it was last asked. */
export interface Request {
  readonly minutes: number;
  readonly goalMm: number;
  /** What it was to be filled by; undefined where it was not due. */
  readonly fillingMm: number | undefined;
}

/** A day in the ground as it went. */
export interface DayRecord extends DayBalance {
  readonly day: number;
  readonly facts: PlantingDay;
  readonly startMm: number;
  /** Minutes that its line ran; 0 where its shut-off was closed. */
  readonly minutes: number;
  readonly irrigationMm: number;
  readonly isDue: boolean;
  /** On its last watering day of the week: what the morning knew would be missing of its goal that evening. */
  readonly missedMm: number | undefined;
}

export class PlantingCourse {
  readonly facts: PlantingFacts;
  /** Of the week, in order: the first and the latest tell what it asked for and its goal. */
  requests: Request[] = [];
  /** Of the week; undefined until its days are known. */
  mask: number | undefined;
  /** Of the week. */
  records: DayRecord[] = [];
  /** What it is to be filled by, since the morning on which it became due; undefined where it is not due. */
  fillingMm: number | undefined;

  private depletionMm: number;
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
    if (!planting.hasShutOff) this.mask = EVERY_DAY;
    else this.mask = byHand === undefined ? undefined : maskOf(this.zone.wateringDays, byHand);
  }

  isInGround(day: number): boolean {
    return this.facts.days[day]?.inGround === true;
  }

  hasLine(day: number): boolean {
    return (this.facts.days[day]?.netMmPerMinute ?? 0) > 0;
  }

  /** Looks whether it has become due. Behind a shut-off it looks once a week, a week ahead. */
  lookWhetherDue(morning: number): void {
    const { planting } = this.facts;
    if (planting.watering === 'keep' || this.fillingMm !== undefined) return;
    if (planting.hasShutOff && this.requests.length > 0) return;
    const looks = (planting.hasShutOff ? this.morningsFrom(morning) : [morning]).map((each) => {
      return { morning: each, next: this.nextWatering(each) };
    });
    const expected = this.expectedOn(morning);
    if (isDueInWeek(expected, { mornings: looks, depletionMm: this.depletionMm }, this.ties)) {
      this.fillingMm = this.depletionMm;
    }
  }

  /** Whether this is the first watering morning of the week, or it became due or was filled since it last asked. */
  mustAskAnew(): boolean {
    const latest = this.requests.at(-1);
    if (latest === undefined) return true;
    return !this.facts.planting.hasShutOff && latest.fillingMm !== this.fillingMm;
  }

  ask(morning: number): void {
    const { planting } = this.facts;
    const expected = this.expectedOn(morning);
    const last = this.lastWatering(morning);
    const goalMm = last === undefined ? 0 : this.goalAt(last, last, expected);
    const isLeftAlone = planting.watering === 'refill' && this.fillingMm === undefined;
    const netMmPerMinute = (day: number) => this.netOn(this.zone.wateringDays, day);
    const minutes = isLeftAlone
      ? 0
      : equalMinutes({ expected, morning, depletionMm: this.depletionMm, goalMm, last, netMmPerMinute });
    this.requests.push({ minutes, goalMm, fillingMm: this.fillingMm });
  }

  /** What it asks for, as the zone sees it on a morning. */
  asking(morning: number): Asking {
    const { planting } = this.facts;
    const last = this.lastWatering(morning);
    const passMm = passAbove(this.expectedOn(morning), morning, this.nextWatering(morning));
    const netMmPerMinute = (day: number) => this.netOn(this.zone.wateringDays, day);
    return {
      id: planting.id,
      hasShutOff: planting.hasShutOff,
      areaM2: planting.areaM2,
      minutes: this.requests.at(-1)?.minutes ?? 0,
      gainMm: gainFrom({ last, netMmPerMinute }, morning),
      passes: (minutes) => {
        const wateredMm = this.depletionMm - minutes * netMmPerMinute(morning);
        return this.ties.isClearlyAbove(wateredMm, passMm);
      },
    };
  }

  /** On its first watering morning of the week, where nobody named the days: `minutes` are the zone's. */
  chooseOpenDays(morning: number, minutes: number): void {
    if (this.mask !== undefined) return;
    const { wateringDays } = this.zone;
    const expected = this.expectedOn(morning);
    const askedOn = (mask: number) => {
      const last = lastReached(this.facts, mask, morning);
      if (last === undefined) return Number.POSITIVE_INFINITY;
      const goalMm = this.goalAt(last, this.lastWatering(morning) ?? last, expected);
      const netMmPerMinute = (day: number) => this.netOn(mask, day);
      return equalMinutes({ expected, morning, depletionMm: this.depletionMm, goalMm, last, netMmPerMinute });
    };
    const asked = this.requests.at(-1)?.minutes ?? 0;
    this.mask = openMask({ wateringDays, minutes, asked, askedOn }, this.ties);
  }

  /** `open`: whether its shut-off is open, where that was written down. */
  passDay(day: number, zoneMinutes: number, open = isInMask(this.mask ?? 0, day)): void {
    const facts = this.facts.days[day];
    if (facts === undefined || !facts.inGround) return;
    const startMm = this.depletionMm;
    const minutes = open ? zoneMinutes : 0;
    const irrigationMm = minutes * facts.netMmPerMinute;
    const balance = realDay(facts, this.facts.tawMm, startMm, irrigationMm);
    const isDue = this.fillingMm !== undefined;
    const isLast = day === this.lastWatering(day);
    const missedMm = isLast ? this.missedOn(day, irrigationMm) : undefined;
    this.records.push({ ...balance, day, facts, startMm, minutes, irrigationMm, isDue, missedMm });
    this.depletionMm = balance.endMm;
    if (this.fillingMm !== undefined && isFilled(balance.endMm, this.fillingMm, this.ties)) this.fillingMm = undefined;
  }

  private missedOn(day: number, irrigationMm: number): number {
    if (this.facts.planting.watering === 'refill' && this.fillingMm === undefined) return 0;
    const { etcMm, rainMm } = this.expectedOn(day)(day);
    const goalMm = this.requests.at(-1)?.goalMm ?? 0;
    return Math.max(0, this.depletionMm + etcMm - rainMm - irrigationMm - goalMm);
  }

  /** Depletion to have at the end of a day, so that it lasts until the watering after the week's last. */
  private goalAt(day: number, lastOfWeek: number, expected: Expectation): number {
    if (this.facts.planting.watering === 'refill') return 0;
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
    return daysFrom(morning, last).filter((day) => isInMask(this.zone.wateringDays, day) && this.isInGround(day));
  }

  private netOn(mask: number, day: number): number {
    return isInMask(mask, day) ? (this.facts.days[day]?.netMmPerMinute ?? 0) : 0;
  }
}

/** Without a shut-off its line is open whenever the zone runs. */
const EVERY_DAY = 0b1111111;
