import { z } from 'zod';
import { jointKeyText, lbs, positiveIn, shortText } from '../schema-parts.ts';

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
const fastenerRow = z.strictObject({
  fastener: z.enum(['lag', 'bolt', 'spike', 'screw', 'nail', 'strap', 'driftPin']),
  diameterIn: z.number().positive().max(2),
  lengthIn: positiveIn,
  count: z.number().int().min(1).max(100),
  rows: z.number().int().min(1).max(20),
  spacingIn: positiveIn.nullable(),
  endIn: positiveIn.nullable(),
  washerIn: positiveIn.optional(),
  acts: z.enum(['lateral', 'withdrawal', 'both']),
  driven: z.enum(['wet', 'dry']),
});
/** `null` = nobody said; `none` = nothing but contact, said. */
const capacity = z
  .discriminatedUnion('kind', [
    z.strictObject({ kind: z.literal('none') }),
    z.strictObject({
      kind: z.literal('rated'),
      label: shortText,
      parts: z.strictObject({
        pushLb: lbs.nullable(),
        pullLb: lbs.nullable(),
        alongLb: lbs.nullable(),
        acrossLb: lbs.nullable(),
      }),
      durationIncluded: z.number().min(0.9).max(2),
    }),
    z.strictObject({ kind: z.literal('fasteners'), rows: z.array(fastenerRow).max(10), shoulder: z.boolean() }),
  ])
  .nullable();
export const joints = z.strictObject({
  defaults: z.array(z.strictObject({ kind: jointKind, capacity })).max(20),
  own: z.array(z.strictObject({ key: jointKeyText, capacity })).max(300),
});
