/** What the comparison of a zone's plantings says, and the changes that would help. Names are data: any name fits. */
import type { DayNumber } from '../../engine/calendar.ts';
import { area } from '../area.ts';
import type { Format } from '../format/format.ts';

const DAYS = { one: 'day', other: 'days' };
const WEEKS = { one: 'week', other: 'weeks' };
const CHANGES = { one: 'change', other: 'changes' };
const LOOPS = { one: 'loop', other: 'loops' };
const ROWS = { one: 'row', other: 'rows' };
const EMITTERS = { one: 'emitter', other: 'emitters' };
const SPRAYS = { one: 'micro-spray', other: 'micro-sprays' };
const SHUT_OFFS = { one: 'shut-off', other: 'shut-offs' };
const VALVES = { one: 'valve or timer station, with its own solid line', other: 'valves or timer stations' };

export const mix = {
  zone: 'Zone',
  /** What the comparison finds. */
  title: {
    lost: ({ quantity }: Format, zone: string, litres: number) =>
      `${zone}: ${quantity(litres, 'volume')} drains past the roots`,
    short: ({ count }: Format, zone: string, days: number) => `${zone}: ${count(days, DAYS)} short of water`,
    both: ({ quantity, count }: Format, zone: string, litres: number, days: number) =>
      `${zone}: ${quantity(litres, 'volume')} drains past the roots, and ${count(days, DAYS)} short`,
    right: (zone: string) => `${zone}: its plantings share the water well`,
    empty: (zone: string) => `${zone}: nothing is planted here yet`,
  },
  emptyZone: 'Add a planting to this zone, or choose another zone, to see who gets what.',
  opening: ({ duration, quantity }: Format, minutesInSeason: number, litres: number) =>
    `Everything in a zone runs for the same minutes: here ${duration(minutesInSeason)} in the season, ${quantity(litres, 'volume')}. What that means for each planting:`,

  /** Who sets the minutes. */
  rule: {
    label: 'Who sets the minutes',
    asPlanned: (rule: string) => `As planned: ${rule}`,
    thirstiest: 'the thirstiest',
    'area-weighted': 'all, weighted by area',
    asIf: 'Shown as if this rule held; the plan is as it was.',
  },

  picture: {
    needs: 'Own need',
    gets: 'Gets',
    key: 'How to read it',
    keys: {
      needs: 'its own need: what it would be given in a zone of its own',
      stays: 'what it gets and can use',
      lost: 'what it gets that drains past its roots',
      short: 'weeks with days short of water',
    },
    verdicts: {
      over: 'Overwatered',
      short: 'Goes short',
      more: 'More than it needs',
      right: 'About right',
      none: 'Gets nothing',
      unplanted: 'Not in the ground',
    },
    /** `ratio`: what it gets over its own need. */
    over: ({ number, quantity }: Format, ratio: number, litres: number) =>
      `gets ${number(ratio, 1)} times its own need; ${quantity(litres, 'volume')} drains past its roots`,
    lost: ({ quantity }: Format, litres: number) => `${quantity(litres, 'volume')} drains past its roots`,
    short: ({ count }: Format, days: number) => `${count(days, DAYS)} short of water`,
    right: ({ percent }: Format, share: number) => `gets ${percent(share)} of its own need`,
    noLine: 'no line brings it water',
    noNeed: 'rain carries it: no water from the line is needed',
    inWeeks: (says: string, weeks: string) => `${says}; ${weeks}`,
    weeks: ({ count, days }: Format, weeks: number, first: DayNumber, last: DayNumber) =>
      `in ${count(weeks, WEEKS)}, ${days(first, last)}`,
    never: 'in no week',
    /** The drawing of the weeks, for a screen reader. */
    byWeek: (name: string, over: string, short: string) =>
      `${name}, week by week. Water that drains past the roots: ${over}. Short of water: ${short}.`,
  },

  table: {
    title: 'In figures',
    planting: 'Planting',
    rate: (unit: string) => `Application rate (${unit})`,
    needed: (unit: string) => `Own need (${unit})`,
    received: (unit: string) => `Gets (${unit})`,
    ratio: 'Gets ÷ own need',
    lost: (unit: string) => `Past the roots (${unit})`,
    shortDays: 'Days short',
    total: 'Total',
    note: ({ quantity }: Format, meteredLitres: number) =>
      `Own need: what would reach its ground in a zone of its own. Gets: what reaches it here. The meter shows ${quantity(meteredLitres, 'volume')}, since some of the water is lost on the way. Days short are added up over the plantings.`,
    weekly: 'Week by week',
    weeklyNote: (unit: string) => `Gets / own need (${unit})`,
    week: 'Week',
    rules: 'Under each rule',
    ruleColumn: 'Minutes set by',
    metered: (unit: string) => `Meter (${unit})`,
    now: (rule: string) => `${rule} (as it is now)`,
  },

  remedies: {
    title: 'What to do about it',
    searching: ({ count }: Format, tried: number) => `Working out what would help: ${count(tried, CHANGES)} tried…`,
    found: ({ count, number }: Format, changes: number, tried: number) =>
      `${count(changes, CHANGES)} of ${number(tried)} tried would help.`,
    none: ({ count }: Format, tried: number) =>
      `Of ${count(tried, CHANGES)} tried, none is worth more than leaving the zone as it is.`,
    alike: 'All plantings here need the same minutes in every week: there is nothing to change.',
    /** `unit`: `gallons`. */
    ranking: ({ quantity }: Format, unit: string, leastLitres: number) =>
      `Ranked by ${unit} saved, plus twice the shortage prevented. Changes under ${quantity(leastLitres, 'volume')}, or with more days short, are left out.`,
    leave: 'Leave it as it is',
    leaveSays: ({ quantity, count }: Format, litres: number, days: number) =>
      `${quantity(litres, 'volume')} in the season, ${count(days, DAYS)} short: what the others are measured against.`,
    apply: 'Do this',
    applyLabel: (what: string) => `Do this: ${what}`,
    done: (label: string) => `Done: ${label}.`,
    undo: 'Undo',
    more: ({ number }: Format, count: number) => `${number(count)} more`,
    refills:
      'What stands behind it is then watered deep and infrequently: left alone until it needs water, and then filled.',

    /** What a change comes to, over the season. */
    saves: ({ quantity }: Format, litres: number) => `saves ${quantity(litres, 'volume')}`,
    takes: ({ quantity }: Format, litres: number) => `takes ${quantity(litres, 'volume')} more`,
    fewerShort: ({ count }: Format, days: number) => `${count(days, DAYS)} fewer short of water`,
    sameShort: 'no more days short than now',
    lessLost: ({ quantity }: Format, litres: number) => `${quantity(litres, 'volume')} less drains past the roots`,
    moreLost: ({ quantity }: Format, litres: number) => `${quantity(litres, 'volume')} more drains past the roots`,
    promise: (parts: readonly string[]) => parts.join('; '),

    goods: {
      get: ({ list }: Format, things: readonly string[]) => `To get: ${list(things)}.`,
      nothing: 'Nothing to get.',
      driplineM: ({ quantity }: Format, lengthM: number) => `${quantity(lengthM, 'length')} of dripline`,
      emitters: ({ count }: Format, pieces: number) => count(pieces, EMITTERS),
      sprays: ({ count }: Format, pieces: number) => count(pieces, SPRAYS),
      shutOffs: ({ count }: Format, pieces: number) => count(pieces, SHUT_OFFS),
      valves: ({ count }: Format, pieces: number) => count(pieces, VALVES),
    },

    /** What is done, as an order to the gardener. */
    change: {
      both: (one: string, other: string) => `${one}. ${other}`,
      dripline: ({ quantity }: Format, name: string, flowLph: number, spacingM: number) =>
        `Re-lay ${name} with ${quantity(flowLph, 'emitterFlow')} dripline, an emitter every ${quantity(spacingM, 'spacing')}`,
      loops: ({ count, number }: Format, name: string, before: number, after: number) =>
        `Lay ${count(after, LOOPS)} around each plant of ${name} instead of ${number(before)}`,
      rows: ({ count, number }: Format, name: string, before: number, after: number) =>
        `Lay ${count(after, ROWS)} of line in ${name} instead of ${number(before)}`,
      length: (_format: Format, name: string) => `Lay a second line beside the first in ${name}`,
      emitters: ({ count, quantity }: Format, name: string, pieces: number, flowLph: number) =>
        `${name}: ${count(pieces, EMITTERS)} (${quantity(flowLph, 'emitterFlow')})`,
      sprays: ({ count, quantity }: Format, name: string, pieces: number, flowLph: number) =>
        `${name}: ${count(pieces, SPRAYS)} (${quantity(flowLph, 'emitterFlow')})`,
      perPlant: (pieces: string) => `${pieces} per plant`,
      'shut-off': (name: string) => `Put a shut-off in front of ${name}`,
      cut: ({ list }: Format, plantings: readonly string[], newZone: string) =>
        `Split the zone in two: add valve “${newZone}” for ${list(plantings)}`,
      rule: {
        planting: (name: string) => `Let ${name} set the minutes`,
        thirstiest: 'Let the thirstiest planting set the minutes',
        'area-weighted': 'Let all plantings set the minutes, weighted by area',
      },
    },

    calendar: {
      title: (name: string) => `When to open the shut-off of ${name}`,
      open: (
        { days, weekdays, number }: Format,
        first: DayNumber,
        last: DayNumber,
        of: { readonly openMask: number; readonly openDays: number; readonly wateringDays: number },
      ) =>
        `${days(first, last)}: open on ${weekdays(first, of.openMask)} only (${number(of.openDays)} of ${number(of.wateringDays)} watering days)`,
      openAll: ({ days }: Format, first: DayNumber, last: DayNumber) =>
        `${days(first, last)}: open on every watering day`,
      otherwise: 'At all other times it stays shut.',
      never: 'It stays shut all season: rain carries this planting.',
    },
  },

  /** Trying a planting in another zone. */
  trial: {
    title: 'Try a planting elsewhere',
    opening: 'The comparison follows; the plan stays as it is until you say so.',
    out: 'Move out',
    to: 'to',
    ownZone: 'a zone of its own',
    into: 'Bring in',
    from: (planting: string, zone: string) => `${planting}, from ${zone}`,
    try: 'Try it',
    tryOut: 'Try it: move out',
    tryIn: 'Try it: bring in',
    trying: (label: string) => `Only tried: ${label}`,
    keep: 'Do this now',
    drop: 'Drop it',
    effect: (
      { quantity, number, count }: Format,
      zone: string,
      before: { readonly litres: number; readonly shortDays: number },
      after: { readonly litres: number; readonly shortDays: number },
    ) =>
      `${zone}: from ${quantity(before.litres, 'volume')} to ${quantity(after.litres, 'volume')}; from ${number(before.shortDays)} to ${count(after.shortDays, DAYS)} short.`,
    newZone: (
      { quantity, count }: Format,
      zone: string,
      { litres, shortDays }: { readonly litres: number; readonly shortDays: number },
    ) => `${zone}: ${quantity(litres, 'volume')}, ${count(shortDays, DAYS)} short.`,
  },
};

export const mixWords = area('mix', mix, {
  remedies: {
    change: {
      loops: ({ count, number }: Format, name: string, before: number, after: number) =>
        `Lay ${count(after, LOOPS)} round each plant of ${name} instead of ${number(before)}`,
    },
  },
});
