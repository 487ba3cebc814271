import { z } from 'zod';
import { coordinateIn, id, lbs, longText, positiveIn, psf, shortText } from '../schema-parts.ts';

export const cut = z.strictObject({
  id,
  member: id,
  kind: z.enum(['flat', 'dap', 'notch', 'housing']),
  centreIn: coordinateIn,
  lengthIn: positiveIn,
  depthIn: positiveIn,
  angleDeg: z.number().min(-360).max(360),
  by: z.enum(['hand', 'override']),
  joint: z.string().max(200).optional(),
});

export const lateral = z.strictObject({
  by: z.enum(['kneeBraces', 'embeddedPosts', 'transverseFrame', 'building', 'ratedWalls', 'none']).nullable(),
  lines: z.array(id).max(10).optional(),
  posts: z.array(id).max(20).optional(),
  ratedLb: lbs.nullable().optional(),
  givenBy: shortText.optional(),
});

export const ownLoad = z.strictObject({
  id,
  name: shortText,
  kind: z.enum(['dead', 'live', 'snow', 'wind']),
  duration: z.enum(['permanent', 'tenYears', 'twoMonths', 'sevenDays', 'tenMinutes']),
  removable: z.boolean(),
  direction: z.enum(['down', 'up', 'xPlus', 'xMinus', 'yPlus', 'yMinus']),
  where: z.discriminatedUnion('on', [
    z.strictObject({ on: z.literal('line'), line: id, xIn: coordinateIn, lb: lbs }),
    z.strictObject({
      on: z.literal('stretch'),
      line: id,
      fromXIn: coordinateIn,
      toXIn: coordinateIn,
      plf: z.number().min(0).max(10000),
    }),
    z.strictObject({ on: z.literal('member'), member: id, atIn: coordinateIn, lb: lbs }),
    z.strictObject({
      on: z.literal('plane'),
      plane: id,
      fromXIn: coordinateIn,
      toXIn: coordinateIn,
      fromYIn: coordinateIn,
      toYIn: coordinateIn,
      psf,
    }),
  ]),
});

const INSTEAD = [
  'meanRoofHeightFt',
  'swayAreaFt2',
  'swayPsf',
  'stripHeavyPlf',
  'stripLightPlf',
  'effectiveLengthAlongIn',
  'effectiveLengthAcrossIn',
  'columnTaperA',
  'columnC',
  'seatAreaIn2',
  'pierWeightLb',
  'roofLiveReducedPsf',
  'braceWeightPlf',
  'gustFactor',
  'kd',
  'acrossDragLb',
  'acrossMinAreaFt2',
] as const;
export const instead = z.strictObject({
  what: z.enum(INSTEAD),
  of: id.nullable(),
  value: z.number().min(0).max(1e7),
  why: longText.min(1),
});
