/** Each way to credit a month's rain, in words. */
import type { RainMethod } from '../../../engine/rain/effective-rain.ts';

export interface RainMethodWords {
  readonly title: string;
  readonly says: string;
  readonly formula: string;
  readonly source: string;
}

export const RAIN_METHOD_WORDS: Readonly<Record<RainMethod, RainMethodWords>> = {
  tr21: {
    title: 'USDA TR-21',
    says: 'Of much rain less is of use; thirsty plants and deep soil can use more of it.',
    formula:
      'Pe = SF (1.2525 P^0.82416 − 2.9352) × 10^(0.00095512 ETc), in mm, at least 0, at most P and ETc; ' +
      'SF = 0.531747 + 0.295164 D − 0.057697 D² + 0.003804 D³, D in inches, from 0.75 to 7',
    source: 'USDA SCS TR-21 (1967, rev. 1970); NEH Part 623 ch. 2, eq. 2-84 and 2-85 (numbers from memory)',
  },
  fao: {
    title: 'FAO monthly relation',
    says: 'A fixed part of the month’s rain counts, after a first part that is lost.',
    formula: 'Pe = 0.8 P − 25 above 75 mm, else 0.6 P − 10, at least 0 (mm)',
    source: 'Brouwer and Heibloem (1986), FAO Training Manual 3, Table 6 (attribution from memory)',
  },
  'scs-simplified': {
    title: 'simplified SCS relation',
    says: 'Nearly all of a little rain counts, less of much.',
    formula: 'Pe = P (125 − 0.2 P)/125 up to 250 mm, above it 125 + 0.1 P (mm)',
    source: 'USDA Soil Conservation Service, simplified monthly form, as FAO method texts print it',
  },
  fraction: {
    title: 'plain share',
    says: 'The plan counts one fixed share of all rain.',
    formula: 'Pe = P × share that counts',
    source: 'Common practice, no source; California Title 23 s. 492 ff. allows at most a quarter',
  },
  balance: {
    title: 'the balance decides',
    says: 'All rain soaks in, and what the soil cannot hold drains away.',
    formula: 'Pe = P',
    source: 'FAO-56 eq. 85 to 88',
  },
};
