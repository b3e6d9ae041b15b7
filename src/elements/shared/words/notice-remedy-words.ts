/** What is said of the changes that mend a notice. Names of zones and plantings are data: any name fits. */
export const noticeRemedyWords = {
  searching: 'Working out what would help…',
  none: 'No change of the plan that was tried makes it less.',
  apply: 'Do this',
  applyLabel: (what: string) => `Do this: ${what}`,
  change: {
    'close-loop': (planting: string) =>
      `Close the line of ${planting} into a loop: lead its end back to where its water comes from`,
    'feed-middle': (planting: string, runs: string, length: string) =>
      `Feed the line of ${planting} in its middle: ${runs} of ${length}`,
    'cut-in-two': (planting: string, zone: string) =>
      `Cut ${planting} in two: half of it on a valve of its own, “${zone}”`,
    spacing: (planting: string, spacing: string) => `Re-lay ${planting} with an emitter every ${spacing}`,
    'split-zone': (plantings: string, zone: string, newZone: string) =>
      `Split ${zone} in two: a valve more, “${newZone}”, for ${plantings}`,
    'other-days': (days: string) => `Water on other days: ${days}`,
    'more-days': (days: string) => `Water on more days, less on each: ${days}`,
    onDays: (zones: string, days: string) => `${zones} on ${days}`,
    'fewer-minutes': (zones: string, minutes: string, weeks: string) =>
      `Water less in ${weeks}: ${minutes} off the time of ${zones}`,
    'larger-tank': (capacity: string, before: string) => `Set up a tank of ${capacity} instead of ${before}`,
    uphill: (planting: string) => `Move the line of ${planting} to the uphill side of the plants`,
  },
  runs: { one: 'run', other: 'runs' },
  weeks: { one: 'week', other: 'weeks' },
  zones: { one: 'zone', other: 'zones' },
  /** What a change comes to, each a sentence. */
  mends: 'Does away with this.',
  leaves: (share: string) => `Leaves ${share} of it, so this stays.`,
  brings: (troubles: string) => `Brings something else: ${troubles}`,
  andMore: (count: number) => `And ${count} more.`,
  trouble: (name: string, sentence: string) => `${name}: ${sentence}`,
  season: (water: string, minutes: string) => `Over the season: ${water}, ${minutes}.`,
  asNow: 'As much water and as many minutes as now.',
  more: (amount: string) => `${amount} more`,
  less: (amount: string) => `${amount} less`,
  sameWater: 'as much water as now',
  sameMinutes: 'as many minutes as now',
  pressure: (after: string, before: string) => `Then ${after} at its weakest emitter instead of ${before}.`,
  shortMore: (volume: string) => `Plants go short by ${volume} more.`,
  shortLess: (volume: string) => `Plants go short by ${volume} less.`,
} as const;
