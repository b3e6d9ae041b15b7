/** A zone on its way through the season, morning by morning: each knows what was read until yesterday and forecast until today. */
import type { Garden, GardenZone } from '../../src/engine/garden.ts';
import { type GivenWeek, givenWeek } from './given.ts';
import { type NearTies, TOLERANCE } from './near-ties.ts';
import type { PlantingCourse } from './planting-course.ts';
import { nearestRun, type Timer } from './rounding.ts';
import { runsADay } from './runs-a-day.ts';
import { daysFrom, wateringOf } from './watering-days.ts';
import type { WeatherDay } from './weather.ts';
import { type Decision, decide, decidersOf, NO_DECISION } from './zone-minutes.ts';

export interface ZoneWeekRun {
  /** What a cut leaves of its minutes. */
  readonly kept: number;
  readonly given: GivenWeek | undefined;
  /** Equal runs of a day that the zone's pots want; 1 without any. */
  readonly runsADay: number;
  /** Seven of each. */
  readonly days: readonly ZoneDay[];
}

export interface ZoneDay {
  readonly minutes: number;
  /** Minutes that a cut took. */
  readonly cutMinutes: number;
  readonly cycles: number;
  /** What stood on a watering morning; undefined on other days. */
  readonly decision: Decision | undefined;
  /** Whether it was made that morning. */
  readonly isAnew: boolean;
}

interface ZoneInput {
  readonly garden: Garden;
  readonly zone: GardenZone;
  readonly weather: readonly WeatherDay[];
  readonly ties: NearTies;
}

export class ZoneCourse {
  private readonly input: ZoneInput;
  private readonly courses: readonly PlantingCourse[];
  /** Of the week. */
  private decision: Decision = NO_DECISION;
  private decidedOn: number | undefined;
  /** Minutes of each day of the week without a cut; undefined where none is taken. */
  private uncut: readonly number[] | undefined;
  private kept = 1;
  private runsADay = 1;
  /** When the dry stores were looked at last. */
  private lookedOn = 0;

  constructor(input: ZoneInput, courses: readonly PlantingCourse[]) {
    this.input = input;
    this.courses = courses;
  }

  /** `kept`: what a cut leaves of each morning's minutes. */
  runWeek(week: number, kept: number): ZoneWeekRun {
    this.kept = kept;
    const { zone, ties } = this.input;
    const given = givenWeek(zone, week);
    this.uncut = kept < 1 ? this.withoutCut(week) : undefined;
    this.decidedOn = undefined;
    this.runsADay = runsADay(zone, this.courses, week, ties);
    for (const course of this.courses) course.startWeek(week, this.runsADay);
    return {
      kept,
      given,
      runsADay: this.runsADay,
      days: daysFrom(7 * week, 7 * week + 6).map((day) => this.runDay(day, given)),
    };
  }

  /** Minutes of each day if the zone went on from where it is with nothing taken. */
  private withoutCut(week: number): readonly number[] {
    const other = new ZoneCourse(
      this.input,
      this.courses.map((course) => course.copy()),
    );
    return other.runWeek(week, 1).days.map(({ minutes }) => minutes);
  }

  private runDay(day: number, given: GivenWeek | undefined): ZoneDay {
    const isMorning = this.isWateringMorning(day);
    for (const course of this.courses) course.beginDay(day);
    const isNews = wateringOf(this.input.zone)(day) && this.hasNewsSince(this.lookedOn, day);
    if (day % 7 === 0 || isNews) this.lookAtDryStores(day);
    if (isMorning) this.decideOn(day, given);
    const minutes = given?.minutes[day % 7];
    const run = minutes === undefined ? this.computedRun(day, isMorning) : this.inCycles(minutes);
    const runs = run.minutes > 0 ? this.runsADay : 1;
    for (const course of this.courses) {
      const { hasShutOff, id } = course.facts.planting;
      course.passDay(day, { minutes: run.minutes, runs }, hasShutOff ? given?.open(day % 7)?.has(id) : undefined);
    }
    const decision = isMorning ? this.decision : undefined;
    const cutMinutes = this.uncut === undefined ? 0 : (this.uncut[day % 7] ?? 0) - run.minutes;
    return {
      ...run,
      cutMinutes,
      decision,
      isAnew: isMorning && this.decidedOn === day,
    };
  }

