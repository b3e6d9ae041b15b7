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
  /** On its last watering day of the week: what the morning knew would be missing of its goal that evening. */
  readonly missedMm: number | undefined;
}

export class PlantingCourse {
  readonly facts: PlantingFacts;
  /** Of the week, in order: the first and the latest tell what it asked for and its goal. */
  requests: Request[] = [];
  /** Days of the week on which its line is open, bit 0 = the first; undefined until they are known. */
  mask: number | undefined;
  /** Watering mornings of the week on which it was due. */
  dueOn: number[] = [];
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
    this.dueOn = [];
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

  /** Looks whether it has become due. Behind a shut-off it looks once a week, a week ahead. */
  lookWhetherDue(morning: number): void {
    if (this.fillingMm === undefined && this.becomesDue(morning)) this.fillingMm = this.depletionMm;
    if (this.fillingMm !== undefined) this.dueOn.push(morning);
  }

  /** Whether a line brings it water on some watering day from this morning to the week's last. */
  isReached(morning: number): boolean {
    return this.asking(morning).gainMm > 0;
  }

  private becomesDue(morning: number): boolean {
    const { planting } = this.facts;
    if (planting.watering === 'keep' || (planting.hasShutOff && this.requests.length > 0)) return false;
    // A full one has nothing to fill.
    if (!this.ties.isClearlyAbove(this.depletionMm, 0)) return false;
    const looks = (planting.hasShutOff ? this.morningsFrom(morning) : [morning]).map((each) => {
      return { morning: each, next: this.nextWatering(each) };
    });
    const expected = this.expectedOn(morning);
    return isDueInWeek(expected, { mornings: looks, depletionMm: this.depletionMm }, this.ties);
  }

  /** Whether this is the first watering morning of the week, or its need began or ended since it last asked. */
  mustAskAnew(): boolean {
    const latest = this.requests.at(-1);
    if (latest === undefined) return true;
    if (this.facts.planting.hasShutOff || this.fillingMm === latest.fillingMm) return false;
    return this.fillingMm !== undefined || latest.minutes > 0;
  }

  ask(morning: number): void {
    const { depletionMm, fillingMm } = this;
    const expected = this.expectedOn(morning);
    const last = this.lastWatering(morning);
    const isLeftAlone = this.facts.planting.watering === 'refill' && fillingMm === undefined;
    const netMmPerMinute = (day: number) => this.netOn(this.zone.wateringDays, day);
    const goalMm = this.goalOn(morning);
    const minutes = isLeftAlone ? 0 : equalMinutes({ expected, morning, depletionMm, goalMm, last, netMmPerMinute });
    this.requests.push({ minutes, fillingMm });
  }

  /** Depletion to have at the end of the week's last watering, as it is known on a morning of the week. */
  goalOn(morning: number): number {
    const last = this.lastWatering(morning);
    return last === undefined ? 0 : this.goalAt(last, last, this.expectedOn(morning));
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
    const isLast = day === this.lastWatering(day);
    const missedMm = isLast ? this.missedOn(day, irrigationMm) : undefined;
    this.records.push({ ...balance, day, facts, startMm, minutes, irrigationMm, missedMm });
    this.depletionMm = balance.endMm;
    if (this.fillingMm !== undefined && isFilled(balance.endMm, this.fillingMm, this.ties)) this.fillingMm = undefined;
  }

  private missedOn(day: number, irrigationMm: number): number {
    const { etcMm, rainMm } = this.expectedOn(day)(day);
    return Math.max(0, this.depletionMm + etcMm - rainMm - irrigationMm - this.goalOn(day));
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
    return daysFrom(morning, last).filter((day) => isInMask(this.zone.wateringDays, day) && this.isPresent(day));
  }

  private netOn(mask: number, day: number): number {
    return isInMask(mask, day) ? (this.facts.days[day]?.netMmPerMinute ?? 0) : 0;
  }
}

/** Without a shut-off its line is always open. */
const EVERY_DAY = 0b1111111;
