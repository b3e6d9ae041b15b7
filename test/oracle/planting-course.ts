/** A planting on its way through the season: what it asks for on a morning, and what becomes of its soil by the evening. Depths in mm. */
import type { Garden, GardenZone } from '../../src/engine/garden.ts';
import { isShortOn, overAll, realDay, rooted, wettedAnew } from './day.ts';
import { type Expectation, expectationOn } from './expectation.ts';
import type { NearTies } from './near-ties.ts';
import { maskOf, openMask } from './open-days.ts';
import type { PlantingDay, PlantingFacts } from './planting-facts.ts';
import { type ExpectedFilling, expectedFilling, fillingMask, isDueOn, isFilled } from './refill.ts';
import { afterLastRun, equalMinutes, goalAt, minutesNeverShort, passAbove } from './request.ts';
import { type DayBalance, type Depletion, enteringMm, type Stores } from './root-zone-day.ts';
import { sufficientRun } from './rounding.ts';
import { expectedOfWetted } from './two-stores-day.ts';
import {
  daysFrom,
  isInMask,
  lastReached,
  lastWatering,
  mayAsk,
  nextWatering,
  plannedIn,
  type Watering,
  wateringMask,
  wateringOf,
  weekOf,
} from './watering-days.ts';
import type { Asking } from './zone-minutes.ts';

/** A day in the ground as it went. */
export interface DayRecord extends DayBalance {
  readonly day: number;
  readonly facts: PlantingDay;
  /** At its start, before its roots reach new soil; over all of the ground. */
  readonly startMm: number;
  /** After they have. */
  readonly start: Depletion;
  readonly isOpen: boolean;
  /** Minutes that its line ran; 0 where its shut-off was closed. */
  readonly minutes: number;
  readonly irrigationMm: number;
  /** What of it came to where its plants drink; the rest washed salt away. */
  readonly enteringMm: number;
  /** Minutes that its morning asked for less, since plants are expected to be short on a day up to the week's last watering. */
  readonly sparedMinutes: number;
  /** Whether it was the week's last watering of the planting. */
  readonly isLast: boolean;
  /** Of `irrigationMm`, what its line brought in more minutes than it asked for that morning. */
  readonly unaskedMm: number;
  /** What its morning knew would be missing of the goal of a planting that is kept, after the last watering; else 0. */
  readonly missedMm: number;
  readonly isShort: boolean;
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
  /** Of the week. */
  stores: Stores;
  /** Behind a shut-off: the filling that the week's first watering morning expects. */
  filling: ExpectedFilling | undefined;

  /** Minutes that it asks for today: 0 on a day that is no watering morning, or no morning of its own. */
  private askedToday = 0;
  private sparedToday = 0;
  private ground: Depletion;
  /** At the start of the day, over all of the ground. */
  private startMm = 0;
  /** What the wetted store has to bear on each day, as it was expected when the dry one was last looked at, no later than that day; over wetted ground. */
  private expectedOfWetted: readonly number[] = [];
  /** Equal runs of a day of the week. */
  private runsADay = 1;
  private readonly garden: Garden;
  private readonly zone: GardenZone;
  private readonly ties: NearTies;
  private readonly waters: Watering;

  constructor(garden: Garden, zone: GardenZone, facts: PlantingFacts, ties: NearTies) {
    this.garden = garden;
    this.zone = zone;
    this.waters = wateringOf(zone);
    this.facts = facts;
    this.ties = ties;
    this.ground = { wettedMm: facts.startMm, dryMm: facts.startMm };
    this.stores = facts.storesIn(0);
  }

  /** Another that goes on from where it is, through a week that comes as it is expected on its first day. */
  asExpected(garden: Garden, week: number): PlantingCourse {
    const first = 7 * week;
    const expected = expectationOn(garden, this.facts, first);
    const days = this.facts.days.map((day, index): PlantingDay => {
      if (weekOf(index) !== week) return day;
      const { etcMm, rawMm, rainMm } = expected(index);
      return { ...day, etcMm, rawMm, soakedMm: rainMm };
    });
    return this.goingOn(garden, days);
  }

  /** Another that goes on from where it is. */
  copy(): PlantingCourse {
    return this.goingOn(this.garden, this.facts.days);
  }

  private goingOn(garden: Garden, days: readonly PlantingDay[]): PlantingCourse {
    const other = new PlantingCourse(garden, this.zone, { ...this.facts, days }, this.ties);
    other.ground = this.ground;
    other.fillingMm = this.fillingMm;
    return other;
  }

