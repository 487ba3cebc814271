import { z } from 'zod';
import { coordinateIn, id, lengthIn, positiveIn, shortText } from '../schema-parts.ts';
import { stock } from './stock.ts';

const fixedness = z.union([
  z.enum(['pinned', 'fixed']),
  z.strictObject({ lbInPerRad: z.number().positive().max(1e12) }),
]);
const fixity = z.strictObject({ along: fixedness, across: fixedness });
const foot = z.discriminatedUnion('kind', [
  z.strictObject({
    kind: z.literal('pier'),
    standOffIn: lengthIn,
    hardware: shortText.nullable(),
    shaft: z.strictObject({ shape: z.enum(['round', 'square']), acrossIn: positiveIn, lengthIn }),
    pad: z.strictObject({ acrossIn: positiveIn, thickIn: positiveIn, tied: z.boolean() }).nullable(),
    concretePcf: z.number().min(80).max(200),
    /** a sheet that keeps water out lies between the concrete and the end of the post; absent = not said */
    barrier: z.boolean().optional(),
    /** the earth around the pier lies under such a sheet; absent = not said */
    earthCovered: z.boolean().optional(),
    fixity,
  }),
  z.strictObject({
    kind: z.literal('embedded'),
    depthIn: positiveIn,
    holeIn: positiveIn,
    backfill: z.enum(['concrete', 'soil', 'gravel']),
    treatment: shortText.nullable(),
    /** use category that it is treated for; absent = not said */
    useCategory: z.enum(['UC4A', 'UC4B', 'UC4C']).optional(),
    /** round pad of concrete under the butt; absent = the post stands on the soil */
    pad: z.strictObject({ acrossIn: positiveIn, thickIn: positiveIn }).optional(),
    /** bars or lags hold the post in its concrete against pull; absent = nothing but contact */
    keyed: z.boolean().optional(),
    fixedBelowGradeIn: lengthIn,
    fixity,
  }),
]);
const seat = z.strictObject({
  kind: z.enum(['flat', 'dap', 'saddle']),
  depthIn: lengthIn,
  lengthIn: positiveIn.nullable(),
});
const braceEnd = z.strictObject({ kind: z.enum(['housed', 'coped', 'flat']), depthIn: lengthIn });

const traits = {
  beam: { stock: stock.nullable(), crownTo: z.enum(['up', 'down', 'side']), topFlatIn: lengthIn, seat },
  post: { stock: stock.nullable(), foot, capIn: lengthIn, allowanceIn: lengthIn },
  brace: {
    stock: stock.nullable(),
    runIn: positiveIn,
    dropIn: positiveIn,
    ends: z.strictObject({ post: braceEnd, top: braceEnd }),
  },
  rafter: { stock: stock.nullable(), seatCutIn: lengthIn, tailEnd: z.enum(['plumb', 'square']), blocked: z.boolean() },
  purlin: { stock: stock.nullable() },
  tie: { stock: stock.nullable(), downIn: lengthIn, ends: z.enum(['between', 'beside']) },
};
const groupOf = <R extends keyof typeof traits>(role: R) =>
  z.strictObject({ id, role: z.literal(role), ...traits[role] });
export const group = z.discriminatedUnion('role', [
  groupOf('beam'),
  groupOf('post'),
  groupOf('brace'),
  groupOf('rafter'),
  groupOf('purlin'),
  groupOf('tie'),
]);

const own = <R extends keyof typeof traits>(role: R) => z.strictObject(traits[role]).partial().optional();
export const member = z.discriminatedUnion('role', [
  z.strictObject({
    id,
    role: z.literal('beam'),
    group: id,
    own: own('beam'),
    line: id,
    fromXIn: coordinateIn,
    toXIn: coordinateIn,
  }),
  z.strictObject({
    id,
    role: z.literal('post'),
    group: id,
    own: own('post'),
    line: id,
    xIn: coordinateIn,
    pierTopZIn: coordinateIn.nullable(),
    gradeZIn: coordinateIn,
  }),
  z.strictObject({
    id,
    role: z.literal('brace'),
    group: id,
    own: own('brace'),
    post: id,
    to: id,
    side: z.enum(['plus', 'minus']),
  }),
  z.strictObject({ id, role: z.literal('rafter'), group: id, own: own('rafter'), plane: id, xIn: coordinateIn }),
  z.strictObject({ id, role: z.literal('purlin'), group: id, own: own('purlin'), plane: id, upSlopeIn: lengthIn }),
  z.strictObject({
    id,
    role: z.literal('tie'),
    group: id,
    own: own('tie'),
    fromPost: id,
    toPost: id,
    pastFromIn: lengthIn,
    pastToIn: lengthIn,
  }),
]);
