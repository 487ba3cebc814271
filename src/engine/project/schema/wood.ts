import { z } from 'zod';
import { POLE_ITEMS } from '../../../data/wood/pole-items.ts';
import { SPECIES_SIGNS } from '../../../data/wood/species-signs.ts';
import { day, diameterIn, id, lengthIn, shortText, stress } from '../schema-parts.ts';

const basis = z.discriminatedUnion('kind', [
  z.strictObject({ kind: z.literal('derived') }),
  z.strictObject({
    kind: z.literal('poles'),
    ticked: z.array(z.enum(POLE_ITEMS)).max(POLE_ITEMS.length),
    by: shortText,
    date: day.nullable(),
  }),
  z.strictObject({
    kind: z.literal('typed'),
    by: shortText,
    date: day.nullable(),
    published: z.enum(['wet', 'dry']),
    asPoles: z.boolean(),
    factorsHeld: z.array(shortText).max(20),
    FbPsi: stress,
    FvPsi: stress,
    FcpPsi: stress,
    FcPsi: stress,
    FtPsi: stress,
    EPsi: z.number().positive().max(5e6),
    EminPsi: z.number().positive().max(5e6),
  }),
]);
export const wood = z.strictObject({
  id,
  species: shortText,
  basis,
  weight: z.discriminatedUnion('by', [
    z.strictObject({ by: z.literal('species') }),
    z.strictObject({
      by: z.literal('typed'),
      heavyPcf: z.number().positive().max(100),
      lightPcf: z.number().positive().max(100),
    }),
  ]),
});

export const station = z.strictObject({
  fromButtIn: lengthIn,
  diameterIn,
  acrossIn: diameterIn.optional(),
  read: z.enum(['diameter', 'girth']).optional(),
});
/**
 * What the eye saw on the log; `knotsInWorstFootIn` lists every knot of the worst foot of length by its width,
 * `straightIn` is how far its middle strays from the line between the middles of its ends, `ringsPerIn` counts the outer
 * half of the butt (kept with the log; no derived value gains by it), `speciesToldBy` is how whoever looked knew the
 * species (absent: not given; no value hears it).
 */
const seen = z.strictObject({
  worstKnotIn: lengthIn.nullable(),
  knotsInWorstFootIn: z.array(diameterIn).max(30).optional(),
  knotAtFromButtIn: lengthIn.optional(),
  grainSlope1In: z.number().positive().max(200).nullable(),
  spiral: z.enum(['none', 'left', 'right']).nullable(),
  checks: shortText,
  throughCheckAtEnd: z.boolean().optional(),
  straightIn: lengthIn.nullable(),
  ringsPerIn: z.number().positive().max(200).optional(),
  speciesToldBy: z.strictObject({ sign: z.enum(SPECIES_SIGNS), inWords: z.string().max(60).optional() }).optional(),
  by: shortText,
  date: day.nullable(),
});
export const log = z.strictObject({
  id,
  woodId: id,
  stands: z.enum(['pattern', 'log']),
  pieceId: id.optional(),
  how: z.enum(['assumed', 'predicted', 'measured']),
  errorIn: z.number().min(0).max(6),
  bark: z.enum(['on', 'off']),
  barkIn: z.number().min(0).max(6).optional(),
  stations: z.array(station).min(2).max(40),
  seen: seen.nullable(),
  crownIn: z.number().min(0).max(24),
  trim: z.strictObject({ buttIn: lengthIn, tipIn: lengthIn }).optional(),
});
