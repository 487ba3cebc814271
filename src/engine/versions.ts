/** Printed on every sheet beside the fingerprint of the project. */
export const PROGRAM_VERSION = '0.1.0';
export const DATA_VERSION = '2026-11';
