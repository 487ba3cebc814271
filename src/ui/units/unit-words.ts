import type { FieldKind } from './field-kind.ts';
import { MEASURES } from './measures.ts';
import type { UnitSystem } from './system.ts';

const LENGTH = { feet: 'a length in feet and inches', metric: 'a length in metres or millimetres' } as const;

/** What a field takes, in words, for those who hear the page; the unit is never only a suffix. */
export function unitWords(kind: FieldKind, system: UnitSystem): string {
  switch (kind) {
    case 'text':
      return '';
    case 'length':
      return `${LENGTH[system]}, for example ${system === 'feet' ? '13 ft 6 1/2 in' : '4.1 m'}`;
    case 'diameter':
      return `a diameter, or a girth, for example ${system === 'feet' ? '11 1/2 in or girth 36 in' : '290 mm or girth 910 mm'}`;
    case 'risePer12':
      return 'inches of rise in 12 of run, for example 3 in 12';
    case 'grainSlope':
      return 'slope of grain, for example 1 in 14';
    case 'share':
      return 'a share, for example 60 %';
    default: {
      const { what, example } = MEASURES[kind];
      return `${what}, for example ${example[system]}`;
    }
  }
}

const KEYS: Readonly<Partial<Record<FieldKind, Readonly<Record<UnitSystem, readonly string[]>>>>> = {
  length: { feet: ['ft', 'in', '/', 'space'], metric: ['m', 'mm', '.'] },
  diameter: { feet: ['in', '/', 'space', 'girth'], metric: ['mm', 'girth'] },
  risePer12: { feet: ['in', '/', '°'], metric: ['in', '°', '%'] },
  grainSlope: { feet: ['in'], metric: ['in'] },
};

/** Keys that a number pad lacks and this kind of field needs. */
export const keysFor = (kind: FieldKind, system: UnitSystem): readonly string[] => KEYS[kind]?.[system] ?? [];
