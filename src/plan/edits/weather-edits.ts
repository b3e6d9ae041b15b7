/** Edits of the observed weather, of forecasts and of the climate. */

import { dayNumber, isIsoDate } from '../../engine/calendar.ts';
import { readingSource, withSources } from '../reading-sources.ts';
import { sameData } from '../same-data.ts';
import type { Plan, PlanDay, PlanDeparture, PlanForecast, PlanWeek } from '../schema/plan-schema.ts';
import { weekDays } from '../season-weeks.ts';
import { changed, ownValue, withKey } from './change.ts';
import type { Change, WeatherEdit } from './edit.ts';
import { type TypedTotal, withoutFilledDays } from './filled-days.ts';
import { readWeek, writeWeek } from './week-records.ts';
import { withLog } from './with-log.ts';

export function editWeather(plan: Plan, edit: WeatherEdit): Plan {
  switch (edit.type) {
    case 'set-week-rain':
      return withWeekRain(plan, edit);
    case 'set-week-eto':
      return withWeek(withRoomFor(plan, { kind: 'eto', week: edit.week }, edit.eto), edit.week, { eto: edit.eto });
    case 'set-week-note':
      return withWeek(plan, edit.week, { note: edit.note === '' ? undefined : edit.note });
    case 'set-meter':
      return withLog(plan, { meter: withKey(plan.log?.meter, edit.day, edit.reading) });
    case 'set-day-weather':
      return withDay(plan, edit.day, edit.weather);
    case 'change-day-weather':
      return withDay(plan, edit.day, changedDay(ownValue(plan.log?.days, edit.day) ?? {}, edit.change));
    case 'set-forecast':
      return withForecast(plan, edit.issued, edit.days);
    case 'set-climate': {
      const site = changed(plan.site, { climate: edit.climate });
      return site === plan.site ? plan : { ...plan, site };
    }
    case 'set-departure':
      return withDeparture(plan, edit);
  }
}

/** What is no group of fields is refused with the plan that it would make. */
function withDay(plan: Plan, day: string, weather: PlanDay = {}): Plan {
  const isCleared = sameData(weather, {});
  return withLog(plan, { days: withKey(plan.log?.days, day, isCleared ? undefined : weather) });
}

/** Readings that are named count as typed, unless the change says where they come from. */
function changedDay(before: PlanDay, change: Change<PlanDay>): PlanDay {
  const after = changed(before, change);
  if (before.source === undefined || Object.hasOwn(change, 'source')) return after;
  const sourced = withSources(after, (reading) =>
    Object.hasOwn(change, reading) ? undefined : readingSource(before, reading),
  );
  return sameData(sourced, before) ? before : sourced;
}

type WeekRainEdit = Extract<WeatherEdit, { type: 'set-week-rain' }>;

/** A total that is read through the week's last day says no day. */
function withWeekRain(plan: Plan, { week, rain, through }: WeekRainEdit): Plan {
  const isWhole = through !== undefined && isLastDay(plan, week, through);
  const bare = withRoomFor(plan, { kind: 'rain', week, through }, rain);
  return withWeek(bare, week, { rain, rainThrough: rain === undefined || isWhole ? undefined : through });
}

/** Days that were filled in give way to a total that somebody types, and stay where one is taken out. */
const withRoomFor = (plan: Plan, total: TypedTotal, depth: number | undefined): Plan =>
  depth === undefined ? plan : withoutFilledDays(plan, total);

function isLastDay({ season }: Plan, week: string, day: string): boolean {
  return isIsoDate(week) && isIsoDate(day) && dayNumber(day) === weekDays(season, week).last;
}

/** In order of issue. */
function withForecast(plan: Plan, issued: string, days: PlanForecast['days'] | undefined): Plan {
  const before = plan.log?.forecasts ?? [];
  const known = before.find((forecast) => forecast.issued === issued);
  if (sameData(known?.days, days)) return plan;
  const others = before.filter((forecast) => forecast !== known);
  const after = days === undefined ? others : [...others, { issued, days }];
  const forecasts = after.toSorted((left, right) => (left.issued < right.issued ? -1 : 1));
  return withLog(plan, { forecasts: forecasts.length === 0 ? undefined : forecasts });
}

type DepartureEdit = Extract<WeatherEdit, { type: 'set-departure' }>;

/** In order of their days. */
function withDeparture(plan: Plan, { type: _, from, weeks, ...factors }: DepartureEdit): Plan {
  const before = plan.site.departures ?? [];
  const others = before.filter((departure) => departure.from !== from || departure.weeks !== weeks);
  const departure = changed<PlanDeparture>({ from, weeks }, factors);
  const after = Object.keys(departure).length === 2 ? others : [...others, departure];
  const departures = after.toSorted((left, right) => (left.from < right.from ? -1 : 1));
  if (sameData(before, departures)) return plan;
  const site = changed(plan.site, { departures: departures.length === 0 ? undefined : departures });
  return { ...plan, site };
}

function withWeek(plan: Plan, week: string, change: Change<PlanWeek>): Plan {
  const weeks = plan.log?.weeks;
  const before = readWeek(weeks, plan.season, week) ?? {};
  const after = changed(before, change);
  if (after === before) return plan;
  const value = Object.keys(after).length === 0 ? undefined : after;
  return withLog(plan, { weeks: writeWeek(weeks, { season: plan.season, day: week }, value) });
}
