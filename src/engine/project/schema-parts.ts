import { z } from 'zod';
import { ID_PATTERN, JOINT_KEY_PATTERN } from './name-patterns.ts';

// The page forbids code made from text; without this zod would try `new Function` once and the browser would report it.
z.config({ jitless: true });

/** Small building blocks of the saved project. Lengths of the shelter in inches, site and neighbour in feet. */
export const id = z.string().min(1).max(60).regex(ID_PATTERN);
export const jointKeyText = z.string().max(200).regex(JOINT_KEY_PATTERN);
export const shortText = z.string().max(120);
export const longText = z.string().max(400);
/** A day that the calendar has, written 2026-11-25. */
export const day = z.iso.date();

/** A length in either direction of the datum [in]. */
export const coordinateIn = z.number().min(-6000).max(6000);
/** A length that may be zero [in]. */
export const lengthIn = z.number().min(0).max(6000);
/** A length above zero [in]. */
export const positiveIn = z.number().positive().max(6000);
export const diameterIn = z.number().positive().max(60);
export const psf = z.number().min(0).max(1000);
export const lbs = z.number().min(0).max(1_000_000);
export const stress = z.number().positive().max(5_000_000);

const giver = z.enum(['department', 'map', 'owner', 'guess']);

/** A value of the site with who gave it and when; `null` is not given yet. */
export const given = <T extends z.ZodType>(value: T) =>
  z.strictObject({ value: value.nullable(), givenBy: giver, date: day.nullable(), from: shortText.optional() });

export const side = z.enum(['xMinus', 'xPlus', 'yMinus', 'yPlus']);
