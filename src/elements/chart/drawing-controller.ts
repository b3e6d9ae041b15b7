import type { ReactiveController } from 'lit';
import type { MonthStart } from '../../language/format/month-starts.ts';
import type { ViewElement } from '../shared/view-element.ts';
import type { ChartLines } from './chart-lines.ts';
import type { ChartLook } from './chart-options.ts';
import { readColours } from './read-colours.ts';
import type { ReserveLine } from './reserve.ts';
import type { SeasonDrawing } from './season-drawing.ts';
import type { BandLines } from './year-band-lines.ts';

/** What is to be drawn; drawn again only when a part of it is another. */
export interface Scene {
  readonly canvas: HTMLCanvasElement;
  readonly lines: ChartLines;
  readonly months: readonly MonthStart[];
  readonly volume: (value: number) => string;
  readonly reserve: ReserveLine | undefined;
  /** Undefined while no years are run. */
  readonly band: BandLines | undefined;
  /** Room before the first week, CSS pixels; undefined = as the axis needs it. */
  readonly leadPx: number | undefined;
}

/** Width and height on paper, CSS pixels: both A4 and US Letter hold them upright. */
const PAPER = [660, 300] as const;

/** Keeps one drawing on the host's canvas: loads Chart.js when first needed, lives as long as the host is in the page. */
export class DrawingController implements ReactiveController {
  readonly #host: ViewElement;
  readonly #scene: () => Scene | undefined;
  #module: Promise<typeof import('./season-drawing.ts')> | undefined;
  #drawing: SeasonDrawing | undefined;
  #drawn: Scene | undefined;
  #weeks: { readonly pointed: number | undefined; readonly selected: number | undefined } = {
    pointed: undefined,
    selected: undefined,
  };

  constructor(host: ViewElement, scene: () => Scene | undefined) {
    this.#host = host;
    this.#scene = scene;
    host.addController(this);
  }

  hostConnected(): void {
    globalThis.addEventListener('beforeprint', this.#toPaper);
    globalThis.addEventListener('afterprint', this.#toScreen);
    this.#host.requestUpdate();
  }

  hostDisconnected(): void {
    globalThis.removeEventListener('beforeprint', this.#toPaper);
    globalThis.removeEventListener('afterprint', this.#toScreen);
    this.#drop();
  }

  hostUpdated(): void {
    this.#draw().catch((error: unknown) => this.#host.fail(error));
  }

  /** Marks the week pointed at and the week selected. */
  mark(pointed: number | undefined, selected: number | undefined): void {
    this.#weeks = { pointed, selected };
    this.#drawing?.mark(pointed, selected);
  }

  /** The week under a point of the screen, once there is a drawing. */
  weekAt(clientX: number): number | undefined {
    return this.#drawing?.weekAt(clientX);
  }

  /** Reads the page's colours again. */
  recolour(): void {
    const scene = this.#drawn;
    if (scene !== undefined) this.#drawing?.show(scene.lines, this.#look(scene, false));
  }

  async #draw(): Promise<void> {
    if (!this.#host.isConnected || this.#scene() === undefined) return this.#drop();
    this.#module ??= import('./season-drawing.ts');
    const { SeasonDrawing } = await this.#module;
    // The host may have moved on while the module was on its way.
    const scene = this.#scene();
    if (!this.#host.isConnected || scene === undefined) return this.#drop();
    if (this.#drawing?.canvas !== scene.canvas) {
      this.#drop();
      this.#drawing = new SeasonDrawing(scene.canvas, scene.lines, this.#look(scene, false));
      this.#drawing.mark(this.#weeks.pointed, this.#weeks.selected);
    } else if (!isSame(scene, this.#drawn)) {
      this.#drawing.show(scene.lines, this.#look(scene, true));
    }
    this.#drawn = scene;
  }

  #drop(): void {
    this.#drawing?.destroy();
    this.#drawing = undefined;
    this.#drawn = undefined;
  }

  #look(scene: Scene, moving: boolean): ChartLook {
    const { fontFamily, fontSize } = getComputedStyle(scene.canvas);
    return {
      weeks: scene.lines.weeks,
      months: scene.months,
      volume: scene.volume,
      reserve: scene.reserve,
      band: scene.band,
      leadPx: scene.leadPx,
      colours: readColours(this.#host.renderRoot),
      font: { family: fontFamily, size: Number.parseFloat(fontSize) },
      pixelRatio: globalThis.devicePixelRatio,
      animate: moving && !matchMedia('(prefers-reduced-motion: reduce)').matches,
    };
  }

  // Printing does not resize a canvas, and a dark page prints on white paper.
  readonly #toPaper = (): void => this.#print(true);
  readonly #toScreen = (): void => this.#print(false);

  #print(isPaper: boolean): void {
    this.#drawn?.canvas.closest('.chart')?.classList.toggle('on-paper', isPaper);
    this.recolour();
    if (isPaper) this.#drawing?.resize(...PAPER);
    else this.#drawing?.resize();
  }
}

function isSame(scene: Scene, drawn: Scene | undefined): boolean {
  return (
    drawn !== undefined &&
    scene.lines === drawn.lines &&
    scene.months === drawn.months &&
    scene.volume === drawn.volume &&
    scene.reserve === drawn.reserve &&
    scene.band === drawn.band &&
    scene.leadPx === drawn.leadPx
  );
}
