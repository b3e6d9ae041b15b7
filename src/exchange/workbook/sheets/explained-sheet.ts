/** How the figures came about, in words: what may be changed, the formulas, and why a week's sum differs from the days'. */
import { CAUTION_IDS, type CautionId } from '../../../explain/notices/cautions.ts';
import { cautionWords } from '../../../language/en/cautions.ts';
import { type Row, type SheetContent, text } from '../sheet-content.ts';
import type { Writing } from './writing.ts';

export function explainedSheet(planName: string, { say, names, reader, format, season, today }: Writing): SheetContent {
  const { explained: words } = say;
  const cautions: readonly CautionId[] = CAUTION_IDS.filter(
    (id) => id !== 'tank' || season.garden.supply.tank !== undefined,
  );
  const part = (title: string, lines: readonly string[]): Row[] => [
    [text(title, 'title')],
    ...lines.map((line): Row => [text(line, 'wrapped')]),
    [],
  ];
  return {
    name: names.explained,
    widths: [110],
    frozen: { rows: 0, columns: 0 },
    isUpright: true,
    rows: [
      ...part(words.title(planName), [
        words.marked,
        words.slanted,
        ...(today === undefined ? [] : [words.written(format, today)]),
      ]),
      ...part(words.weatherTitle, [words.weather, words.minutes, words.area, words.price]),
      ...part(words.stepsTitle, [
        words.use[reader.units],
        words.rain,
        words.needed,
        words.gross,
        words.zone,
        words.apply,
        words.supply,
      ]),
      ...part(words.differenceTitle, words.difference),
      ...part(words.sourcesTitle, words.sources),
      ...part(
        words.cautionsTitle,
        cautions.map((id) => cautionWords(reader.language).full[id]),
      ),
    ],
  };
}
