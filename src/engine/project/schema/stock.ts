import { z } from 'zod';
import { id, lengthIn, positiveIn, shortText } from '../schema-parts.ts';

const fromLog = z.strictObject({
  kind: z.literal('log'),
  logId: id,
  fromButtIn: lengthIn,
  buttAt: z.enum(['start', 'end']),
});
export const sawn = z.strictObject({
  kind: z.literal('sawn'),
  breadthIn: positiveIn,
  depthIn: positiveIn,
  lay: z.enum(['edge', 'flat']),
  plies: z.number().int().min(1).max(4),
  species: shortText,
  grade: shortText.nullable(),
  use: z.enum(['wet', 'dry']),
});
const typedStock = z.strictObject({
  kind: z.literal('typed'),
  name: shortText,
  FbSIn3Psi: z.number().positive().max(1e9),
  VallowLb: z.number().positive().max(1e7),
  EIPsiIn4: z.number().positive().max(1e12),
  heavyPlf: z.number().min(0).max(500),
  lightPlf: z.number().min(0).max(500),
});
export const stock = z.discriminatedUnion('kind', [fromLog, sawn, typedStock]);
