/** What can be done about unlike plantings in one zone, as data: the words are made where it is shown. */
import type { ZoneRule } from '../../engine/garden.ts';
import type { ShutOffStretch } from '../../engine/mix/shut-off-calendar.ts';
import type { Edit } from '../../plan/edits/edit.ts';
import type { MixFigures } from './mix-figures.ts';

/** One thing that is done. Lengths, flows and spacings in SI. */
export type MixChange =
  | {
      readonly kind: 'dripline';
      readonly plantingId: string;
      readonly emitterFlowLph: number;
      readonly spacingM: number;
      readonly lengthM: number;
    }
  | {
      readonly kind: 'runs';
      readonly plantingId: string;
      /** Rows, loops round each plant, or lengths of line side by side. */
      readonly layout: 'rows' | 'loops' | 'length';
      readonly before: number;
      readonly after: number;
    }
  | {
      readonly kind: 'emitters' | 'sprays';
      readonly plantingId: string;
      readonly emitterFlowLph: number;
      readonly count: number;
      /** Whether `count` is that of one plant. */
      readonly isPerPlant: boolean;
    }
  | {
      readonly kind: 'shut-off';
      readonly plantingId: string;
      /** Whether it is then left alone until it needs filling, where it was brought back every week before. */
      readonly turnsToRefill: boolean;
    }
  | {
      readonly kind: 'cut';
      readonly newZoneId: string;
      readonly newZoneName: string;
      readonly moved: readonly string[];
    }
  | { readonly kind: 'rule'; readonly rule: ZoneRule };

export type MixChangeKind = MixChange['kind'];

/** What to get. */
export interface Goods {
  readonly driplineM: number;
  readonly emitters: number;
  readonly sprays: number;
  readonly shutOffs: number;
  /** A valve or timer station, with its solid line. */
  readonly valves: number;
}

export const NO_GOODS: Goods = { driplineM: 0, emitters: 0, sprays: 0, shutOffs: 0, valves: 0 };

export function goodsTogether(one: Goods, other: Goods): Goods {
  return {
    driplineM: one.driplineM + other.driplineM,
    emitters: one.emitters + other.emitters,
    sprays: one.sprays + other.sprays,
    shutOffs: one.shutOffs + other.shutOffs,
    valves: one.valves + other.valves,
  };
}

/** Kinds of things to get, and of one kind the pieces: what breaks a tie. */
export function thingsToGet({ driplineM, emitters, sprays, shutOffs, valves }: Goods): number {
  return Math.ceil(driplineM) + emitters + sprays + shutOffs + valves;
}

/** Something that might be done, before anybody knows what comes of it. */
export interface MixCandidate {
  readonly changes: readonly MixChange[];
  readonly goods: Goods;
  /** In the order in which they are made. */
  readonly edits: readonly Edit[];
}

/** A candidate with what comes of it: figures of the season after the edit, exactly. */
export interface MixRemedy extends Omit<MixCandidate, 'edits'> {
  readonly edit: Edit;
  /** The zone, and the one that a cut makes. */
  readonly zoneIds: readonly string[];
  readonly after: MixFigures;
  readonly litresSaved: number;
  readonly drainedLitresAvoided: number;
  readonly unmetLitresAvoided: number;
  readonly shortDaysAvoided: number;
  /** What the ranking goes by; see `remedyWorth`. */
  readonly worthLitres: number;
  /** Of every shut-off that it adds. */
  readonly calendars: readonly ShutOffCalendar[];
}

export interface ShutOffCalendar {
  readonly plantingId: string;
  readonly stretches: readonly ShutOffStretch[];
}
