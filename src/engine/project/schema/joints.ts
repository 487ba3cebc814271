import { z } from 'zod';
import { jointKeyText, lbs, lengthIn, positiveIn, shortText } from '../schema-parts.ts';

const jointKind = z.enum([
  'sheetPurlin',
  'sheetRafter',
  'purlinRafter',
  'rafterStrip',
  'rafterLedger',
  'stripBeam',
  'beamPost',
  'beamSplice',
  'braceTop',
  'bracePost',
  'tiePost',
  'postFoot',
  'ledgerWall',
  'rafterRafter',
]);
/** Steel under the heads: a strap or side plate that takes the same fasteners in both pieces, or the sheet of a roof. */
const plate = z.strictObject({
  thicknessIn: positiveIn,
  /** across the pull; null where only its thickness matters */
  widthIn: positiveIn.nullable(),
  steel: z.enum(['plate', 'strap']),
  /** one, or one on both sides */
  each: z.union([z.literal(1), z.literal(2)]),
});
/** Of a joint; with a plate of each of its ends, with a sheet or a ledger of each spacing. */
const fastenerRow = z.strictObject({
  fastener: z.enum(['lag', 'bolt', 'spike', 'screw', 'nail', 'strap', 'driftPin']),
  diameterIn: z.number().positive().max(2),
  lengthIn: positiveIn,
  count: z.number().int().min(1).max(100),
  rows: z.number().int().min(1).max(20),
  spacingIn: positiveIn.nullable(),
  endIn: positiveIn.nullable(),
  /** outside of the washer, or of a flat round head */
  washerIn: positiveIn.optional(),
  /** how deep a flat is cut under the head, and under the nut of a bolt */
  headFlatIn: lengthIn.optional(),
  plate: plate.optional(),
  /** nails driven slantwise from a third of their length up the side of the upper piece */
  slanted: z.boolean().optional(),
  acts: z.enum(['lateral', 'withdrawal', 'both']),
  driven: z.enum(['wet', 'dry']),
});
const rating = {
  label: shortText,
  parts: z.strictObject({
    pushLb: lbs.nullable(),
    pullLb: lbs.nullable(),
    alongLb: lbs.nullable(),
    acrossLb: lbs.nullable(),
  }),
  durationIncluded: z.number().min(0.9).max(2),
};
/** `null` = nobody said; `none` = nothing but contact, said. */
const capacity = z
  .discriminatedUnion('kind', [
    z.strictObject({ kind: z.literal('none') }),
    z.strictObject({ kind: z.literal('rated'), ...rating }),
    z.strictObject({
      kind: z.literal('fasteners'),
      rows: z.array(fastenerRow).max(10),
      shoulder: z.boolean(),
      /** of what they hold on to beyond the pieces: an anchor in concrete */
      alsoRated: z.strictObject(rating).optional(),
    }),
  ])
  .nullable();
export const joints = z.strictObject({
  defaults: z.array(z.strictObject({ kind: jointKind, capacity })).max(20),
  own: z.array(z.strictObject({ key: jointKeyText, capacity })).max(300),
});
