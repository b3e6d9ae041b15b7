/** Labelled values of a step, each kind with its quantity or its unit. */
import type { TraceValue } from './trace-step.ts';

/** mm. */
export const depth = (label: string, value: number): TraceValue => ({ label, value, quantity: 'depth' });

/** mm/h. */
export const rate = (label: string, value: number): TraceValue => ({ label, value, quantity: 'rate' });

/** L. */
export const volume = (label: string, value: number): TraceValue => ({ label, value, quantity: 'volume' });

/** L/min. */
export const flow = (label: string, value: number): TraceValue => ({ label, value, quantity: 'supplyFlow' });

/** m2. */
export const area = (label: string, value: number): TraceValue => ({ label, value, quantity: 'area' });

/** °C. */
export const temperature = (label: string, value: number): TraceValue => ({ label, value, quantity: 'temperature' });

export const minutes = (label: string, value: number): TraceValue => ({ label, value, unit: 'minutes', digits: 1 });

export const days = (label: string, value: number): TraceValue => ({
  label,
  value,
  unit: value === 1 ? 'day' : 'days',
  digits: 0,
});

/** A bare whole number. */
export const count = (label: string, value: number): TraceValue => ({ label, value, digits: 0 });

/** A number without unit: a coefficient, a share. */
export const factor = (label: string, value: number): TraceValue => ({ label, value, digits: 3 });

/** A share of 1, shown in per cent. */
export const percent = (label: string, share: number): TraceValue => ({
  label,
  value: 100 * share,
  unit: '%',
  digits: 0,
});

export const words = (label: string, value: string): TraceValue => ({ label, value });
