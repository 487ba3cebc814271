import { describe, expect, it } from 'vitest';
import { setAtTouched } from '../../../src/ui/state/not-yet-yours.ts';
import { exampleText, soundProject } from '../../support/files.ts';

const demo = soundProject(exampleText('firewood-shed'));

describe('a value of the site typed over', () => {
  it('is nobody’s yet: who gave the old one did not give the new one', () => {
    expect(demo.site.groundSnowPsf.givenBy).toBe('department');
    const { groundSnowPsf } = setAtTouched(demo, 'site.groundSnowPsf.value', 90).site;
    expect([groundSnowPsf.value, groundSnowPsf.givenBy, groundSnowPsf.date]).toEqual([90, 'guess', null]);
  });

  it('keeps its giver while the value stays, and takes one that is said afterwards', () => {
    expect(setAtTouched(demo, 'site.groundSnowPsf.value', demo.site.groundSnowPsf.value).site.groundSnowPsf).toEqual(
      demo.site.groundSnowPsf,
    );
    const typed = setAtTouched(demo, 'site.groundSnowPsf.value', 90);
    expect(setAtTouched(typed, 'site.groundSnowPsf.givenBy', 'department').site.groundSnowPsf.givenBy).toBe(
      'department',
    );
  });
});