  /** `runsADay`: of the zone in the week. */
  startWeek(week: number, runsADay: number): void {
    this.runsADay = runsADay;
    const { planting } = this.facts;
    this.wetIn(week);
    this.filling = undefined;
    const byHand = this.zone.choices.get(week)?.openDays?.get(planting.id);
    this.requests = [];
    this.records = [];
    this.dueOn = [];
    this.toFillMm = [];
    if (!planting.hasShutOff) this.mask = EVERY_DAY;
    else this.mask = byHand === undefined ? undefined : maskOf(wateringMask(this.zone, week), byHand);
  }

  /** Lines that are laid anew wet another part of its ground. */
  private wetIn(week: number): void {
    const { storesIn, days } = this.facts;
    this.stores = storesIn(week);
    if (week > 0 && days[7 * week - 1]?.inGround === true) {
      this.ground = wettedAnew(this.ground, storesIn(week - 1).share, this.stores.share);
    }
  }

  /** Whether a morning is one of its own: it may ask, and not after the week's last watering. */
  isPresent(day: number): boolean {
    return mayAsk(this.facts.days[day]) && day <= (this.lastWatering(day) ?? -1);
  }

  hasLine(day: number): boolean {
    return mayAsk(this.facts.days[day]) && (this.facts.days[day]?.netMmPerMinute ?? 0) > 0;
  }

  /** Looks whether a refill has become due. Behind a shut-off the morning is named on the first of the week. */
  lookWhetherDue(morning: number): void {
    const { planting } = this.facts;
    if (planting.watering === 'keep') return;
    const wasDue = this.fillingMm !== undefined;
    if (planting.hasShutOff && this.requests.length === 0) this.filling = this.expectFilling(morning);
    if (!wasDue && this.isDue(morning)) this.fillingMm = this.ground.wettedMm;
    if (this.fillingMm === undefined) return;
    if (!wasDue || this.dueOn.length === 0) this.toFillMm.push(this.ground.wettedMm);
    this.dueOn.push(morning);
  }

  /** Whether the zone may run for its filling: a refill behind a shut-off that will be due in the week. */
  get isFiller(): boolean {
    const { watering, hasShutOff } = this.facts.planting;
    return watering === 'refill' && hasShutOff && this.filling !== undefined;
  }

  private expectFilling(morning: number): ExpectedFilling | undefined {
    const depletionMm = this.ground.wettedMm;
    if (this.fillingMm !== undefined) return { morning, depletionMm };
    const looks = this.morningsFrom(morning).map((each) => ({ morning: each, next: this.nextWatering(each) }));
    return expectedFilling(this.expectedOn(morning), looks, depletionMm, this.ties);
  }

  private isDue(morning: number): boolean {
    if (this.facts.planting.hasShutOff) return this.filling?.morning === morning && this.ground.wettedMm > 0;
    const look = { morning, next: this.nextWatering(morning) };
    return isDueOn(this.expectedOn(morning), look, this.ground.wettedMm, this.ties);
  }

  /** A pot that is kept and always open, once anything was read or forecast since the day before the week: it asks for each morning by itself. */
  asksByMorning(hasHeard: boolean): boolean {
    const { watering, hasShutOff } = this.facts.planting;
    return hasHeard && this.stores.isPot && watering === 'keep' && !hasShutOff;
  }

  /** Whether it asks without any news: on its first watering morning of the week, and while a refill is due or has just been filled. */
  mustAskAnew(): boolean {
    const latest = this.requests.at(-1);
    if (latest === undefined) return true;
    return this.facts.planting.watering === 'refill' && (this.fillingMm !== undefined || latest > 0);
  }

  ask(morning: number, hasHeard: boolean): void {
    if (this.asksByMorning(hasHeard)) this.requests.push(this.minutesToFillPot(morning));
    else this.askForWeek(morning);
  }

  /** That replace what is missing, and what goes on the day before its last run. */
  private minutesToFillPot(morning: number): number {
    const expected = this.expectedOn(morning);
    const { etcMm, rainMm } = expected(morning);
    const endMm = this.ground.wettedMm + etcMm - rainMm;
    const missingMm = Math.max(0, endMm - afterLastRun(expected, morning, this.runsADay));
    return minutesFor(missingMm, this.netOn(this.waters, morning));
  }

  private askForWeek(morning: number): void {
    const depletionMm = this.ground.wettedMm;
    const expected = this.expectedOn(morning);
    const netMmPerMinute = (day: number) => this.netOn(this.waters, day);
    if (this.facts.planting.watering === 'refill') {
      this.requests.push(this.fillingMm === undefined ? 0 : minutesFor(depletionMm, netMmPerMinute(morning)));
      return;
    }
    const last = this.lastWatering(morning);
    const goalMm = this.goalOn(morning);
    const question = { expected, morning, depletionMm, goalMm, last, netMmPerMinute, ...this.wayOfAsking };
    const minutes = equalMinutes(question);
    this.sparedToday = minutes < Number.POSITIVE_INFINITY ? minutesNeverShort(question) - minutes : 0;
    this.requests.push(minutes);
  }

