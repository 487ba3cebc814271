import { describe, expect, it } from 'vitest';
import { parseProject } from '../../../src/engine/project/parse.ts';
import { gableTemplate } from '../../../src/engine/project/templates/gable.ts';
import { leanToTemplate } from '../../../src/engine/project/templates/lean-to.ts';
import { shedTemplate } from '../../../src/engine/project/templates/shed.ts';
import { countedIds } from '../../support/ids.ts';

describe('templates', () => {
  it.each([
    ['shed', shedTemplate],
    ['lean-to', leanToTemplate],
    ['gable', gableTemplate],
  ])('the %s template is a sound project with nothing repaired', (_, template) => {
    const project = template(countedIds());
    expect(parseProject(project)).toEqual({ ok: true, project });
  });

  it('a template leaves the county values open and marks the rest of the site as guessed or presumed', () => {
    const { site } = shedTemplate(countedIds());
    expect(site.groundSnowPsf.value).toBeNull();
    expect(site.windMph.value).toBeNull();
    expect(site.exposure.givenBy).toBe('guess');
  });
});
