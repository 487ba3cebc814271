import { z } from 'zod';
import { coordinateIn, day, diameterIn, id, lengthIn, longText, positiveIn, shortText } from '../schema-parts.ts';
import { station } from './wood.ts';

export const asBuilt = z.strictObject({
  pierTops: z.array(z.strictObject({ post: id, zIn: coordinateIn, date: day })).max(100),
  pours: z.array(z.strictObject({ post: id, date: day, coldUntil: day.optional() })).max(100),
  cutLengths: z.array(z.strictObject({ member: id, lengthIn, date: day })).max(500),
  peeled: z
    .array(z.strictObject({ log: id, stations: z.array(station).min(2).max(40), date: day, by: shortText }))
    .max(100),
  cutsMade: z
    .array(
      z.strictObject({
        log: id,
        kind: z.enum(['flat', 'dap', 'notch', 'housing']),
        fromButtIn: lengthIn,
        lengthIn: positiveIn,
        depthIn: positiveIn,
        angleDeg: z.number().min(-360).max(360),
        date: day,
      }),
    )
    .max(300),
  visits: z
    .array(
      z.strictObject({
        date: day,
        by: shortText,
        found: z
          .array(
            z.strictObject({ member: id, atIn: coordinateIn, soundDiameterIn: diameterIn.nullable(), note: longText }),
          )
          .max(100),
      }),
    )
    .max(200),
});
