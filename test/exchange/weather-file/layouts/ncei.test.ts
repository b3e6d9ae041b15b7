/** Layouts of NOAA NCEI: header lines and rows as public files have them; the days are made. */
import { describe, expect, it } from 'vitest';
import { isoDate } from '../../../../src/engine/calendar.ts';
import { readWeatherFile } from '../../../../src/exchange/weather-file/read-weather-file.ts';
import { countOf, expectMade } from './expect-made.ts';
import { FIRST_DAY, FLAGGED, MADE_DAYS, TRACED, WRITTEN } from './made-days.ts';

const fahrenheit = (celsius: number) => Math.round(celsius * 1.8 + 32);

interface Order {
  readonly metric?: boolean;
  readonly flags?: boolean;
}

/** Rain, with its attributes where they were ordered. */
function rainCells({ index, rainMm }: (typeof WRITTEN)[number], { metric = false, flags = false }: Order) {
  const depth = metric ? rainMm.toFixed(1) : (rainMm / 25.4).toFixed(2);
  if (index === TRACED) return flags ? ['0.00', 'T,,W'] : ['T'];
  return flags ? [depth, ',,W'] : [depth];
}

/** °F and inches unless told otherwise; the flagged day's high is left empty, as this layout shows no flags unless asked for. */
function searchFile(order: Order = {}): string {
  const { metric = false, flags = false } = order;
  const header = ['STATION', 'NAME', 'DATE', 'MDPR', 'PRCP', ...(flags ? ['PRCP_ATTRIBUTES'] : []), 'SNOW', 'TMAX'];
  const rows = WRITTEN.map((made) => {
    const degrees = (celsius: number) => (metric ? celsius.toFixed(1) : fahrenheit(celsius));
    return [
      ...['US1XX000001', 'A TOWN 2 N, XX US', isoDate(made.day)],
      ...[made.index === 50 ? '1.30' : '', ...rainCells(made, order), '0.0'],
      ...[made.index === FLAGGED ? '' : degrees(made.maxTemperatureC), degrees(made.minTemperatureC)],
    ];
  });
  return [[...header, 'TMIN'], ...rows].map((row) => row.map((cell) => `"${cell}"`).join(',')).join('\n');
}

describe('the NCEI search layout', () => {
  it('asks for its units where both are possible, and reads it in those that were said', () => {
    const cool = searchFile({ metric: true });
    const asked = readWeatherFile(cool);
    expect(asked).toMatchObject({ kind: 'ncei-search', asked: ['units'], record: undefined });
    const file = readWeatherFile(cool, { units: 'metric' });
    expectMade(file, { rainMm: 1e-9, temperatureC: 1e-9 });
    expect(file.place).toMatchObject({ id: 'US1XX000001', name: 'A TOWN 2 N, XX US' });
    expect(file.units.depth).toEqual({ system: 'metric', by: 'choice' });
  });

  it('needs no answer where a summer of 70 to 85 degrees cannot be °C', () => {
    const file = readWeatherFile(searchFile());
    expectMade(file, { rainMm: 0.13, temperatureC: 0.28 });
    expect(file.units.temperature).toEqual({ system: 'us', by: 'size' });
  });

  it('reads days as a spreadsheet writes them when it saves the file, and asks where they could be either', () => {
    const saved = searchFile().replaceAll(
      /"(\d{4})-(\d\d)-(\d\d)"/g,
      (_, year, month, day) => `${Number(month)}/${Number(day)}/${year}`,
    );
    expectMade(readWeatherFile(saved), { rainMm: 0.13, temperatureC: 0.28 });
    // Where decimals have a comma, semicolons part the cells.
    const elsewhere = saved
      .replaceAll('",', ';')
      .replaceAll('"', '')
      .replaceAll(/(\d{4}),/g, '$1;')
      .replaceAll(/(\d)\.(\d)/g, '$1,$2');
    expectMade(readWeatherFile(elsewhere), { rainMm: 0.13, temperatureC: 0.28 });
    const [header = '', first = ''] = saved.split('\n');
    const early = `${header}\n${first.replace(/,\d+\/\d+\/\d+,/, ',4/5/2027,')}\n`;
    expect(readWeatherFile(early).asked).toEqual(['days']);
    const file = readWeatherFile(early, { days: 'day-month-year', units: 'us' });
    expect(isoDate(file.record?.firstDay ?? 0)).toBe('2027-05-04');
  });

  it('refuses an answer that is physically impossible', () => {
    const { record, refused } = readWeatherFile(searchFile(), { units: 'metric' });
    expect(record).toBeUndefined();
    expect(refused).toMatchObject({ code: 'wrong-units', reading: 'maxTemperatureC', value: '68' });
  });

  it('takes a trace from its column of attributes too, and says what was summed over several days', () => {
    const file = readWeatherFile(searchFile({ flags: true }));
    expectMade(file, { rainMm: 0.13, temperatureC: 0.28 });
    expect(countOf('accumulated', 'rainMm', file.leftOut)).toBe(1);
  });

  it('asks which of two stations, and reads the one alone', () => {
    const two = `${searchFile()}\n"US1XX000002","OTHER, XX US","2027-05-01","","9.00","0.0","99","98"`;
    const asked = readWeatherFile(two);
    expect(asked.asked).toEqual(['place']);
    expect(asked.places.map(({ name }) => name)).toEqual(['A TOWN 2 N, XX US', 'OTHER, XX US']);
    expectMade(readWeatherFile(two, { place: 'US1XX000001' }), { rainMm: 0.13, temperatureC: 0.28 });
  });
});

