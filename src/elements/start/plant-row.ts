/** The row of a planting that is being typed: what is said so far, as it was typed. */
import type { WaterUseClassId } from '../../engine/plants/water-use-classes.data.ts';
import { fromSi, toSi } from '../../engine/units.ts';
import type { GardenPlant, ListedPlant } from '../../exchange/plants/plant-list.ts';
import { parsePlantCount } from '../../language/format/parse-size.ts';
import type { Reader } from '../../language/reader.ts';
import { changed } from '../../plan/edits/change.ts';
import type { Edit } from '../../plan/edits/edit.ts';
import { newPlantingId } from '../../plan/ids.ts';
import { isClassSetByHand, needOfCrop } from '../../plan/need-of-plant.ts';
import { resized } from '../../plan/resized.ts';
import type { Plan, PlanNeed, PlanPlanting, PlanZone } from '../../plan/schema/plan-schema.ts';
import { linesFor, usualWay } from '../../plan/usual-lines.ts';
import { rootDepthOfListed } from '../garden/listed-plant.ts';
import { type ReadSize, readSize } from '../garden/read-size.ts';

type Container = NonNullable<PlanPlanting['container']>;

export interface RowSize extends ReadSize {
  /** Plants were counted, and their spread is that of the list. */
  readonly isSpreadListed?: boolean;
}

interface Editing {
  /** In which it stood. */
  readonly zone: string;
  readonly before: PlanPlanting;
}

/** What is typed of a row, as plain data. */
export type RowText = Pick<
  PlantRow,
  'name' | 'plant' | 'listed' | 'need' | 'size' | 'zone' | 'from' | 'mix' | 'isUnderRoof'
>;

export class PlantRow {
  /** The planting that is changed, as it stood; undefined for one that is added. */
  editing: Editing | undefined = undefined;
  name = '';
  /** The plant's name, as it stands in its field. */
  plant = '';
  /** The plant that was chosen from the list. */
  listed: ListedPlant | undefined = undefined;
  need: PlanNeed | undefined = undefined;
  size = '';
  zone: string | undefined = undefined;
  from = '';
  /** Of pots and baskets: their mix, and whether rain reaches them. */
  mix: NonNullable<Container['mix']> = 'potting';
  isUnderRoof = false;
  /** Part of what had been kept of the row could not be read. */
  isKeptInPart = false;
  /** Why the row cannot be taken yet. */
  refused: 'size-missing' | 'size-not-read' | undefined = undefined;

  clear(): void {
    Object.assign(this, new PlantRow(), { zone: this.zone });
  }

  /** Undefined where nothing is typed, or where a planting is changed that is in the plan. */
  get text(): RowText | undefined {
    const { name, plant, listed, need, size, zone, from, mix, isUnderRoof } = this;
    const isTyped = this.editing === undefined && [name, plant, size, from].some((text) => text !== '');
    return isTyped ? { name, plant, listed, need, size, zone, from, mix, isUnderRoof } : undefined;
  }

  begin(zone: PlanZone, planting: PlanPlanting, size: string, plant: string): void {
    this.clear();
    this.editing = { zone: zone.id, before: planting };
    this.name = planting.name;
    this.need = planting.need;
    this.plant = plant;
    this.size = size;
    this.zone = zone.id;
    this.from = planting.inGround?.from ?? '';
    this.mix = planting.container?.mix ?? 'potting';
    this.isUnderRoof = planting.container?.rainShare === 0;
  }

  /** What the size that is typed comes to. */
  sizeRead(reader: Reader): RowSize | undefined {
    return readSize(this.size, this.editing?.before, reader) ?? this.#bySpread(reader);
  }

