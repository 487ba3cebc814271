import { z } from 'zod';
import { day, given, id, lengthIn, psf, shortText, side } from '../schema-parts.ts';

export const title = z.strictObject({
  id,
  name: shortText.min(1),
  parcel: shortText,
  preparedBy: shortText,
  revision: z.strictObject({ number: z.string().max(20), date: day.nullable() }),
});

export const code = z.strictObject({
  loads: given(z.enum(['ASCE 7-16', 'ASCE 7-22'])),
  wood: given(z.enum(['NDS 2018', 'NDS 2024'])),
  building: given(shortText),
});

export const site = z.strictObject({
  altitudeFt: given(z.number().min(-300).max(20000)),
  riskCategory: given(z.enum(['I', 'II', 'III'])),
  groundSnowPsf: given(psf),
  leastRoofSnowPsf: given(psf),
  /** snow on the roof itself, where the county gives that instead of a rule; absent = it does not */
  roofSnowPsf: given(psf).optional(),
  roofLivePsf: given(psf),
  snowExposureCe: given(z.number().min(0.7).max(1.2)),
  snowThermalCt: given(z.number().min(0.85).max(1.3)),
  windMph: given(z.number().min(60).max(250)),
  exposure: given(z.enum(['B', 'C', 'D'])),
  kzt: given(z.number().min(1).max(4)),
  ke: given(z.number().min(0.5).max(1)),
  seismic: z
    .strictObject({
      sds: z.number().min(0).max(5),
      sd1: z.number().min(0).max(5),
      /** mapped acceleration at one second; absent: bounded from sd1 */
      s1: z.number().min(0).max(5).optional(),
      r: z.number().min(1).max(8),
      rGivenBy: shortText,
    })
    .nullable(),
  soil: z.strictObject({
    bearingPsf: given(z.number().positive().max(20000)),
    lateralPsfPerFt: given(z.number().positive().max(2000)),
    /** coefficient that the dead load is multiplied by; absent = none counts */
    friction: given(z.number().min(0).max(1)).optional(),
    /** of clay and silt, instead of friction; absent = none counts */
    cohesionPsf: given(psf).optional(),
    soilPcf: z.number().min(50).max(150),
    kind: shortText,
  }),
  frostDepthIn: given(lengthIn),
});

export const surroundings = z.strictObject({
  neighbour: z
    .strictObject({
      side,
      ledgerLine: id.nullable(),
      gapFt: z.number().min(0).max(200),
      stepFt: z.number().min(0).max(100),
      upperLengthFt: z.number().min(0).max(1000),
      eaveToRidgeFt: z.number().min(0).max(500),
      upperRisePer12: z.number().min(0).max(24).nullable(),
      upperSlippery: z.boolean(),
      upperCt: z.number().min(0.85).max(1.3),
      slidesThisWay: z.boolean(),
      /** snow guards or a parapet keep its snow up there */
      guards: z.boolean().optional(),
      ableBy: z.strictObject({ name: shortText, date: day }).nullable(),
    })
    .nullable(),
  closed: z
    .array(z.strictObject({ side, share: z.number().min(0).max(1), heldBy: z.enum(['frame', 'itself']) }))
    .max(4),
  goods: z
    .strictObject({ blockedShare: z.number().min(0).max(1), heightIn: lengthIn, leansOnLines: z.array(id).max(10) })
    .nullable(),
});
