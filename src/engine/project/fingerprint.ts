import { sha256 } from '@noble/hashes/sha2.js';
import { bytesToHex, utf8ToBytes } from '@noble/hashes/utils.js';
import { canonicalText } from './canonical.ts';
import type { Project } from './model.ts';

/** What may change without changing the sheet that was handed in. */
function design(project: Project): Omit<Project, 'asBuilt' | 'trees' | 'pieces' | 'notYetYours' | 'extras'> {
  const {
    asBuilt: _asBuilt,
    trees: _trees,
    pieces: _pieces,
    notYetYours: _notYetYours,
    extras: _extras,
    ...rest
  } = project;
  return rest;
}

/**
 * Sixteen hex digits that stand for the design, printed on every sheet: same digits, same design.
 * @source FIPS 180-4 (SHA-256), cut to its first 64 bits
 */
export const fingerprint = (project: Project): string => digits(canonicalText(design(project)));

/** The same for the design together with the records of what was built. */
export const fingerprintAsBuilt = (project: Project): string =>
  digits(canonicalText({ ...design(project), asBuilt: project.asBuilt }));

function digits(text: string): string {
  const hex = bytesToHex(sha256(utf8ToBytes(text))).slice(0, 16);
  return hex.replace(/(.{4})(?=.)/g, '$1-');
}
