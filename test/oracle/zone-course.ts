/** A zone on its way through the season, morning by morning: each knows what was read until yesterday and forecast until today. */
import type { Garden, GardenZone } from '../../src/engine/garden.ts';
import { type GivenWeek, givenWeek } from './given.ts';
import type { NearTies } from './near-ties.ts';
import type { PlantingCourse } from './planting-course.ts';
import { daysFrom, isInMask } from './watering-days.ts';
import type { WeatherDay } from './weather.ts';
import { type Decision, decide, decidersOf, NO_DECISION } from './zone-minutes.ts';

export interface ZoneWeekRun {
  readonly given: GivenWeek | undefined;
  /** Seven of each. */
  readonly days: readonly ZoneDay[];
}

export interface ZoneDay {
  readonly minutes: number;
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

  constructor(input: ZoneInput, courses: readonly PlantingCourse[]) {
    this.input = input;
    this.courses = courses;
  }

  runWeek(week: number): ZoneWeekRun {
    const given = givenWeek(this.input.zone, week);
    this.decidedOn = undefined;
    for (const course of this.courses) course.startWeek(week);
    return { given, days: daysFrom(7 * week, 7 * week + 6).map((day) => this.runDay(day, given)) };
  }

  private runDay(day: number, given: GivenWeek | undefined): ZoneDay {
    const isMorning = this.isWateringMorning(day);
    if (isMorning) this.decideOn(day, given);
    const run = given === undefined ? this.computedRun(isMorning) : this.givenRun(given, day);
    for (const course of this.courses) {
      const { hasShutOff, id } = course.facts.planting;
      course.passDay(day, run.minutes, hasShutOff ? given?.open(day % 7)?.has(id) : undefined);
    }
    const decision = isMorning ? this.decision : undefined;
    return { ...run, decision, isAnew: isMorning && this.decidedOn === day };
  }

  /** A watering day on which a line brings water to a planting that is in the ground. */
  private isWateringMorning(day: number): boolean {
    return isInMask(this.input.zone.wateringDays, day) && this.courses.some((course) => course.hasLine(day));
  }

  private computedRun(isMorning: boolean) {
    return isMorning ? this.decision.run : NO_DECISION.run;
  }

  /** Run as it is, in as many cycles as the soil needs and the timer can start. */
  private givenRun(given: GivenWeek, day: number) {
    const minutes = given.minutes[day % 7] ?? 0;
    const { longestCycleMinutes, startsADay } = this.input.zone;
    const cycles = Math.ceil(minutes / longestCycleMinutes - 1e-9);
    return { minutes, cycles: minutes === 0 ? 0 : Math.min(startsADay, Math.max(1, cycles)) };
  }

  /** Without news, and with nobody who decides asking anew, the number stands. */
  private decideOn(day: number, given: GivenWeek | undefined): void {
    const { zone, ties } = this.input;
    const isNews = this.decidedOn === undefined || this.hasNewsSince(this.decidedOn, day);
    const there = this.courses.filter((course) => course.isPresent(day));
    for (const course of there) course.lookWhetherDue(day);
    const anew = there.filter((course) => isNews || course.mustAskAnew());
    const firsts = there.filter(({ requests }) => requests.length === 0);
    for (const course of anew) course.ask(day);
    const asking = there.map((course) => course.asking(day));
    const deciders = decidersOf(zone, asking).map(({ id }) => id);
    const decides = ({ facts }: PlantingCourse) => deciders.includes(facts.planting.id);
    if (isNews || anew.some(decides)) {
      this.decision = decide(zone, asking, ties);
      this.decidedOn = day;
    }
    const minutes = given === undefined ? this.decision.run.minutes : given.greatest;
    for (const course of firsts) course.chooseOpenDays(day, minutes, given === undefined && decides(course));
  }

  /** Whether anything was read of the days from that morning to yesterday, or forecast since. */
  private hasNewsSince(morning: number, today: number): boolean {
    const { garden, weather } = this.input;
    const { firstDay } = garden.span;
    const isRead = daysFrom(morning, today - 1).some((day) => weather[day]?.isRead);
    const isForecast = (garden.observed.forecasts ?? []).some(({ issued }) => {
      return issued > firstDay + morning && issued <= firstDay + today;
    });
    return isRead || isForecast;
  }
}
