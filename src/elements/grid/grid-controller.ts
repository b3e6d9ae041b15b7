import type { ReactiveController, ReactiveControllerHost } from 'lit';
import type { SeasonSetting } from '../../sheet/grid/season-setting.ts';
import type { SheetGrid } from '../../sheet/grid/sheet-grid.ts';
import type { CellReference } from '../../sheet/reference.ts';
import { fetchPart } from '../shared/fetch-part.ts';

/** All that a grid is made from. */
export interface GridParts {
  readonly box: HTMLElement;
  readonly setting: SeasonSetting;
  readonly licenseKey: string;
  /** What all views point at. */
  readonly selection: CellReference;
}

type SheetPart = typeof import('../../sheet/grid/sheet-grid.ts');

const fetchGrid = () => Promise.all([import('../../sheet/grid/sheet-grid.ts'), import('./grid-around.ts')]);

/** Loads the grid when it is first wanted, and keeps one alive for as long as the element is on the page. */
export class GridController implements ReactiveController {
  grid: SheetGrid | undefined;
  /** What stands around it; undefined until both were fetched. */
  around: typeof import('./grid-around.ts') | undefined;
  /** Whether the grid's code could not be fetched. */
  hasFailed = false;

  readonly #host: ReactiveControllerHost;
  readonly #parts: () => GridParts | undefined;
  #made: GridParts | undefined;
  #sheet: SheetPart | undefined;
  #loading: Promise<void> | undefined;
  readonly #sizes = new ResizeObserver(() => {
    const wasNarrow = this.grid?.isNarrow;
    this.grid?.resize();
    if (this.grid?.isNarrow !== wasNarrow) this.#host.requestUpdate();
  });

  constructor(host: ReactiveControllerHost, parts: () => GridParts | undefined) {
    this.#host = host;
    this.#parts = parts;
    host.addController(this);
  }

  /** Begins to fetch the grid's code while its sheet is on the way; where that fails, it is told once the grid is wanted. */
  fetchAhead(): void {
    fetchGrid().catch(() => undefined);
  }

  hostUpdated(): void {
    const parts = this.#parts();
    const isSame =
      parts?.box === this.#made?.box &&
      parts?.setting.sheet === this.#made?.setting.sheet &&
      parts?.licenseKey === this.#made?.licenseKey;
    if (!isSame) this.drop();
    if (parts === undefined) return;
    if (this.grid !== undefined) this.grid.select(parts.selection);
    else if (this.#sheet !== undefined) this.#make(this.#sheet, parts);
    else if (!this.hasFailed) this.#loading ??= this.#fetch();
  }

  /** Waits for a grid that is being loaded; false where there was one to wait for. */
  async isSettled(): Promise<boolean> {
    if (this.#loading === undefined) return true;
    await this.#loading;
    return false;
  }

  hostDisconnected(): void {
    this.drop();
  }

  async #fetch(): Promise<void> {
    try {
      const parts = await fetchPart(fetchGrid);
      this.hasFailed = parts === undefined;
      [this.#sheet, this.around] = parts ?? [];
    } finally {
      this.#loading = undefined;
      this.#host.requestUpdate();
    }
  }

  /** In the room that is left beside what stands around it: fitted to that later, its cells would move away under a press. */
  #make({ SheetGrid }: SheetPart, made: GridParts): void {
    this.#made = made;
    this.grid = new SheetGrid(made.box, made.setting, made.licenseKey);
    this.grid.select(made.selection);
    this.#sizes.observe(made.box.parentElement ?? made.box);
    this.#host.requestUpdate();
  }

  /** What is drawn goes. */
  drop(): void {
    this.#sizes.disconnect();
    this.grid?.destroy();
    this.grid = undefined;
    this.#made = undefined;
  }
}
