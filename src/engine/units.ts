/**
 * Branded numbers: the unit of a quantity is part of its type, so that feet cannot be added to inches unseen.
 * The internal system is inches, pounds, psi. Casts live here and at a `return`, nowhere else.
 */
declare const unit: unique symbol;
export type Brand<U extends string> = number & { readonly [unit]: U };

export type Inches = Brand<'in'>;
export type Feet = Brand<'ft'>;
export type PoundsPerInch = Brand<'lb/in'>;
export type Plf = Brand<'lb/ft'>;
export type Psi = Brand<'psi'>;
export type Psf = Brand<'psf'>;
export type Pcf = Brand<'pcf'>;
export type Degrees = Brand<'deg'>;

/** Unit names that a printed quantity may carry; `1` means a pure number. */
export type Unit =
  | 'in'
  | 'ft'
  | 'in2'
  | 'in3'
  | 'in4'
  | 'ft2'
  | 'ft3'
  | 'lb'
  | 'lb·in'
  | 'lb/in'
  | 'lb/ft'
  | 'psi'
  | 'psf'
  | 'pcf'
  | 'psf/ft'
  | 'mph'
  | 'deg'
  | '%'
  | '1';

/** A number that leaves the engine together with its unit. */
export interface Quantity {
  readonly value: number;
  readonly unit: Unit;
}

export const inches = (n: number): Inches => n as Inches;
export const plf = (n: number): Plf => n as Plf;
export const psi = (n: number): Psi => n as Psi;
export const pcf = (n: number): Pcf => n as Pcf;

export const quantity = (value: number, unitName: Unit): Quantity => ({ value, unit: unitName });

export const INCHES_PER_FOOT = 12;
export const SQUARE_INCHES_PER_SQUARE_FOOT = 144;
export const CUBIC_INCHES_PER_CUBIC_FOOT = 1728;

export const feetFromInches = (inch: number): Feet => (inch / INCHES_PER_FOOT) as Feet;
/** psf over a width in inches to lb per inch of length. */
export const lineLoadFromPsf = (pressure: number, widthIn: number): PoundsPerInch =>
  ((pressure * widthIn) / SQUARE_INCHES_PER_SQUARE_FOOT) as PoundsPerInch;
export const radiansFromDegrees = (deg: number): number => (deg * Math.PI) / 180;
export const degreesFromRadians = (rad: number): Degrees => ((rad * 180) / Math.PI) as Degrees;
