/**
 * What a person reads and types. Stored numbers never change with it: the engine's inches, pounds and psi stay, only
 * the showing and the habit of a bare number differ.
 */
export type UnitSystem = 'feet' | 'metric';