  private lookAtDryStores(day: number): void {
    this.lookedOn = day;
    for (const course of this.courses) course.lookAtDryStore(day);
  }

  /** A watering day on which a line brings water to a planting that is in the ground and may ask. */
  private isWateringMorning(day: number): boolean {
    return wateringOf(this.input.zone)(day) && this.courses.some((course) => course.hasLine(day));
  }

  private computedRun(day: number, isMorning: boolean) {
    if (!isMorning) return NO_DECISION.run;
    return this.uncut === undefined ? this.decision.run : this.inCycles(this.cutRun(this.uncut[day % 7] ?? 0));
  }

  /** Whole steps of what is left. */
  private cutRun(minutes: number): number {
    const { timerStepMinutes } = this.input.zone;
    return Math.floor((minutes * this.kept) / timerStepMinutes + TOLERANCE) * timerStepMinutes;
  }

  private get timer(): Timer {
    return { ...this.input.zone, runsADay: this.runsADay };
  }

  /**
   * Run as it is: where the timer can be set to just these minutes, in the cycles of that setting; else in as many as the soil needs and the timer
   * can start.
   */
  private inCycles(minutes: number) {
    const { longestCycleMinutes, startsADay } = this.input.zone;
    const nearest = nearestRun(minutes, this.timer, this.input.ties);
    if (!this.input.ties.isClearlyAbove(Math.abs(nearest.minutes - minutes), 0)) {
      return { minutes, cycles: nearest.cycles };
    }
    const cycles = Math.ceil(minutes / longestCycleMinutes - 1e-9);
    const rounds = Math.min(Math.floor(startsADay / this.runsADay), Math.max(1, Math.ceil(cycles / this.runsADay)));
    return { minutes, cycles: minutes === 0 ? 0 : rounds * this.runsADay };
  }

  /** Without news, and with nobody who decides asking anew, the number stands. */
  private decideOn(day: number, given: GivenWeek | undefined): void {
    const { zone, ties } = this.input;
    const isNews = this.decidedOn === undefined || this.hasNewsSince(this.decidedOn, day);
    const there = this.courses.filter((course) => course.isPresent(day));
    for (const course of there) course.lookWhetherDue(day);
    const hasHeard = this.hasHeardBy(day);
    const anew = there.filter((course) => isNews || course.mustAskAnew() || course.asksByMorning(hasHeard));
    const firsts = there.filter(({ requests }) => requests.length === 0);
    for (const course of anew) course.ask(day, hasHeard);
    for (const course of there) course.noteAsked();
    const asking = there.map((course) => course.asking(day));
    const deciders = decidersOf(zone, asking).map(({ id }) => id);
    const decides = ({ facts }: PlantingCourse) => deciders.includes(facts.planting.id);
    if (isNews || anew.some(decides)) {
      this.decision = decide(zone, asking, this.timer, ties);
      this.decidedOn = day;
    }
    const own = this.uncut?.[day % 7] ?? this.decision.run.minutes;
    const minutes = given?.greatest ?? given?.minutes[day % 7] ?? own;
    const fillers = given?.greatest === undefined ? there.filter((course) => decides(course) && course.isFiller) : [];
    for (const course of firsts)
      course.chooseOpenDays(day, minutes, decides(course) ? fillers.filter((each) => each === course) : fillers);
  }

  /** Whether anything was read of the days since the one before the week, or forecast within the week until today. */
  private hasHeardBy(today: number): boolean {
    const first = 7 * Math.floor(today / 7);
    return this.hasReadOf(first - 1, today - 1) || this.hasForecast(first, today);
  }

  /** Whether anything was read of the days from that morning to yesterday, or forecast since. */
  private hasNewsSince(morning: number, today: number): boolean {
    return this.hasReadOf(morning, today - 1) || this.hasForecast(morning, today);
  }

  private hasReadOf(first: number, last: number): boolean {
    return daysFrom(first, last).some((day) => this.input.weather[day]?.isRead);
  }

  /** Issued after one day and no later than another. */
  private hasForecast(after: number, until: number): boolean {
    const { observed, span } = this.input.garden;
    return (observed.forecasts ?? []).some(({ issued }) => {
      return issued > span.firstDay + after && issued <= span.firstDay + until;
    });
  }
}
