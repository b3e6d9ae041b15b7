import type { Emitter } from './emitter.ts';

/** Tubing of the trade by its inside diameter. */
export interface Tubing {
  readonly id: string;
  readonly insideDiameterMm: number;
  readonly use: 'dripline' | 'solid';
  /** Where its figures come from. */
  readonly source: string;
}

/** Tubing with emitters built in; sold in each of the spacings. */
export interface Dripline {
  readonly id: string;
  readonly emitter: Emitter;
  readonly spacingsM: readonly number[];
  readonly tubingId: string;
  /** Where its figures come from. */
  readonly source: string;
}

/** An emitter or spray that is set into solid tubing, by the piece. */
export interface SingleEmitter {
  readonly id: string;
  readonly emitter: Emitter;
  /** Where its figures come from. */
  readonly source: string;
}

/** Goods that a remedy may propose. A page's owner can put a list of local goods in its place. */
export interface Catalogue {
  readonly tubing: readonly Tubing[];
  readonly driplines: readonly Dripline[];
  readonly pointEmitters: readonly SingleEmitter[];
  readonly microSprays: readonly SingleEmitter[];
}
