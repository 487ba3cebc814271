import { describe, expect, it } from 'vitest';
import { loadWords } from '../../../src/ui/sheet/load-words.ts';

describe('a combination as a reviewer writes it', () => {
  it('carries the factors of the standard (ASCE/SEI 7-16, 2.4.1, allowable stress)', () => {
    expect(loadWords('1')).toBe('dead');
    expect(loadWords('3-snow+snow-along-1')).toBe('dead + snow');
    expect(loadWords('6-snow+snow+wind-along-plus')).toBe('dead + 0.75 snow + 0.45 wind');
    expect(loadWords('7+wind-across-0')).toBe('0.6 dead + 0.6 wind');
  });

  it('names an own live load only where one hangs on the shelter', () => {
    expect(loadWords('4-snow+own-live+snow')).toBe('dead + 0.75 own live + 0.75 snow');
    expect(loadWords('6-snow+snow+wind-x')).not.toContain('own live');
  });

  it('names a person at work and an earthquake', () => {
    expect(loadWords('3-roofLive+person-1')).toBe('dead + a person at work');
    expect(loadWords('8+seismic-plus')).toBe('dead + 0.7 earthquake, level and upright');
    expect(loadWords('3-snow+own-snow')).toBe('dead + snow');
  });

  it('says what sag is asked of, and nothing where no load is involved', () => {
    expect(loadWords('sag+snow')).toBe('snow alone');
    expect(loadWords('years+roof-live')).toBe('creep of dead + roof live');
    expect(loadWords('')).toBe('');
  });
});
