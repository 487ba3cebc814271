import { rafterLoading } from '../checks/roof/rafter-loading.ts';
import type { Givens, Prepared } from '../givens.ts';
import type { RafterGeometry } from '../geometry/shelter.ts';
import type { LoadCase } from '../loads/cases.ts';
import type { Pressure } from '../loads/rafter-reactions.ts';
import { emptyPicture, type LoadPicture } from './picture.ts';
import { joined, stripOn } from './strips.ts';

/** A case of some rafter with the pressures that it puts on the strip of roof that the rafter carries. */
interface RafterShare {
  readonly loadCase: LoadCase;
  readonly isWind: boolean;
  readonly rafter: RafterGeometry;
  readonly psf: readonly Pressure[];
}

/** Wind on the parts of the roof by their own areas: harder than on the frame, and never mixed with it. */
export function componentPictures(givens: Prepared): {
  readonly pictures: readonly LoadPicture[];
  readonly cases: readonly LoadCase[];
} {
  const shares = sharesOf(givens);
  const cases = [...new Map(shares.map(({ loadCase }) => [loadCase.id, loadCase] as const)).values()];
  const pictures = cases.flatMap((loadCase): readonly LoadPicture[] => {
    const on = shares.filter((share) => share.isWind && share.loadCase.id === loadCase.id);
    if (on.length === 0) return [];
    return [{ ...emptyPicture(loadCase), actsOn: 'components', strips: stripsOf(on, givens) }];
  });
  return { pictures, cases };
}

function sharesOf(givens: Prepared): readonly RafterShare[] {
  const context = { ...givens, valuesOf: givens.materials.of };
  return givens.shelter.rafters.flatMap((rafter) =>
    rafterLoading(context, rafter).cases.map(({ loadCase, isWind, psf }) => ({ loadCase, isWind, rafter, psf })),
  );
}

function stripsOf(shares: readonly RafterShare[], { runOf }: Givens): LoadPicture['strips'] {
  return joined(
    shares.flatMap(({ rafter, psf }) => runOf(rafter).parts.map((part, i) => stripOn(rafter, part, psf[i]!, 'square'))),
  );
}
