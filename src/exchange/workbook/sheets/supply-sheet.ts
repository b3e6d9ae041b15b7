/** Supply against demand from the season's first week on, what it costs, and what the supply has. */

import { cumulative } from '../../../engine/season/cumulative.ts';
import { SUPPLY_FIELDS } from '../../../engine/season/season.ts';
import { seasonSupply } from '../../../engine/supply/season-supply.ts';
import type { Quantity } from '../../../engine/units.ts';
import { less, number, over, plus, sumOf, type Term, times } from '../formula.ts';
import {
  type CellContent,
  cellName,
  fixed,
  formula,
  headings,
  mine,
  type NumberCell,
  type Row,
  type SheetContent,
  text,
} from '../sheet-content.ts';
import type { PlantingsSheet } from './plantings-sheet.ts';
import { type SeasonSheet, TOTALS } from './season-sheet.ts';
import { serialDay, valuesOf, weekCell, weekly } from './week-rows.ts';
import { nameText, type Writing } from './writing.ts';

/** Columns, in their order. */
const COLUMNS = [
  'week',
  'water',
  'share',
  'stays',
  'rain',
  'use',
  'supplied',
  'demand',
  'ahead',
  'cost',
  'suppliedByDay',
  'suppliedDifference',
  'demandByDay',
  'demandDifference',
  'tank',
] as const;
type Column = (typeof COLUMNS)[number];

/** Beside the weeks: what the supply has. */
const FACTS_COLUMN = COLUMNS.length + 1;
/** The price stands in the first of their rows. */
const PRICE = { row: 1, column: FACTS_COLUMN + 1 };
const CHART_ROWS = 20;

const columnOf = (column: Column): number => COLUMNS.indexOf(column);

/** The cells of all weeks in a column. */
const weeksOf = (column: Column, weeks: number): string =>
  `${cellName(1, columnOf(column))}:${cellName(weeks, columnOf(column))}`;

export function supplySheet(writing: Writing, season: SeasonSheet, plantings: PlantingsSheet): SheetContent {
  const { say, names } = writing;
  const { weeks } = writing.season.garden.span;
  const facts = factRows(writing);
  const weekRows = rowsOfWeeks(writing, season, plantings);
  const all = [headingRow(writing), ...weekRows];
  const rows = weekly(Math.max(all.length, facts.length), (row) => withFacts(all[row] ?? [], facts[row] ?? []));
  const values = (column: Column) => `${writing.on.supply}${weeksOf(column, weeks)}`;
  return {
    name: names.supply,
    widths: [...COLUMNS.map(() => 13), 3, 34, 12],
    frozen: { rows: 1, columns: 1 },
    rows,
    chart: {
      title: say.supply.chart,
      series: [
        { name: say.supply.supplied, values: values('supplied'), color: '2B7A9B' },
        { name: say.supply.demand, values: values('demand'), color: '1E2A2E' },
      ],
      categories: values('week'),
      yTitle: writing.format.unit('volume'),
      from: { row: facts.length + 1, col: FACTS_COLUMN },
      to: { row: facts.length + 1 + CHART_ROWS, col: FACTS_COLUMN + 8 },
    },
  };
}

function withFacts(row: Row, facts: Row): Row {
  if (facts.length === 0) return row;
  return [...weekly(FACTS_COLUMN, (column) => row[column]), ...facts];
}

function headingRow({ say, csv, format, season }: Writing): Row {
  const { supply } = say;
  const volume = (heading: string) => supply.unit(heading, format.unit('volume'));
  return headings(
    supply.week,
    volume(csv.measures.volume),
    supply.share,
    volume(supply.stays),
    volume(csv.measures.rain),
    volume(csv.more.demand),
    volume(supply.supplied),
    volume(supply.demand),
    volume(supply.ahead),
    supply.cost,
    volume(supply.byDay(supply.supplied)),
    volume(say.headings.difference),
    volume(supply.byDay(supply.demand)),
    volume(say.headings.difference),
    season.garden.supply.tank === undefined ? '' : volume(supply.tank),
  );
}

