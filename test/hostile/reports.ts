/** What the engine says of a season that came of hostile input: notices, traces and remedies are there, in plain numbers and words. */
import type { Season } from '../../src/engine/season/season.ts';
import type { Notice } from '../../src/explain/notices/notice.ts';
import { noticesOf } from '../../src/explain/notices/notices-of.ts';
import { traceCell } from '../../src/explain/trace/trace-cell.ts';
import { describeNotice } from '../../src/language/describe-notice.ts';
import { describeRemedy, describeRemedyEffects } from '../../src/language/describe-remedy.ts';
import { describeStep } from '../../src/language/describe-step.ts';
import type { Reader } from '../../src/language/reader.ts';
import type { Plan } from '../../src/plan/schema/plan-schema.ts';
import { searchMixRemedies } from '../../src/remedies/mix/search.ts';
import { hasRemedies } from '../../src/remedies/notices/remedied-kinds.ts';
import { searchRemedies } from '../../src/remedies/notices/remedies-of.ts';
import type { Chance } from './mangled.ts';

export interface Reported {
  readonly plan: Plan;
  readonly season: Season;
  readonly reader: Reader;
  readonly chance: Chance;
  readonly count: (what: string) => void;
}

/** One search of remedies in so many plans: each computes many seasons. */
const SEARCHES = 12;
/** A search is followed so far; a page takes a step at a time. */
const MOST_STEPS = 12;
const LONGEST_STEP_MS = 1000;

/** All notices of a season, the trace of one cell, and now and then a search for remedies. */
export function expectReports(of: Reported): void {
  const { plan, season, reader, chance, count } = of;
  const notices = noticesOf(season);
  for (const notice of notices) {
    expectPlain(notice, notice.kind);
    const { name, sentence } = describeNotice(notice, season, plan.name, reader);
    expectWords([name, sentence], notice.kind, plan);
    count('notice');
  }
  expectTrace(of);
  if (chance.nat(SEARCHES) === 0) expectRemedies(of, notices.filter(hasRemedies));
  if (chance.nat(2 * SEARCHES) === 0 && season.zones.length > 0) {
    const zoneId = chance.pick(season.zones).zone.id;
    expectPlain(throughSteps(searchMixRemedies({ plan, season, zoneId }))?.before, 'mix');
    count('mix searched');
  }
}

function expectTrace({ plan, season, reader, chance, count }: Reported): void {
  const week = chance.nat(season.garden.span.weeks);
  const zone = season.zones.length === 0 ? undefined : chance.pick(season.zones);
  const planting = zone === undefined || zone.plantings.length === 0 ? undefined : chance.pick(zone.plantings);
  const cell = chance.pick([
    { week, weather: 'eto' as const },
    { week, weather: 'rain' as const },
    { week },
    { week, zoneId: zone?.zone.id },
    ...(planting === undefined
      ? []
      : [1, 2, 3, 4].map(() => ({ week, zoneId: zone?.zone.id, plantingId: planting.planting.id }))),
  ]);
  for (const step of traceCell(season, cell)) {
    expectPlain(step, step.id);
    expectWords([JSON.stringify(describeStep(step, reader))], step.id, plan);
    count('trace step');
  }
}

function expectRemedies({ plan, season, reader, chance, count }: Reported, notices: readonly Notice[]): void {
  if (notices.length === 0) return;
  const notice = chance.pick(notices);
  const remedies = throughSteps(searchRemedies({ plan, season, notice }));
  count('remedies searched');
  for (const remedy of remedies ?? []) {
    expectWords([describeRemedy(remedy, reader), ...describeRemedyEffects(remedy, notice, reader)], remedy.kind, plan);
    count('remedy');
  }
}

/** To its end, or as many steps as are followed. No step may keep a page waiting. */
function throughSteps<Result>(steps: Generator<number, Result>): Result | undefined {
  for (let number = 0; number < MOST_STEPS; number += 1) {
    const before = process.cpuUsage();
    const step = steps.next();
    const { user, system } = process.cpuUsage(before);
    const ms = (user + system) / 1000;
    if (ms > LONGEST_STEP_MS) throw new Error(`step ${number} of a search took ${ms} ms`);
    if (step.done === true) return step.value;
  }
  return undefined;
}

/** No figure anywhere in it is no number. */
function expectPlain(value: unknown, where: string): void {
  if (typeof value === 'number' && !Number.isFinite(value)) throw new Error(`${where}: a figure is ${value}`);
  if (typeof value !== 'object' || value === null) return;
  for (const [key, part] of Object.entries(value)) expectPlain(part, `${where}.${key}`);
}

/** Names and sources are what somebody typed: where that is one of these words, it is said as it was typed. */
const NO_WORDS = /NaN|undefined|Infinity|\[object/;

function expectWords(texts: readonly string[], where: string, plan: Plan): void {
  const isTyped = NO_WORDS.test(JSON.stringify(plan));
  for (const text of texts) {
    if (text === '' || (!isTyped && NO_WORDS.test(text))) throw new Error(`${where} says: ${text}`);
  }
}