  #bySpread(reader: Reader): RowSize | undefined {
    const count = parsePlantCount(this.size, reader);
    if (count === undefined || this.listed?.type !== 'plant') return undefined;
    const diameter = Math.round(fromSi(spreadM(this.listed), 'diameter', reader.units));
    return { extent: { kind: 'canopy', count, diameter }, isSpreadListed: true };
  }

  /** What the pots hold, as it follows from their size, or as it was said. */
  #container(container: Container | undefined): Container | undefined {
    if (container === undefined) return undefined;
    const rainShare = this.isUnderRoof ? 0 : this.editing?.before.container?.rainShare || undefined;
    return changed<Container>(container, { mix: this.mix === 'potting' ? undefined : this.mix, rainShare });
  }

  /** Another name than that of the plant that was chosen: what that one brought goes with it, but for a class chosen by hand. */
  typePlant(text: string): void {
    this.plant = text;
    if (this.listed === undefined) return;
    this.listed = undefined;
    const { need } = this;
    this.need = need?.kind === 'class' && isClassSetByHand(need) ? { kind: 'class', class: need.class } : undefined;
  }

  get classId(): WaterUseClassId | undefined {
    return this.need?.kind === 'class' ? this.need.class : undefined;
  }

  /** A class that somebody chooses wins over the one that the plant brought. */
  chooseClass(id: WaterUseClassId): void {
    this.need = this.need?.kind === 'class' ? { ...this.need, class: id } : { kind: 'class', class: id };
  }

  /** What the row comes to; undefined, and `refused` says why, where it comes to nothing yet. */
  edit(plan: Plan, reader: Reader, unnamed: string): Edit | undefined {
    const size = this.sizeRead(reader);
    this.refused = size === undefined ? (this.size.trim() === '' ? 'size-missing' : 'size-not-read') : undefined;
    const zone = this.zone ?? plan.zones[0]?.id;
    if (size === undefined || zone === undefined) return undefined;
    const name = this.name.trim() || this.plant.trim() || unnamed;
    const { extent } = size;
    const container = this.#container(size.container);
    const rootDepth = container === undefined ? rootDepthOfListed(this.listed, plan.units) : undefined;
    const roots = rootDepth === undefined ? {} : { rootDepth };
    const told = { name, need: this.#needFrom(plan), extent, container, ...roots };
    if (this.editing !== undefined) return this.#change(this.editing, plan, zone, told);
    const planting: PlanPlanting = {
      ...changed<PlanPlanting>({ id: newPlantingId(plan, name), ...told, lines: [] }, { container }),
      ...(this.from === '' ? {} : { inGround: { from: this.from } }),
      lines: linesFor(usualWay(extent, container !== undefined), extent, plan.units),
      assumed: [
        ...(this.need === undefined ? (['need'] as const) : []),
        ...(this.need?.kind === 'crop' && this.from === '' ? (['plantedOn'] as const) : []),
        ...(size.isSpreadListed === true ? (['extent'] as const) : []),
        'lines',
      ],
    };
    return { type: 'add-planting', zone, planting };
  }

  /** The same crop keeps its planting day, and what is known of its stages. */
  #needFrom(plan: Plan): PlanNeed {
    const { need } = this;
    if (need?.kind !== 'crop') return need ?? { kind: 'class', class: 'moderate' };
    const before = this.editing?.before;
    if (before?.need === need && this.from === (before.inGround?.from ?? '')) return need;
    return { ...need, ...needOfCrop(need.crop, this.from || plan.season.firstDay) };
  }

  /** Lines that are still assumed go with another size; those that somebody laid stay. */
  #change(
    { zone: zoneBefore, before }: Editing,
    plan: Plan,
    zone: string,
    change: Pick<PlanPlanting, 'name' | 'need' | 'extent' | 'rootDepth'> & {
      readonly container: Container | undefined;
    },
  ): Edit {
    const at = { zone: zoneBefore, planting: before.id };
    const { assumed: _, ...size } = resized(before, change, plan.units);
    const inGround = changed<NonNullable<PlanPlanting['inGround']>>(before.inGround ?? {}, {
      from: this.from || undefined,
    });
    const own = {
      ...{ ...change, ...size, assumed: this.#assumedAfter(before, change) },
      inGround: Object.keys(inGround).length === 0 ? undefined : inGround,
    };
    const edits: Edit[] = [{ type: 'change-planting', ...at, change: own }];
    if (zone !== zoneBefore) edits.push({ type: 'move-planting', ...at, toZone: zone });
    return { type: 'together', edits };
  }

  /** What stays assumed, and the day of a crop that was chosen without one. */
  #assumedAfter(before: PlanPlanting, { need, extent }: Pick<PlanPlanting, 'need' | 'extent'>) {
    const { assumed = [] } = before;
    const kept = assumed.filter(
      (part) => part === 'lines' || (part === 'extent' ? extent === before.extent : need === before.need),
    );
    const isDayNew = need !== before.need && need.kind === 'crop' && this.from === '';
    const all = isDayNew ? ([...kept, 'plantedOn'] as const) : kept;
    return all.length > 0 ? all : undefined;
  }
}

const spreadM = ({ spreadFt }: GardenPlant): number => toSi((spreadFt.least + spreadFt.most) / 2, 'length', 'us');
