/**
 * How the cells of a workbook look (ECMA-376, part 1, 18.8). What a person may change has a ground and an edge; a figure of the daily
 * calculation is slanted.
 */
import { SPREADSHEET } from './namespaces.ts';
import { CELL_ROLES, type CellRole, NUMBER_KINDS, type NumberKind, type StyleId } from './sheet-content.ts';
import { document, element } from './xml.ts';

const FORMATS: Readonly<Record<NumberKind, string>> = {
  volume: '#,##0',
  depth: '0.00',
  minutes: '#,##0.0',
  flow: '0.00',
  area: '#,##0.0',
  factor: '0.00',
  share: '0%',
  count: '0',
  money: '#,##0.00',
  date: 'yyyy-mm-dd',
};

/** `font`, `fill` and `border`: indexes of the lists below; left out, the first. */
interface Style {
  readonly format: string;
  readonly font?: number;
  readonly fill?: number;
  readonly border?: number;
  readonly wraps?: boolean;
}

const font = (size: number, color: string): string =>
  [
    element('sz', { val: size }),
    element('color', { rgb: color }),
    element('name', { val: 'Calibri' }),
    element('family', { val: 2 }),
  ].join('');
const INK = 'FF1E2A2E';
const PLAIN = 0;
const BOLD = 1;
const SLANTED = 2;
const LARGE = 3;
const FONTS: readonly string[] = [
  font(11, INK),
  `<b/>${font(11, INK)}`,
  `<i/>${font(11, 'FF4A5A60')}`,
  `<b/>${font(13, INK)}`,
];

const pattern = (patternType: string, content = ''): string => element('patternFill', { patternType }, content);
const solid = (rgb: string): string => pattern('solid', element('fgColor', { rgb }));
const HEADING_FILL = 2;
const MINE_FILL = 3;
/** The first two are the same in every workbook. */
const FILLS: readonly string[] = [pattern('none'), pattern('gray125'), solid('FFDCE9EE'), solid('FFFFF3C4')];

const edge = (side: string): string => element(side, { style: 'thin' }, element('color', { rgb: 'FF6B7F86' }));
const BELOW = 1;
const AROUND = 2;
const BORDERS: readonly string[] = [
  '<left/><right/><top/><bottom/><diagonal/>',
  `<left/><right/><top/>${edge('bottom')}<diagonal/>`,
  `${['left', 'right', 'top', 'bottom'].map(edge).join('')}<diagonal/>`,
];

const ROLES: Readonly<Record<CellRole, Omit<Style, 'format'>>> = {
  mine: { fill: MINE_FILL, border: AROUND },
  fixed: { font: SLANTED },
  formula: {},
};

/** A cell that says its figures as they are. */
const TEXT = '@';

const STYLES: readonly (readonly [StyleId, Style])[] = [
  ['text', { format: TEXT }],
  ['wrapped', { format: TEXT, wraps: true }],
  ['heading', { format: TEXT, font: BOLD, fill: HEADING_FILL, border: BELOW, wraps: true }],
  ['date-heading', { format: FORMATS.date, font: BOLD, fill: HEADING_FILL, border: BELOW }],
  ['title', { format: TEXT, font: LARGE }],
  ...NUMBER_KINDS.flatMap((kind) =>
    CELL_ROLES.map((role): readonly [StyleId, Style] => [`${kind} ${role}`, { ...ROLES[role], format: FORMATS[kind] }]),
  ),
];

/** The first is that of every cell without one. */
const NUMBERS: ReadonlyMap<StyleId, number> = new Map(STYLES.map(([id], index) => [id, index + 1]));

export const styleNumber = (id: StyleId): number => NUMBERS.get(id) ?? 0;

const NOTHING = { numFmtId: 0, fontId: 0, fillId: 0, borderId: 0 };

/** Numbers below are the formats that every spreadsheet has. */
const FIRST_OWN_FORMAT = 164;

export function stylesXml(): string {
  const formats = [...new Set(STYLES.map(([, { format }]) => format))];
  const list = (name: string, entry: string, contents: readonly string[]) =>
    element(name, { count: contents.length }, contents.map((content) => element(entry, {}, content)).join(''));
  const own = formats.map((code, index) => element('numFmt', { numFmtId: FIRST_OWN_FORMAT + index, formatCode: code }));
  const cells = STYLES.map(([, style]) => cellStyle(style, FIRST_OWN_FORMAT + formats.indexOf(style.format)));
  return document(
    element(
      'styleSheet',
      { xmlns: SPREADSHEET },
      [
        element('numFmts', { count: own.length }, own.join('')),
        list('fonts', 'font', FONTS),
        list('fills', 'fill', FILLS),
        list('borders', 'border', BORDERS),
        element('cellStyleXfs', { count: 1 }, element('xf', NOTHING)),
        element('cellXfs', { count: cells.length + 1 }, element('xf', { ...NOTHING, xfId: 0 }) + cells.join('')),
        element('cellStyles', { count: 1 }, element('cellStyle', { name: 'Normal', xfId: 0, builtinId: 0 })),
      ].join(''),
    ),
  );
}

function cellStyle({ font = PLAIN, fill = 0, border = 0, wraps }: Style, format: number): string {
  const attributes = {
    numFmtId: format,
    fontId: font,
    fillId: fill,
    borderId: border,
    xfId: 0,
    applyNumberFormat: 1,
    applyFont: 1,
    applyFill: 1,
    applyBorder: 1,
    applyAlignment: 1,
  };
  return element('xf', attributes, element('alignment', { vertical: 'top', ...(wraps && { wrapText: 1 }) }));
}
