import { FREE_ROOF_RANGE } from '../../data/loads/free-roof-main.ts';
import type { Prepared } from '../givens.ts';
import { message, type Message } from '../message.ts';
import type { LoadPicture } from './picture.ts';

/** Cases that this shelter has no picture of, beside those that the load report names, each with its reason. */
export function leftOutOf(givens: Prepared, pictures: readonly LoadPicture[]): readonly Message[] {
  const { project, form, site } = givens;
  const has = (start: string): boolean => pictures.some(({ id }) => id.startsWith(start));
  const hasWind = pictures.some(({ kind }) => kind === 'wind');
  const { goods } = project.surroundings;
  const { bandsAcrossBelowDeg, leastHeightOverLength } = FREE_ROOF_RANGE;
  return [
    ...(project.ownLoads.length === 0 ? [message('ownLoadsNone')] : []),
    ...(has('roof-live-') ? [] : [message('livePatternsLeftOut')]),
    ...(site.figures.balancedSnow.value === null ? [message('snowNotKnown')] : []),
    ...(site.figures.leastLowSlopeSnow.value === 0 ? [message('leastSnowLeftOut')] : []),
    ...(hasWind ? [] : [message(form === null ? 'roofFormNotCovered' : 'windNotKnown')]),
    ...(hasWind && !has('wind-flat-')
      ? [message('bandsLeftOut', { slopeDeg: bandsAcrossBelowDeg, ratio: leastHeightOverLength })]
      : []),
    ...(goods === null ? [message('goodsNone')] : goods.leansOnLines.length === 0 ? [message('goodsStandAlone')] : []),
  ];
}
