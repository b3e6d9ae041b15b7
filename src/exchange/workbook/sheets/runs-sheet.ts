/** When each zone runs in a week that is chosen by its number, and the same facts of all weeks below. */
import { countDays } from '../../../engine/season/days-mask.ts';
import { runMask, zoneFigure, zoneState } from '../../../engine/season/zone-week.ts';
import { zoneValue } from '../../csv/season-figures.ts';
import { stateText } from '../../csv/state-text.ts';
import { over, type Term, times } from '../formula.ts';
import {
  type CellContent,
  cellName,
  fixed,
  formula,
  headings,
  mine,
  type Row,
  type SheetContent,
  text,
} from '../sheet-content.ts';
import { meanFlowLpm } from './season-sheet.ts';
import { plainRow, rowNames, serialDay, weekHeadings, weekly, weekRange, weekWidths } from './week-rows.ts';
import { nameText, type Writing, type ZoneWriting, zoneRow } from './writing.ts';

/** Rows of a zone in the list of all weeks. */
const ROWS = ['days', 'runs', 'cycles'] as const;
type RunRow = (typeof ROWS)[number];

const CHOSEN = { row: 0, column: 1 };
const LIST_ROW = 5;

/** A zone at a time. `week`: from 0, the one that is chosen at first. */
export function* runsSheet(writing: Writing, week: number): Generator<undefined, SheetContent> {
  const { say, names, season, zones, csv, format } = writing;
  const { weeks, firstDay } = season.garden.span;
  const allWeeksRow = LIST_ROW + zones.length + 2;
  const chosen: Term = { text: cellName(CHOSEN.row, CHOSEN.column), value: week + 1 };
  const list: Row[] = [];
  const allWeeks: Row[] = [];
  for (const [index, zone] of zones.entries()) {
    const facts = weekly(weeks, (each) => factsOf(zone, each, writing));
    const first = allWeeksRow + 1 + index * ROWS.length;
    list.push(listRow({ zone, week, chosen, row: LIST_ROW + index, first, facts: facts[week] as WeekRuns, writing }));
    const cellsOf = (row: RunRow): CellContent[] =>
      facts.map(({ days, runs, cycles }) => {
        if (row === 'days') return text(days);
        return runs === 0 ? undefined : fixed(row === 'runs' ? runs : cycles, 'count');
      });
    for (const row of ROWS) {
      allWeeks.push(plainRow(rowNames({ zone: zone.zone.zone.name, measure: say.rows[row] }, writing), cellsOf(row)));
    }
    yield;
  }
  const heading = weekRange(0, weeks);
  return {
    name: names.runs,
    widths: weekWidths(writing),
    frozen: { rows: 0, columns: 1 },
    choice: { range: 'B1', most: weeks },
    rows: [
      [text(say.runs.week, 'heading'), mine(week + 1, 'count'), text(say.runs.choose)],
      [
        text(say.runs.from, 'heading'),
        formula(
          { text: `INDEX(${writing.on.season}${heading},1,${chosen.text})`, value: serialDay(firstDay + 7 * week) },
          'date',
        ),
      ],
      [],
      [],
      headings(
        csv.headings.zone,
        csv.measures.minutes,
        say.rows.days,
        say.rows.runs,
        say.runs.eachDay,
        say.rows.cycles,
        say.supply.unit(csv.measures.volume, format.unit('volume')),
        csv.more.state,
      ),
      ...list,
      [],
      [text(say.runs.allWeeks, 'title')],
      weekHeadings(writing),
      ...allWeeks,
    ],
  };
}

interface WeekRuns {
  readonly days: string;
  readonly runs: number;
  readonly cycles: number;
}

function factsOf({ zone }: ZoneWriting, week: number, { season, format }: Writing): WeekRuns {
  const mask = runMask(zone, week);
  const days = mask === 0 ? '' : format.weekdays(season.garden.span.firstDay + 7 * week, mask);
  return { days, runs: countDays(mask), cycles: zoneFigure(zone, 'cycles', week) };
}

interface ListInput {
  readonly zone: ZoneWriting;
  readonly week: number;
  readonly chosen: Term;
  readonly row: number;
  /** Of its rows among all weeks. */
  readonly first: number;
  readonly facts: WeekRuns;
  readonly writing: Writing;
}

function listRow({ zone, week, chosen, row, first, facts, writing }: ListInput): Row {
  const { on, season, amount, reader } = writing;
  const { weeks } = season.garden.span;
  const pick = (sheet: string, from: number, value: number): Term => ({
    text: `INDEX(${sheet}${weekRange(from, weeks)},1,${chosen.text})`,
    value,
  });
  const pickText = (sheet: string, from: number, result: string): CellContent => ({
    formula: `INDEX(${sheet}${weekRange(from, weeks)},1,${chosen.text})&""`,
    result,
    style: 'text',
  });
  const here = (column: number, { value }: Term): Term => ({ text: cellName(row, column), value });
  const ran = zoneValue(zone.zone, 'minutes', week);
  const minutes = pick(on.season, zoneRow(zone, 'minutes'), ran ?? 0);
  const flowThen = ran === undefined ? 0 : amount(meanFlowLpm(zone.zone, week), 'supplyFlow');
  const flow = pick(on.season, zoneRow(zone, 'flow'), flowThen);
  const runs = pick('', first + ROWS.indexOf('runs'), facts.runs);
  return [
    text(nameText(zone.zone.zone.name)),
    formula(minutes, 'minutes'),
    pickText('', first + ROWS.indexOf('days'), facts.days),
    formula(runs, 'count'),
    formula(over(here(1, minutes), here(3, runs)), 'minutes'),
    formula(pick('', first + ROWS.indexOf('cycles'), facts.runs === 0 ? 0 : facts.cycles), 'count'),
    formula(times(here(1, minutes), flow), 'volume'),
    pickText(on.season, zoneRow(zone, 'state'), stateText(zoneState(zone.zone, week), reader)),
  ];
}
