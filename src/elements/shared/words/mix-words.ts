/** What the comparison of a zone's plantings says. */
export const mixWords = {
  zone: 'Zone',
  titles: {
    lost: (zone: string, lost: string) => `${zone}: ${lost} run past the roots`,
    short: (zone: string, days: string) => `${zone}: ${days} short of water`,
    both: (zone: string, lost: string, days: string) => `${zone}: ${lost} run past the roots, and ${days} short`,
    right: (zone: string) => `${zone}: its plantings share the water well`,
    empty: (zone: string) => `${zone}: nothing is planted here yet`,
  },
  emptyZone: 'Add a planting to this zone, or choose another zone, to see who gets what.',
  opening: (minutes: string, volume: string) =>
    `Everything in a zone runs for the same minutes: here ${minutes} in the season, ${volume}. What that means for each planting:`,
  days: { one: 'day', other: 'days' },
  weeks: { one: 'week', other: 'weeks' },
  needs: 'Needs',
  gets: 'Gets',
  key: 'How to read it',
  keys: {
    needs: 'what it needs, by itself',
    stays: 'what it gets and can use',
    lost: 'what it gets and loses below its roots',
    short: 'weeks with days short of water',
  },
  verdicts: {
    over: 'Drowned',
    short: 'Goes short',
    right: 'About right',
    none: 'Gets nothing',
    unplanted: 'Not in the ground',
  },
  overSays: (times: string, lost: string) => `gets ${times} what it needs; ${lost} lost below its roots`,
  lostSays: (lost: string) => `${lost} lost below its roots`,
  shortSays: (days: string) => `${days} short of water`,
  rightSays: (share: string) => `gets ${share} of what it needs`,
  noLineSays: 'no line brings it water',
  weeksSay: (count: string, days: string) => `in ${count}, ${days}`,
  byWeek: (name: string, over: string, short: string) =>
    `${name}, week by week. Water lost below the roots: ${over}. Short of water: ${short}.`,
  never: 'in no week',
  rule: {
    label: 'Who sets the minutes',
    asPlanned: (rule: string) => `As planned: ${rule}`,
    thirstiest: 'the thirstiest',
    'area-weighted': 'all, weighted by area',
    planting: (name: string) => name,
    asIf: 'Shown as if this rule held; the plan is as it was.',
  },
  table: {
    title: 'In figures',
    planting: 'Planting',
    rate: (unit: string) => `Lays on, ${unit}`,
    needed: (unit: string) => `Needs, ${unit}`,
    received: (unit: string) => `Gets, ${unit}`,
    ratio: 'Gets ÷ needs',
    lost: (unit: string) => `Lost, ${unit}`,
    shortDays: 'Days short',
    total: 'Together',
    note: (metered: string) =>
      `Needs: what it would be given in a zone of its own. Gets: what reaches its ground. The meter shows ${metered}, since some of the water is lost on the way.`,
    weekly: 'Week by week',
    weeklyNote: (unit: string) => `Gets / needs, ${unit}`,
    week: 'Week',
    rules: 'Under each rule',
    ruleColumn: 'Minutes set by',
    metered: (unit: string) => `Meter, ${unit}`,
    now: 'as it is now',
  },
} as const;

