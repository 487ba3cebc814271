import { type Message, message } from '../message.ts';

/** A project file before its shape is known. */
export type Raw = Readonly<Record<string, unknown>>;

/** The version that this program writes. */
export const NEWEST_FORMAT_VERSION = 1;

/**
 * One step each, keyed by the version it starts from; version 1 is the first, so there is none yet. A step stays for
 * ever, with a saved file of its version in the tests.
 */
const MIGRATIONS: Readonly<Record<number, (raw: Raw) => Raw>> = {};

/** Lists that mean "there is none" when a file written by hand leaves them out. */
const EMPTY_WHEN_ABSENT: Raw = {
  cuts: [],
  ownLoads: [],
  instead: [],
  asBuilt: { pierTops: [], pours: [], cutLengths: [], peeled: [], cutsMade: [], visits: [] },
  trees: [],
  pieces: [],
  notYetYours: [],
  extras: {},
};

export interface Mended {
  readonly raw: Raw;
  /** what was changed on the way, for the person to read */
  readonly repaired: readonly Message[];
}

/** Carries a file of an older version up to `newest`, one step after another. */
export function migrated(raw: Raw, from: number, migrations = MIGRATIONS, newest = NEWEST_FORMAT_VERSION): Mended {
  let carried = raw;
  for (let version = from; version < newest; version++) {
    const step = migrations[version];
    if (step) carried = { ...step(carried), formatVersion: version + 1 };
  }
  return { raw: carried, repaired: from < newest ? [message('migrated', { from, to: newest })] : [] };
}

/** Puts in the lists that the file leaves out because there is nothing in them. */
export function filledIn(raw: Raw): Mended {
  const absent = Object.keys(EMPTY_WHEN_ABSENT).filter((key) => !Object.hasOwn(raw, key));
  if (absent.length === 0) return { raw, repaired: [] };
  const empty = Object.fromEntries(absent.map((key) => [key, EMPTY_WHEN_ABSENT[key]]));
  return { raw: { ...raw, ...empty }, repaired: [message('filledIn', { fields: absent.join(', ') })] };
}
