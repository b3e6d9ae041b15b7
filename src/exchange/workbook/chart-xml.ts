/** A chart of lines over a sheet (ECMA-376, part 1, 20.5 and 21.2). */
import { DRAWING, RELATIONS } from './namespaces.ts';
import type { LineChart } from './sheet-content.ts';
import { document, element, escaped } from './xml.ts';

/** Where it lies; `relation`: by which the sheet's drawing knows the chart. */
export function drawingXml({ from, to, title }: LineChart, relation: string): string {
  const corner = (name: string, { row, col }: LineChart['from']) =>
    `<xdr:${name}><xdr:col>${col}</xdr:col><xdr:colOff>0</xdr:colOff><xdr:row>${row}</xdr:row><xdr:rowOff>0</xdr:rowOff></xdr:${name}>`;
  const frame = [
    element(
      'xdr:nvGraphicFramePr',
      {},
      `${element('xdr:cNvPr', { id: 2, name: title, descr: title })}<xdr:cNvGraphicFramePr/>`,
    ),
    element('xdr:xfrm', {}, element('a:off', { x: 0, y: 0 }) + element('a:ext', { cx: 0, cy: 0 })),
    element(
      'a:graphic',
      {},
      element(
        'a:graphicData',
        { uri: `${DRAWING}/chart` },
        element('c:chart', { 'xmlns:c': `${DRAWING}/chart`, 'r:id': relation }),
      ),
    ),
  ].join('');
  const anchor = `${corner('from', from)}${corner('to', to)}${element('xdr:graphicFrame', { macro: '' }, frame)}<xdr:clientData/>`;
  const spaces = { 'xmlns:xdr': `${DRAWING}/spreadsheetDrawing`, 'xmlns:a': `${DRAWING}/main`, 'xmlns:r': RELATIONS };
  return document(element('xdr:wsDr', spaces, element('xdr:twoCellAnchor', {}, anchor)));
}

/** 2.25 points. */
const LINE_EMU = 28_575;

/** As a format of numbers has it. */
const MONTH_AND_DAY = ['mmm', 'd'].join(' ');

/** Names of the axes among themselves. */
const X_AXIS = 1;
const Y_AXIS = 2;

export function chartXml({ title, series, categories, yTitle }: LineChart): string {
  const lines = series.map(({ name, values, color }, index) => {
    const stroke = element(
      'c:spPr',
      {},
      element('a:ln', { w: LINE_EMU }, `<a:solidFill>${element('a:srgbClr', { val: color })}</a:solidFill>`),
    );
    return element(
      'c:ser',
      {},
      [
        value('idx', index),
        value('order', index),
        element('c:tx', {}, element('c:v', {}, escaped(name))),
        stroke,
        element('c:marker', {}, value('symbol', 'none')),
        element('c:cat', {}, reference(categories)),
        element('c:val', {}, reference(values)),
        value('smooth', 0),
      ].join(''),
    );
  });
  const lineChart = [
    value('grouping', 'standard'),
    value('varyColors', 0),
    ...lines,
    value('marker', 1),
    axisId(X_AXIS),
    axisId(Y_AXIS),
  ];
  const plot = [
    '<c:layout/>',
    element('c:lineChart', {}, lineChart.join('')),
    axis('dateAx', X_AXIS, Y_AXIS, 'b', numberFormat(MONTH_AND_DAY)),
    axis('valAx', Y_AXIS, X_AXIS, 'l', titled(yTitle) + numberFormat('#,##0')),
  ];
  const chart = [
    titled(title),
    value('autoTitleDeleted', 0),
    element('c:plotArea', {}, plot.join('')),
    element('c:legend', {}, `${value('legendPos', 'b')}${value('overlay', 0)}`),
    value('plotVisOnly', 1),
  ];
  const spaces = { 'xmlns:c': `${DRAWING}/chart`, 'xmlns:a': `${DRAWING}/main`, 'xmlns:r': RELATIONS };
  return document(element('c:chartSpace', spaces, element('c:chart', {}, chart.join(''))));
}

const value = (name: string, val: string | number): string => element(`c:${name}`, { val });
const numberFormat = (formatCode: string): string => element('c:numFmt', { formatCode, sourceLinked: 0 });
const axisId = (id: number): string => value('axId', id);
const reference = (range: string): string => element('c:numRef', {}, element('c:f', {}, escaped(range)));

function titled(words: string): string {
  const run = `<a:p><a:r><a:t>${escaped(words)}</a:t></a:r></a:p>`;
  return element('c:title', {}, `<c:tx><c:rich><a:bodyPr/>${run}</c:rich></c:tx>${value('overlay', 0)}`);
}

function axis(kind: 'dateAx' | 'valAx', id: number, other: number, side: 'b' | 'l', more: string): string {
  const parts = [
    axisId(id),
    element('c:scaling', {}, value('orientation', 'minMax')),
    value('delete', 0),
    value('axPos', side),
    ...(kind === 'valAx' ? ['<c:majorGridlines/>'] : []),
    more,
    value('majorTickMark', 'out'),
    value('minorTickMark', 'none'),
    value('tickLblPos', 'nextTo'),
    value('crossAx', other),
    value('crosses', 'autoZero'),
  ];
  return element(`c:${kind}`, {}, parts.join(''));
}