function rowsOfWeeks(writing: Writing, season: SeasonSheet, plantings: PlantingsSheet): readonly Row[] {
  const { on, seasonTotalsRow, plantingTotalsRow, amount, say } = writing;
  const { weeks, firstDay } = writing.season.garden.span;
  const { figures } = writing.season.totals;
  const { rain, irrigation, demand } = cumulative(writing.season.totals);
  const tank = seasonSupply(writing.season).tank;
  const total = (which: (typeof TOTALS)[number], week: number) =>
    weekCell(on.season, seasonTotalsRow + TOTALS.indexOf(which), week, season.totals[which][week] as number);
  let supplied: Term | undefined;
  let asked: Term | undefined;
  const rows = weekly(weeks, (week): Row => {
    const here = (column: Column, { value }: Term): Term => ({ text: cellName(week + 1, columnOf(column)), value });
    const litres = figures.at(SUPPLY_FIELDS.litres, week);
    const stayed = figures.at(SUPPLY_FIELDS.irrigationStayedLitres, week);
    const water = total('volume', week);
    const share = number(litres > 0 ? stayed / litres : 1);
    const stays = times(here('water', water), here('share', share));
    const rainCounted = total('rain', week);
    const use = weekCell(on.plantings, plantingTotalsRow, week, plantings.use[week] as number);
    const brought = plus(here('stays', stays), here('rain', rainCounted));
    const soFar = supplied === undefined ? brought : plus(supplied, brought);
    const askedSoFar = asked === undefined ? here('use', use) : plus(asked, here('use', use));
    const cost = over(times(here('water', water), { text: cellName(PRICE.row, PRICE.column), value: 0 }), number(1000));
    supplied = here('supplied', soFar);
    asked = here('demand', askedSoFar);
    const suppliedByDay = number(amount((rain[week] as number) + (irrigation[week] as number), 'volume'));
    const demandByDay = number(amount(demand[week] as number, 'volume'));
    const level = tank?.levelL[7 * week + 6];
    return [
      { value: serialDay(firstDay + 7 * week), style: 'date fixed' },
      formula(water, 'volume'),
      fixed(share.value, 'share'),
      formula(stays, 'volume'),
      formula(rainCounted, 'volume'),
      formula(use, 'volume'),
      formula(soFar, 'volume'),
      formula(askedSoFar, 'volume'),
      formula(less(supplied, asked), 'volume'),
      formula(cost, 'money'),
      fixed(suppliedByDay.value, 'volume'),
      formula(less(supplied, here('suppliedByDay', suppliedByDay)), 'volume'),
      fixed(demandByDay.value, 'volume'),
      formula(less(asked, here('demandByDay', demandByDay)), 'volume'),
      ...(level === undefined ? [] : [fixed(amount(level, 'volume'), 'volume')]),
    ];
  });
  const sum = (column: Column): NumberCell => {
    const values = valuesOf(rows.map((row) => row[columnOf(column)]));
    return formula(sumOf(weeksOf(column, weeks), values), column === 'cost' ? 'money' : 'volume');
  };
  const totalCells: Partial<Record<Column, CellContent>> = {
    week: text(say.supply.total, 'heading'),
    water: sum('water'),
    stays: sum('stays'),
    rain: sum('rain'),
    use: sum('use'),
    cost: sum('cost'),
  };
  return [...rows, COLUMNS.map((column) => totalCells[column])];
}

/** The price first, since formulas ask for it. */
function factRows(writing: Writing): readonly Row[] {
  const { say, season, reader, format, amount } = writing;
  const { supply } = season.garden;
  const words = say.supply;
  const outlook = seasonSupply(season);
  const fact = (label: string, si: number | undefined, quantity: Quantity): Row[] =>
    si === undefined
      ? []
      : [
          [
            text(words.unit(label, format.unit(quantity))),
            fixed(amount(si, quantity), quantity === 'supplyFlow' ? 'flow' : 'volume'),
          ],
        ];
  return [
    headings(say.sheets.supply, ''),
    [text(words.price[reader.units]), mine(0, 'money')],
    ...supply.sources.flatMap(({ name, flowLpm, pressureKpa }) => [
      ...fact(nameText(words.source(name)), flowLpm, 'supplyFlow'),
      ...fact(nameText(words.pressure(name)), pressureKpa, 'pressure'),
    ]),
    [text(words.window), fixed(supply.windowHoursPerDay, 'count')],
    ...fact(words.perWeek, supply.allowanceLitresPerWeek, 'volume'),
    ...fact(words.perSeason, supply.allowanceLitresPerSeason, 'volume'),
    ...fact(words.left, outlook.allowance?.seasonLeftL, 'volume'),
    ...fact(words.capacity, supply.tank?.capacityLitres, 'volume'),
  ];
}
