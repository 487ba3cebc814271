import { z } from 'zod';
import { coordinateIn, id, lengthIn, positiveIn, psf, shortText } from '../schema-parts.ts';
import { sawn, stock } from './stock.ts';

const height = z.strictObject({ of: z.enum(['bearing', 'beamAxis', 'underside']), zIn: coordinateIn });
export const supportLine = z.discriminatedUnion('kind', [
  z.strictObject({
    kind: z.literal('frame'),
    id,
    yIn: coordinateIn,
    height: height.nullable(),
    set: z.enum(['top', 'axis', 'underside']),
    strip: z
      .strictObject({
        stock: stock.nullable(),
        thicknessIn: lengthIn,
        shims: z.enum(['shims', 'tapered', 'seats', 'none']),
      })
      .nullable(),
  }),
  z.strictObject({
    kind: z.literal('ledger'),
    id,
    yIn: coordinateIn,
    height: height.nullable(),
    stock: stock.nullable(),
    fromXIn: coordinateIn,
    toXIn: coordinateIn,
    wallFaceYIn: coordinateIn,
    fixingSpacingIn: positiveIn.nullable(),
    /** wood of the wall that each fixing ends in, as somebody has seen it; absent = nobody says what is there */
    behind: z
      .strictObject({
        stock: sawn,
        /** studs stand upright, a band or a log of the wall lies level */
        grain: z.enum(['upright', 'level']),
        /** sheathing and siding between ledger and wood */
        coverIn: lengthIn,
      })
      .optional(),
  }),
]);

const roofDead = z.discriminatedUnion('by', [
  z.strictObject({
    by: z.literal('parts'),
    layers: z.array(z.strictObject({ name: shortText, heavyPsf: psf, lightPsf: psf })).max(20),
  }),
  z.strictObject({
    by: z.literal('total'),
    heavyPsf: psf,
    lightPsf: psf,
    includes: z.array(z.enum(['purlins', 'rafters'])).max(2),
  }),
]);
export const roofPlane = z.strictObject({
  id,
  // one line alone is refused with its own reason, see the soundness rules of the roof
  onLines: z.array(id).min(1).max(6),
  risePer12: z.number().min(0).max(24),
  highOverhangIn: lengthIn,
  lowOverhangIn: lengthIn,
  fromXIn: coordinateIn,
  toXIn: coordinateIn,
  rafters: z.enum(['simple', 'continuous']),
  horizontalHeldBy: z.string().max(60),
  covering: z.strictObject({
    kind: shortText,
    slippery: z.boolean(),
    unobstructed: z.boolean(),
    pastRafterIn: lengthIn,
    ratedSpanIn: positiveIn.nullable(),
  }),
  sheetOn: z.enum(['purlins', 'rafters']),
  dead: roofDead,
});