  /** On a watering morning of its own, once it has asked: what stands, be it asked anew or before. */
  noteAsked(): void {
    this.askedToday = this.requests.at(-1) ?? 0;
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
    const netMmPerMinute = this.netOn(this.waters, morning);
    const broughtMmPerMinute = this.waters(morning) ? (this.facts.days[morning]?.netMmPerMinute ?? 0) : 0;
    return {
      id: planting.id,
      hasShutOff: planting.hasShutOff,
      minutes: this.requests.at(-1) ?? 0,
      litresPerMinute: broughtMmPerMinute * planting.areaM2,
      passes: (minutes) => this.ties.isClearlyAbove(this.ground.wettedMm - minutes * netMmPerMinute, passMm),
    };
  }

  /**
   * On its first watering morning of the week, where nobody named the days. `minutes` are the zone's; `fillers`: plantings whose filling the
   * zone will run for.
   */
  chooseOpenDays(morning: number, minutes: number, fillers: readonly PlantingCourse[]): void {
    if (this.mask !== undefined) return;
    const isFilled = this.facts.planting.watering === 'refill';
    const named = isFilled ? this.maskToFill(morning, minutes, fillers) : this.maskToKeep(morning, minutes);
    // It is closed on the days before, and on those on which it rests.
    const before = 2 ** (morning % 7) - 1;
    const week = 7 * weekOf(morning);
    const resting = daysFrom(week, week + 6).reduce((mask, day) => {
      return this.facts.days[day]?.isResting === true ? mask + 2 ** (day % 7) : mask;
    }, 0);
    this.mask = named & ~before & ~resting;
  }

  private maskToFill(morning: number, minutes: number, fillers: readonly PlantingCourse[]): number {
    const { filling, zone, ties } = this;
    const last = this.lastWatering(morning);
    if (filling === undefined || last === undefined) return 0;
    const netMmPerMinute = (day: number) => this.netOn(this.waters, day);
    const wateringDays = wateringMask(zone, weekOf(morning));
    const expected = this.expectedOn(morning);
    const minutesOn = (day: number) => Math.max(minutes, ...fillers.map((filler) => filler.fillingRunOn(day)));
    const question = { expected, filling, first: morning, last, wateringDays, netMmPerMinute, minutesOn };
    return fillingMask(question, ties);
  }

  /** Minutes of the run that brings its expected filling at once, from the morning of that on; before it 0. */
  private fillingRunOn(day: number): number {
    const { filling, zone, ties, runsADay } = this;
    if (filling === undefined || day < filling.morning) return 0;
    const wanted = minutesFor(filling.depletionMm, this.netOn(this.waters, filling.morning));
    return wanted < Number.POSITIVE_INFINITY ? sufficientRun(wanted, { ...zone, runsADay }, ties).minutes : 0;
  }

  private maskToKeep(morning: number, minutes: number): number {
    const depletionMm = this.ground.wettedMm;
    const wateringDays = wateringMask(this.zone, weekOf(morning));
    const expected = this.expectedOn(morning);
    const askedOn = (mask: number) => {
      const isOpen = (day: number) => isInMask(mask, day);
      const last = lastReached(this.facts, isOpen, morning);
      if (last === undefined) return Number.POSITIVE_INFINITY;
      const goalMm = this.goalAt(last, this.lastWatering(morning) ?? last, expected);
      const netMmPerMinute = (day: number) => this.netOn(isOpen, day);
      return equalMinutes({ expected, morning, depletionMm, goalMm, last, netMmPerMinute, ...this.wayOfAsking });
    };
    return openMask({ wateringDays, minutes, asked: this.requests.at(-1) ?? 0, askedOn }, this.ties);
  }

  /** Its roots reach new soil in the morning, before anybody looks. */
  beginDay(day: number): void {
    this.askedToday = 0;
    this.sparedToday = 0;
    this.startMm = overAll(this.stores, this.ground);
    this.ground = rooted(this.ground, this.facts.days[day]?.rootedMm ?? 0);
  }

  /** Looks at the dry store, and expects anew what the wetted one will have to bear from that day on. */
  lookAtDryStore(day: number): void {
    const { stores } = this;
    const { days } = this.facts;
    if (stores.share === 1) return;
    const expected = expectationOn(this.garden, this.facts, day);
    const ahead = daysFrom(day, days.length - 1).map((each) => {
      return { ...expected(each), isEstablishing: days[each]?.isEstablishing === true };
    });
    const mm = expectedOfWetted(ahead, stores.share, this.ground.dryMm);
    const before = daysFrom(0, day - 1).map((each) => this.expectedOfWetted[each] ?? Number.NaN);
    this.expectedOfWetted = [...before, ...mm];
  }

