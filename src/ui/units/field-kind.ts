import type { MeasureKind } from './measures.ts';
import { showLength } from './show-length.ts';
import { showMeasure } from './show-measure.ts';
import type { UnitSystem } from './system.ts';

/** How a field's value is shown and its text read. */
export type FieldKind = MeasureKind | 'length' | 'diameter' | 'risePer12' | 'grainSlope' | 'share' | 'text';

const SUFFIXES: readonly (readonly [RegExp, FieldKind])[] = [
  [/^grainSlope1In$/, 'grainSlope'],
  [/^(diameterIn|acrossIn|soundDiameterIn)$/, 'diameter'],
  [/^(blockedShare|share)$/, 'share'],
  [/^(plies|count|rows)$/, 'count'],
  [/Per12$/, 'risePer12'],
  [/PsfPerFt$/, 'psfPerFt'],
  [/Psf$|^psf$/, 'psf'],
  [/Psi$/, 'psi'],
  [/Pcf$/, 'pcf'],
  [/Plf$|^plf$/, 'plf'],
  [/Lb$|^lb$/, 'lb'],
  [/Mph$/, 'mph'],
  [/Deg$/, 'deg'],
  [/Ft$/, 'feet'],
  [/PerIn$/, 'number'],
  [/In$/, 'length'],
  [
    /^(kzt|ke|kcr|snowExposureCe|snowThermalCt|upperCt|sds|sd1|s1|r|durationIncluded|friction|FbSIn3Psi|EIPsiIn4)$/,
    'number',
  ],
];

/** Stored names carry their unit, so the path says the kind: `members[post-2].xIn` is a length. */
export function kindOfPath(path: string): FieldKind {
  const names = path.split(/[.[\]]+/).filter((part) => part !== '' && part !== 'value');
  const last = [...names].reverse().find((part) => !/^\d+$/.test(part)) ?? '';
  return SUFFIXES.find(([pattern]) => pattern.test(last))?.[1] ?? 'text';
}

/** A stored value as its field shows it; '' for what is not given. */
export function showField(kind: FieldKind, value: unknown, system: UnitSystem): string {
  if (typeof value === 'string') return value;
  if (typeof value !== 'number') return '';
  switch (kind) {
    case 'text':
      return String(value);
    case 'length':
      return showLength(value, system, { nearest: 16 });
    case 'diameter':
      return showLength(value, system, { nearest: 16, feetFrom: 'never' });
    case 'risePer12':
      return `${showMeasure('number', value, system)} in 12`;
    case 'grainSlope':
      return `1 in ${showMeasure('number', value, system)}`;
    case 'share':
      return `${showMeasure('number', value * 100, system)} %`;
    default:
      return showMeasure(kind, value, system);
  }
}
