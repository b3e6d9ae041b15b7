/** ical.js (MPL-2.0), as far as tests ask it. Its own declarations do not compile: it is named so that they are not read. */

export interface IcalComponent {
  getAllSubcomponents(name: string): IcalComponent[];
  getFirstSubcomponent(name: string): IcalComponent | null;
  getFirstPropertyValue(name: string): unknown;
}

interface IcalTime {
  toUnixTime(): number;
}

interface IcalEvent {
  readonly uid: string;
  readonly startDate: IcalTime;
  readonly endDate: IcalTime;
  readonly summary: string;
  readonly description: string;
  readonly sequence: number;
}

interface IcalLibrary {
  parse(text: string): unknown;
  readonly Component: new (parsed: unknown) => IcalComponent;
  readonly Event: new (component: IcalComponent) => IcalEvent;
}

const name: string = 'ical.js';

export const { default: ICAL } = (await import(name)) as { readonly default: IcalLibrary };
