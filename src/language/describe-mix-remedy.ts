/** A mixed zone's remedy in the reader's language: what is done, what it comes to, what it takes. */
import type { ZoneRule } from '../engine/garden.ts';
import type { Goods, MixChange, MixRemedy } from '../remedies/mix/remedy.ts';
import { mixWords } from './en/mix.ts';
import { formatFor } from './format/format.ts';
import { isolated } from './format/isolated.ts';
import type { Reader } from './reader.ts';

/** A planting's name by its id. */
export type NameOf = (plantingId: string) => string;

/** What is done, without a full stop. */
export function describeMixRemedy({ changes }: Pick<MixRemedy, 'changes'>, nameOf: NameOf, reader: Reader): string {
  const [one = '', other] = changes.map((change) => describeChange(change, nameOf, reader));
  return other === undefined ? one : mixWords(reader.language).remedies.change.both(one, other);
}

function describeChange(change: MixChange, nameOf: NameOf, reader: Reader): string {
  const format = formatFor(reader);
  const words = mixWords(reader.language).remedies.change;
  switch (change.kind) {
    case 'dripline':
      return words.dripline(format, nameOf(change.plantingId), change.emitterFlowLph, change.spacingM);
    case 'runs':
      return words[change.layout](format, nameOf(change.plantingId), change.before, change.after);
    case 'emitters':
    case 'sprays': {
      const pieces = words[change.kind](format, nameOf(change.plantingId), change.count, change.emitterFlowLph);
      return change.isPerPlant ? words.perPlant(pieces) : pieces;
    }
    case 'shut-off':
      return words['shut-off'](nameOf(change.plantingId));
    case 'cut':
      return words.cut(format, change.moved.map(nameOf), isolated(change.newZoneName));
    case 'rule':
      return change.rule.kind === 'planting'
        ? words.rule.planting(nameOf(change.rule.plantingId))
        : words.rule[change.rule.kind];
  }
}

/** What comes of it over the season: water first, then days, then what drains past the roots. */
export function describePromise(remedy: MixRemedy, reader: Reader): string {
  const format = formatFor(reader);
  const words = mixWords(reader.language).remedies;
  const { litresSaved, shortDaysAvoided, drainedLitresAvoided } = remedy;
  return words.promise([
    litresSaved >= 0 ? words.saves(format, litresSaved) : words.takes(format, -litresSaved),
    shortDaysAvoided > 0 ? words.fewerShort(format, shortDaysAvoided) : words.sameShort,
    drainedLitresAvoided >= 0
      ? words.lessLost(format, drainedLitresAvoided)
      : words.moreLost(format, -drainedLitresAvoided),
  ]);
}

/** What to get for it, a sentence. */
export function describeGoods(goods: Goods, reader: Reader): string {
  const format = formatFor(reader);
  const words = mixWords(reader.language).remedies.goods;
  const kinds = ['driplineM', 'emitters', 'sprays', 'shutOffs', 'valves'] as const satisfies readonly (keyof Goods)[];
  const things = kinds.filter((kind) => goods[kind] > 0).map((kind) => words[kind](format, goods[kind]));
  return things.length === 0 ? words.nothing : words.get(format, things);
}

/** Who sets a zone's minutes: `the thirstiest`, or a planting by its name. */
export function ruleName(rule: ZoneRule, nameOf: NameOf, { language }: Reader): string {
  return rule.kind === 'planting' ? nameOf(rule.plantingId) : mixWords(language).rule[rule.kind];
}
