import { setAt } from '../../../engine/project/edits/set-at.ts';
import { CommandButton } from '../../fields/command-choice.tsx';
import { Yours } from '../../fields/yours.tsx';
import { useOpenProject } from '../../state/use-workbench.ts';

/** Harsh figures to start from, until the department's stand there; R is what a frame without a rated system may count on. */
const ASKED = { sds: 1, sd1: 0.6, r: 1.5, rGivenBy: '' };

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
      <Yours path="site.seismic.sd1" label="Earthquake: SD1" />, S1{' '}
      <Yours path="site.seismic.s1" label="Earthquake: S1" />, R <Yours path="site.seismic.r" label="Earthquake: R" />{' '}
      set by <Yours path="site.seismic.rGivenBy" label="Earthquake: who set R" kind="text" />.{' '}
      <span className="quiet">The first figures are harsh ones: type those of your department.</span>{' '}
      <CommandButton words="do not ask it" perform={(p) => setAt(p, 'site.seismic', null)} />
    </p>
  );
}
