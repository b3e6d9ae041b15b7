import { describe, expect, it } from 'vitest';
import type { Plan } from '../../../src/plan/schema/plan-schema.ts';
import { mixedGarden, oneBed } from '../../support/small-plans.ts';
import { cellOf, sheetOf } from '../sheet-of.ts';

function said(plan: Plan, row: string, at: string): string {
  const sheet = sheetOf(plan);
  return sheet.describe(cellOf(sheet, row, at));
}

const byHand = (minutes: number): Plan => oneBed({ choices: { beds: { '2027-06-14': { minutes } } } });

describe('a zone’s week in words', () => {
  it('says its water, and that its minutes were set by hand', () => {
    expect(said(byHand(50), 'beds', '2027-06-14')).toContain(
      'Beds, week of June 14: 60 gallons, 50 minutes set by hand;',
    );
    expect(said(byHand(50), 'beds', '2027-06-07')).not.toContain('by hand');
  });

  it('says its state', () => {
    expect(said(byHand(0), 'beds', '2027-06-14')).toMatch(/(dry|short)/);
    expect(said(mixedGarden(), 'containers', '2027-08-02')).toContain('closed by hand');
  });

  it('ends with its note', () => {
    expect(said(mixedGarden(), 'beds', '2027-07-12')).toMatch(/\. Note: Heat is coming\.$/);
  });

  it('says so while nothing is in the ground, and the note that was made of it', () => {
    const season = { firstDay: '2027-04-05', weeks: 12 };
    expect(said(oneBed({ season }), 'beds', '2027-04-05')).toBe('Beds, week of April 5: nothing in the ground.');
    const choices = { beds: { '2027-04-05': { note: 'Dig.' } } };
    expect(said(oneBed({ season, choices }), 'beds', '2027-04-05')).toBe(
      'Beds, week of April 5: nothing in the ground. Note: Dig.',
    );
  });
});

describe('a planting’s week in words', () => {
  it('says on how many days its shut-off was open, and whether that was set by hand', () => {
    const words = said(mixedGarden(), 'shrubs', '2027-07-12');
    expect(words).toContain('shut-off open 1 of 3 watering days, set by hand');
    expect(said(mixedGarden(), 'shrubs', '2027-07-05')).not.toContain('set by hand');
  });

  it('says nothing of days without a shut-off', () => {
    expect(said(mixedGarden(), 'tomatoes', '2027-07-12')).not.toContain('shut-off');
  });
});

describe('a week of weather in words', () => {
  it('says where its figure comes from', () => {
    expect(said(mixedGarden(), 'rain', '2027-04-12')).toContain('from the normals');
    expect(said(mixedGarden(), 'rain', '2027-04-19')).toContain('2 of 7 days entered, the rest from the normals');
    expect(said(mixedGarden(), 'rain', '2027-05-03')).toBe(
      'Rain, week of May 3: 0.3 inches; total of the week entered by hand.',
    );
  });
});

describe('the whole season in words', () => {
  it.each([
    ['eto', /^Reference ET, whole season: [\d.]+ inches\.$/],
    ['beds', /^Beds, whole season: [\d,]+ gallons, [\d,]+ minutes; [\d.]+ inches of rain credited\.$/],
    ['shrubs', /^Shrubs in Beds, whole season: received [\d,]+ gallons; \d+\u00a0% of its need\.$/],
    ['total', /^Whole garden, whole season: .* of run time, zone after zone; rain stood in for [\d,]+ gallons\.$/],
  ])('of %s', (row, words) => {
    expect(said(mixedGarden(), row, 'season')).toMatch(words);
  });

  it('is not asked of a name, which says what stands behind it', () => {
    expect(said(mixedGarden(), 'beds', 'name')).toBe('Beds: 3\u00a0days a\u00a0week.');
  });
});
