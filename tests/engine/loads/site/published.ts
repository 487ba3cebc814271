import { z } from 'zod';

const source = z.strictObject({
  title: z.string(),
  edition: z.string(),
  where: z.string(),
  seen: z.enum(['printed', 'public copy', 'memory']),
});

/** A published table or set of worked results, as the files in tests/published hold them. */
export const fixtureOf = <Given extends z.ZodType, Printed extends z.ZodType>(given: Given, printed: Printed) =>
  z.strictObject({
    id: z.string(),
    kind: z.enum(['published', 'worked-example']),
    source,
    conventions: z.string(),
    tolerance: z.strictObject({ abs: z.number(), why: z.string() }),
    rows: z.array(
      z.strictObject({
        row: z.string().optional(),
        in: given,
        out: printed,
        disputed: z.string().optional(),
        mismatch: z.string().optional(),
      }),
    ),
  });

export const flow = z.enum(['clear', 'obstructed']);
export const windCase = z.enum(['A', 'B']);
