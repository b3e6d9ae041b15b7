/** All parts of an .xlsx file but its sheets (ECMA-376, parts 1 and 2): what it holds, what they are called, how they hang together. */
import { chartXml, drawingXml } from './chart-xml.ts';
import { PACKAGE, RELATIONS, SPREADSHEET } from './namespaces.ts';
import { columnName, inSheet, type SheetContent, type WorkbookContent } from './sheet-content.ts';
import { stylesXml } from './styles-xml.ts';
import { document, element, escaped } from './xml.ts';

export const sheetPath = (index: number): string => `xl/worksheets/sheet${index + 1}.xml`;

/** By which a sheet knows its drawing, and a drawing its chart. */
export const ONLY_RELATION = 'rId1';

/** Text by path. */
export function workbookParts(content: WorkbookContent): readonly (readonly [path: string, xml: string])[] {
  const { sheets, title } = content;
  const charts = sheets.flatMap(({ chart }, index) => (chart === undefined ? [] : [{ chart, index }]));
  return [
    [
      '[Content_Types].xml',
      contentTypes(
        sheets.length,
        charts.map(({ index }) => index),
      ),
    ],
    [
      '_rels/.rels',
      relations([
        [`${RELATIONS}/officeDocument`, 'xl/workbook.xml'],
        [`${PACKAGE}/relationships/metadata/core-properties`, 'docProps/core.xml'],
      ]),
    ],
    ['docProps/core.xml', coreProperties(title)],
    ['xl/workbook.xml', workbookXml(sheets)],
    [
      'xl/_rels/workbook.xml.rels',
      relations([
        ...sheets.map((_, index) => [`${RELATIONS}/worksheet`, `worksheets/sheet${index + 1}.xml`] as const),
        [`${RELATIONS}/styles`, 'styles.xml'],
      ]),
    ],
    ['xl/styles.xml', stylesXml()],
    ...charts.flatMap(({ chart, index }) => {
      const number = index + 1;
      return [
        [
          `xl/worksheets/_rels/sheet${number}.xml.rels`,
          relations([[`${RELATIONS}/drawing`, `../drawings/drawing${number}.xml`]]),
        ],
        [`xl/drawings/drawing${number}.xml`, drawingXml(chart, ONLY_RELATION)],
        [
          `xl/drawings/_rels/drawing${number}.xml.rels`,
          relations([[`${RELATIONS}/chart`, `../charts/chart${number}.xml`]]),
        ],
        [`xl/charts/chart${number}.xml`, chartXml(chart)],
      ] as const;
    }),
  ];
}

function relations(targets: readonly (readonly [type: string, target: string])[]): string {
  const all = targets.map(([Type, Target], index) => element('Relationship', { Id: `rId${index + 1}`, Type, Target }));
  return document(element('Relationships', { xmlns: `${PACKAGE}/relationships` }, all.join('')));
}

function contentTypes(sheets: number, charts: readonly number[]): string {
  const spreadsheet = 'application/vnd.openxmlformats-officedocument.spreadsheetml';
  const drawing = 'application/vnd.openxmlformats-officedocument';
  const parts: readonly (readonly [path: string, type: string])[] = [
    ['xl/workbook.xml', `${spreadsheet}.sheet.main+xml`],
    ['xl/styles.xml', `${spreadsheet}.styles+xml`],
    ['docProps/core.xml', 'application/vnd.openxmlformats-package.core-properties+xml'],
    ...Array.from({ length: sheets }, (_, index) => [sheetPath(index), `${spreadsheet}.worksheet+xml`] as const),
    ...charts.flatMap((index) => [
      [`xl/drawings/drawing${index + 1}.xml`, `${drawing}.drawing+xml`] as const,
      [`xl/charts/chart${index + 1}.xml`, `${drawing}.drawingml.chart+xml`] as const,
    ]),
  ];
  const all = [
    element('Default', { Extension: 'rels', ContentType: 'application/vnd.openxmlformats-package.relationships+xml' }),
    element('Default', { Extension: 'xml', ContentType: 'application/xml' }),
    ...parts.map(([path, type]) => element('Override', { PartName: `/${path}`, ContentType: type })),
  ];
  return document(element('Types', { xmlns: `${PACKAGE}/content-types` }, all.join('')));
}

function coreProperties(title: string): string {
  const spaces = {
    'xmlns:cp': `${PACKAGE}/metadata/core-properties`,
    'xmlns:dc': 'http://purl.org/dc/elements/1.1/',
  };
  return document(element('cp:coreProperties', spaces, element('dc:title', {}, escaped(title))));
}

function workbookXml(sheets: readonly SheetContent[]): string {
  const names = sheets.map(({ name }, index) =>
    element('sheet', { name, sheetId: index + 1, 'r:id': `rId${index + 1}` }),
  );
  const titles = sheets.map(printTitles).join('');
  const parts = [
    '<bookViews><workbookView/></bookViews>',
    element('sheets', {}, names.join('')),
    ...(titles === '' ? [] : [element('definedNames', {}, titles)]),
    // Its results are right, yet whoever opens it computes them anew, as after every change.
    element('calcPr', { fullCalcOnLoad: 1 }),
  ];
  return document(element('workbook', { xmlns: SPREADSHEET, 'xmlns:r': RELATIONS }, parts.join('')));
}

/** Rows and columns that are repeated on each page of paper. */
function printTitles({ name, frozen }: SheetContent, index: number): string {
  const sheet = inSheet(name);
  const columns = frozen.columns > 0 ? [`${sheet}$A:$${columnName(frozen.columns - 1)}`] : [];
  const rows = frozen.rows > 0 ? [`${sheet}$1:$${frozen.rows}`] : [];
  const range = [...columns, ...rows].join(',');
  if (range === '') return '';
  return element('definedName', { name: '_xlnm.Print_Titles', localSheetId: index }, escaped(range));
}