function accessFile(): string {
  const header =
    '"STATION","DATE","LATITUDE","LONGITUDE","ELEVATION","NAME","PRCP","PRCP_ATTRIBUTES","TMAX","TMAX_ATTRIBUTES","TMIN","TMIN_ATTRIBUTES"';
  const tenth = (value: number) => String(Math.round(value * 10)).padStart(5);
  const rows = WRITTEN.map(({ day, index, rainMm, minTemperatureC, maxTemperatureC }) =>
    [
      ...['USW00000001', isoDate(day), '40.7789', '-73.9692', '39.6', 'A PARK, XX US'],
      ...(index === TRACED ? ['    0', 'T,,W,2400'] : [tenth(rainMm), ',,W,2400']),
      ...[tenth(maxTemperatureC), index === FLAGGED ? ',S,W' : ',,W', tenth(minTemperatureC), ',,W'],
    ]
      .map((cell) => `"${cell}"`)
      .join(','),
  );
  return [header, ...rows].join('\r\n');
}

describe('the NCEI access layout', () => {
  it('reads tenths, padded with blanks, and rejects what has a quality flag', () => {
    const file = readWeatherFile(accessFile());
    expect(file).toMatchObject({ kind: 'ncei-access', isModel: false });
    expectMade(file, { rainMm: 1e-9, temperatureC: 1e-9 });
    expect(countOf('flagged', 'maxTemperatureC', file.leftOut)).toBe(1);
    expect(file.place).toMatchObject({ latitudeDeg: 40.7789, longitudeDeg: -73.9692, elevationM: 39.6 });
  });

  it('takes no figure with a decimal point for tenths', () => {
    const odd = accessFile().replaceAll(/" *(\d+)(\d)",",,W"/g, '"$1.$2",",,W"');
    const { leftOut } = readWeatherFile(odd);
    expect(countOf('unread', 'minTemperatureC', leftOut)).toBe(WRITTEN.length);
  });

  it('does not mistake days of 1,000 tenths of a degree for weather', () => {
    const hot = accessFile().replace(/("2027-06-10".*?",,W,2400",)" *\d+"/, '$1" 1000"');
    const { leftOut, record } = readWeatherFile(hot);
    expect(leftOut.find(({ cause }) => cause === 'impossible')).toMatchObject({
      first: { day: FIRST_DAY + 40, text: '1000' },
      count: 1,
    });
    expect(record?.columns.maxTemperatureC?.[40]).toBeNaN();
    expect(record?.columns.maxTemperatureC?.[39]).toBeCloseTo(MADE_DAYS[39]?.maxTemperatureC ?? 0, 9);
  });
});