/** What the list of remedies says. */
export const remedyWords = {
  title: 'What to do about it',
  searching: (tried: string) => `Working out what would help: ${tried} changes tried…`,
  found: (count: string, tried: string) => `${count} would help, of ${tried} that were tried.`,
  changes: { one: 'change', other: 'changes' },
  none: (tried: string) => `Of ${tried} that were tried, none is worth more than leaving the zone as it is.`,
  alike: 'All plantings here ask for the same minutes in every week: there is nothing to change.',
  rule: (least: string) =>
    `Ranked by water: what a change saves, and twice what plants would otherwise go without. It is listed if that comes to ${least} or more and leaves no more days short than now. Where two come to much the same, the one with less to get stands first. Of several sizes for one planting only the best is shown.`,
  leave: 'Leave it as it is',
  leaveSays: (volume: string, days: string) =>
    `${volume} in the season, ${days} short: what the others are measured against.`,
  saves: (volume: string) => `saves ${volume}`,
  uses: (volume: string) => `takes ${volume} more`,
  lessLost: (volume: string) => `${volume} less lost below the roots`,
  moreLost: (volume: string) => `${volume} more lost below the roots`,
  fewerShort: (days: string) => `${days} fewer short of water`,
  sameShort: 'no more days short than now',
  get: 'To get:',
  getNothing: 'nothing',
  line: (length: string) => `${length} of dripline`,
  emitters: { one: 'emitter', other: 'emitters' },
  sprays: { one: 'micro-spray', other: 'micro-sprays' },
  shutOffs: { one: 'shut-off', other: 'shut-offs' },
  valves: { one: 'valve or timer station, with its own solid line', other: 'valves or timer stations' },
  apply: 'Do this',
  applyLabel: (what: string) => `Do this: ${what}`,
  done: (label: string) => `Done: ${label}.`,
  undo: 'Undo',
  more: (count: number) => `${count} more`,
  both: (one: string, other: string) => `${one}, and ${lowerFirst(other)}`,
  calendar: (name: string) => `When to open the shut-off of ${name}`,
  open: (when: string, days: string, k: string, n: string) =>
    `${when}: open on ${days} only (${k} of ${n} watering days)`,
  openAll: (when: string) => `${when}: open on every watering day`,
  otherwise: 'At all other times it stays closed.',
  neverOpen: 'It stays closed all season: rain carries this planting.',
  refills: 'What stands behind it is then watered deep and seldom: left alone until it needs it, and then filled.',
  change: {
    dripline: (name: string, flow: string, spacing: string) =>
      `Re-lay ${name} with ${flow} dripline, an emitter every ${spacing}`,
    loops: (name: string, before: number, after: number) =>
      after === 2 && before === 1
        ? `Lay a second loop round each plant of ${name}`
        : `Lay ${after} ${after === 1 ? 'loop' : 'loops'} round each plant of ${name} instead of ${before}`,
    rows: (name: string, before: number, after: number) =>
      after > before
        ? `Lay one row of line more in ${name}: ${after} instead of ${before}`
        : `Take one row of line out of ${name}: ${after} instead of ${before}`,
    length: (name: string) => `Lay a second line beside the first in ${name}`,
    emitters: (name: string, count: string, flow: string) => `Give ${name} ${count} of ${flow}`,
    atEachPlant: (count: string) => `${count} at each plant`,
    'shut-off': (name: string) => `Put a shut-off in front of ${name}`,
    cut: (names: string, zone: string) => `Cut the zone in two: ${names} on a valve of their own, “${zone}”`,
    cutOne: (name: string, zone: string) => `Cut the zone in two: ${name} on a valve of its own, “${zone}”`,
    rule: (rule: string) => `Let ${rule} set the minutes`,
    byArea: 'the mean of all, weighted by area,',
    byThirstiest: 'the thirstiest',
  },
} as const;

/** What trying a planting in another zone says. */
export const trialWords = {
  title: 'Try a planting elsewhere',
  opening: 'The comparison follows; nothing is kept until you say so.',
  out: 'Move out',
  to: 'to',
  ownZone: 'a zone of its own',
  into: 'Bring in',
  from: (planting: string, zone: string) => `${planting}, from ${zone}`,
  try: 'Try it',
  tryOut: 'Try it: move out',
  tryIn: 'Try it: bring in',
  trying: (label: string) => `Only tried: ${label}`,
  keep: 'Keep it',
  drop: 'Drop it',
  effect: (zone: string, before: string, after: string, daysBefore: string, daysAfter: string) =>
    `${zone}: ${before} becomes ${after}; ${daysBefore} short becomes ${daysAfter}.`,
  newZone: (zone: string, after: string, daysAfter: string) => `${zone}: ${after}, ${daysAfter} short.`,
  remediesLater: 'Keep or drop what you are trying, and the changes that would help are listed here.',
} as const;

function lowerFirst(text: string): string {
  return text.charAt(0).toLowerCase() + text.slice(1);
}
