/** A remedy in words: what is done, what it promises, what it takes. */

import { formatCount } from '../../language/format/count.ts';
import { formatList } from '../../language/format/list.ts';
import { formatQuantity } from '../../language/format/quantity.ts';
import type { Reader } from '../../language/reader.ts';
import type { Goods, MixChange, MixRemedy } from '../../remedies/mix/remedy.ts';
import { mixWords, remedyWords } from '../shared/words/mix-words.ts';

/** A planting's name by its id. */
export type NameOf = (plantingId: string) => string;

export function remedyInWords({ changes }: Pick<MixRemedy, 'changes'>, nameOf: NameOf, reading: Reader): string {
  const said = changes.map((change) => changeInWords(change, nameOf, reading));
  const [one = '', other] = said;
  return other === undefined ? one : remedyWords.both(one, other);
}

function changeInWords(change: MixChange, nameOf: NameOf, reading: Reader): string {
  const words = remedyWords.change;
  switch (change.kind) {
    case 'dripline':
      return words.dripline(
        nameOf(change.plantingId),
        formatQuantity(change.emitterFlowLph, 'emitterFlow', reading),
        formatQuantity(change.spacingM, 'spacing', reading),
      );
    case 'runs':
      return words[change.layout](nameOf(change.plantingId), change.before, change.after);
    case 'emitters':
    case 'sprays': {
      const pieces = formatCount(change.count, remedyWords[change.kind], reading.locale);
      const count = change.isPerPlant ? words.atEachPlant(pieces) : pieces;
      return words.emitters(
        nameOf(change.plantingId),
        count,
        formatQuantity(change.emitterFlowLph, 'emitterFlow', reading),
      );
    }
    case 'shut-off':
      return words['shut-off'](nameOf(change.plantingId));
    case 'cut': {
      const names = formatList(change.moved.map(nameOf), reading.locale);
      return change.moved.length === 1 ? words.cutOne(names, change.newZoneName) : words.cut(names, change.newZoneName);
    }
    case 'rule':
      if (change.rule.kind === 'planting') return words.rule(nameOf(change.rule.plantingId));
      return words.rule(change.rule.kind === 'thirstiest' ? words.byThirstiest : words.byArea);
  }
}

/** Water first, then days, then what is lost below the roots. */
export function promiseInWords(remedy: MixRemedy, reading: Reader): string {
  const volume = (litres: number) => formatQuantity(Math.abs(litres), 'volume', reading);
  const { litresSaved, shortDaysAvoided, drainedLitresAvoided } = remedy;
  return [
    litresSaved >= 0 ? remedyWords.saves(volume(litresSaved)) : remedyWords.uses(volume(litresSaved)),
    shortDaysAvoided > 0
      ? remedyWords.fewerShort(formatCount(shortDaysAvoided, mixWords.days, reading.locale))
      : remedyWords.sameShort,
    drainedLitresAvoided >= 0
      ? remedyWords.lessLost(volume(drainedLitresAvoided))
      : remedyWords.moreLost(volume(drainedLitresAvoided)),
  ].join('; ');
}

export function goodsInWords(goods: Goods, reading: Reader): string {
  const { driplineM, ...pieces } = goods;
  const things = driplineM > 0 ? [remedyWords.line(formatQuantity(driplineM, 'length', reading))] : [];
  for (const kind of ['emitters', 'sprays', 'shutOffs', 'valves'] as const) {
    if (pieces[kind] > 0) things.push(formatCount(pieces[kind], remedyWords[kind], reading.locale));
  }
  return things.length === 0 ? remedyWords.getNothing : formatList(things, reading.locale);
}
