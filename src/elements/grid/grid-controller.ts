import type { ReactiveController, ReactiveControllerHost } from 'lit';
import type { OwnGrid } from '../../sheet/grid/own-grid.ts';
import type { SeasonSetting } from '../../sheet/grid/season-setting.ts';
import type { SheetPlace } from '../../sheet/sheet-place.ts';

/** All that a grid is made from. */
export interface GridParts {
  readonly box: HTMLElement;
  readonly setting: SeasonSetting;
  readonly licenseKey: string;
  readonly place: SheetPlace;
}

/** Loads the grid when it is first wanted, and keeps one alive for as long as the element is on the page. */
export class GridController implements ReactiveController {
  grid: OwnGrid | undefined;
  /** Whether the grid's code could not be fetched. */
  hasFailed = false;

  readonly #host: ReactiveControllerHost;
  readonly #parts: () => GridParts | undefined;
  #made: GridParts | undefined;
  #isLoading = false;
  readonly #sizes = new ResizeObserver(() => this.grid?.resize());

  constructor(host: ReactiveControllerHost, parts: () => GridParts | undefined) {
    this.#host = host;
    this.#parts = parts;
    host.addController(this);
  }

  hostUpdated(): void {
    const parts = this.#parts();
    const isSame =
      parts?.box === this.#made?.box &&
      parts?.setting.sheet === this.#made?.setting.sheet &&
      parts?.licenseKey === this.#made?.licenseKey;
    if (!isSame) this.#drop();
    if (parts === undefined) return;
    if (this.grid === undefined) void this.#make();
    else this.grid.select(parts.place);
  }

  hostDisconnected(): void {
    this.#drop();
  }

  async #make(): Promise<void> {
    if (this.#isLoading || this.hasFailed) return;
    this.#isLoading = true;
    try {
      const { OwnGrid } = await import('../../sheet/grid/own-grid.ts');
      // The element may have left the page, or have another plan, by now.
      const parts = this.#parts();
      if (parts === undefined) return;
      this.#made = parts;
      this.grid = new OwnGrid(parts.box, parts.setting, parts.licenseKey);
      this.grid.select(parts.place);
      this.#sizes.observe(parts.box);
    } catch (error) {
      this.hasFailed = true;
      // A fault of the page's own, not of the network, must not hide.
      if (!(error instanceof TypeError)) throw error;
    } finally {
      this.#isLoading = false;
      this.#host.requestUpdate();
    }
  }

  #drop(): void {
    this.#sizes.disconnect();
    this.grid?.destroy();
    this.grid = undefined;
    this.#made = undefined;
  }
}
