import { setAt } from '../../../engine/project/edits/set-at.ts';
import { CommandButton } from '../../fields/command-choice.tsx';
import { Yours } from '../../fields/yours.tsx';
import { useOpenProject } from '../../state/use-workbench.ts';

/** Values of a structure without a rated system: what a post frame of logs may count on (R). */
const ASKED = { sds: 0, sd1: 0, r: 1.5, rGivenBy: '' };

/** Shaking of the ground counts only where the department gives its two figures. */
export function Earthquake() {
  const { site } = useOpenProject();
  if (!site.seismic)
    return (
      <p className="sentence">
        Earthquake is not asked; a sideways push of one hundredth of the weight is.{' '}
        <CommandButton words="ask earthquake" perform={(p) => setAt(p, 'site.seismic', ASKED)} />
      </p>
    );
  return (
    <p className="sentence">
      Earthquake: SDS <Yours path="site.seismic.sds" label="Earthquake: SDS" />, SD1{' '}
      <Yours path="site.seismic.sd1" label="Earthquake: SD1" />, R <Yours path="site.seismic.r" label="Earthquake: R" />{' '}
      set by <Yours path="site.seismic.rGivenBy" label="Earthquake: who set R" kind="text" />.{' '}
      <CommandButton words="do not ask it" perform={(p) => setAt(p, 'site.seismic', null)} />
    </p>
  );
}