  /** `runs`: equal parts in which the zone's minutes come; `open`: whether its shut-off is open, where that was written down. */
  passDay(day: number, zone: { readonly minutes: number; readonly runs: number }, written?: boolean): void {
    const facts = this.facts.days[day];
    if (facts === undefined || !facts.inGround) return;
    const isOpen = written ?? isInMask(this.mask ?? 0, day);
    const { startMm, stores, ground: start } = this;
    const minutes = isOpen ? zone.minutes : 0;
    const irrigationMm = minutes * facts.netMmPerMinute;
    const { leachingFraction } = this.facts;
    const balance = realDay(facts, stores, start, { irrigationMm, runs: zone.runs, leachingFraction });
    const enters = enteringMm({ irrigationMm, leachingFraction });
    const isLast = day === this.lastWatering(day);
    const missedMm = isLast && this.facts.planting.watering === 'keep' ? this.missedOn(day, enters) : 0;
    const isShort = !facts.isResting && isShortOn(facts, stores, { ...balance, start, enteringMm: enters }, this.ties);
    const unaskedMm = Math.max(0, minutes - this.askedToday) * facts.netMmPerMinute;
    const brought = { isOpen, minutes, irrigationMm, enteringMm: enters, sparedMinutes: this.sparedToday, unaskedMm };
    this.records.push({ ...balance, day, facts, startMm, start, ...brought, isLast, missedMm, isShort });
    this.ground = balance.end;
    // A filling counts when it is brought, though the plants use some of it on the same day.
    const leastMm = Math.min(start.wettedMm - enters / stores.share, balance.end.wettedMm);
    if (this.fillingMm !== undefined && isFilled(leastMm, this.fillingMm, this.ties)) this.fillingMm = undefined;
  }

  /** Over all of the ground. */
  private missedOn(day: number, broughtMm: number): number {
    const { etcMm, rainMm } = this.expectedOn(day)(day);
    const { share } = this.stores;
    const endMm = this.ground.wettedMm + etcMm - rainMm - broughtMm / share;
    return share * Math.max(0, endMm - this.goalOn(day));
  }

  /** Depletion to have at the end of a day, so that it lasts until the watering after the week's last. */
  private goalAt(day: number, lastOfWeek: number, expected: Expectation): number {
    const targetMm = this.facts.days[day]?.targetMm ?? 0;
    return goalAt({ expected, targetMm, last: day, next: this.nextWatering(lastOfWeek), potRuns: this.potRuns });
  }

  /** Of the store that is watered. */
  private expectedOn(morning: number): Expectation {
    const expected = expectationOn(this.garden, this.facts, morning);
    if (this.stores.share === 1) return expected;
    return (day) => ({ ...expected(day), etcMm: this.expectedOfWetted[day] ?? Number.NaN });
  }

  private get wayOfAsking() {
    return { potRuns: this.potRuns, usesLessWhenShort: this.facts.isWhollyWetted };
  }

  private get potRuns(): number | undefined {
    return this.stores.isPot ? this.runsADay : undefined;
  }

  private lastWatering(day: number): number | undefined {
    return lastWatering(this.facts, this.waters, weekOf(day));
  }

  private nextWatering(day: number): number {
    return nextWatering(this.facts, plannedIn(this.zone, weekOf(day)), day);
  }

  /** Its watering mornings from this one to the week's last watering. */
  private morningsFrom(morning: number): readonly number[] {
    const last = this.lastWatering(morning) ?? morning;
    return daysFrom(morning, last).filter((day) => this.waters(day) && this.isPresent(day));
  }

  /** Of what a minute brings the store that is watered, what it may count on. */
  private netOn(waters: Watering, day: number): number {
    if (!waters(day) || !mayAsk(this.facts.days[day])) return 0;
    const { days, leachingFraction } = this.facts;
    return ((days[day]?.netMmPerMinute ?? 0) / this.stores.share) * (1 - leachingFraction);
  }
}

/** Without a shut-off its line is always open. */
const EVERY_DAY = 0b1111111;

/** Minutes that bring a depth; Infinity where no line brings any. */
function minutesFor(depthMm: number, netMmPerMinute: number): number {
  if (depthMm === 0) return 0;
  return netMmPerMinute > 0 ? depthMm / netMmPerMinute : Number.POSITIVE_INFINITY;
}
