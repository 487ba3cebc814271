import type { JointSetting } from '../../engine/checks/joints/joint-setting.ts';
import { FASTENER_WORDS } from '../../data/words/fasteners-pulled.ts';
import { sentenceCase } from '../cord/letter-case.ts';
import type { ShowLength } from '../drawing/words.ts';
import { measuresOf } from './measures.ts';
import type { Shank } from './shanks.ts';

/** What a drawn joint says in words: its pieces, and each row of fasteners with how it stands. */
export function jointDescription(
  { upper, lower, shoulderIn }: JointSetting,
  underneath: readonly (string | null)[],
  rows: readonly (readonly Shank[])[],
  showLength: ShowLength,
): string {
  const said = [`${upper.label} and ${lower.label}.`];
  if (shoulderIn > 0) said.push(`A shoulder ${showLength(shoulderIn)} deep.`);
  for (const words of underneath) if (words !== null) said.push(`${sentenceCase(words)}.`);
  return [...said, ...rows.map((shanks) => rowInWords(shanks, showLength))].filter((s) => s !== '').join(' ');
}

/** One row: how many of what, how deep, and the least wood beside and before it. */
function rowInWords(shanks: readonly Shank[], showLength: ShowLength): string {
  const [first] = shanks;
  if (!first) return '';
  const { row, size, main } = first;
  const named = FASTENER_WORDS[size.kind];
  const count = `${row.count} ${named}${row.count === 1 ? '' : 's'} ${showLength(row.diameterIn)} by ${showLength(row.lengthIn)}`;
  const measured = measuresOf(shanks).map(({ what, lengthIn, piece }) => {
    const length = showLength(lengthIn);
    if (what === 'depth') return `${length} into ${main.label}`;
    if (what === 'through') return `${length} through ${main.label}`;
    if (what === 'sideEnd') return `${length} to the end of ${piece.label}`;
    return what === 'edge' ? `${length} to its edge` : `${length} to its end`;
  });
  if (first.inMainIn <= 0) return `${count}, too short for ${main.label}.`;
  return `${[count, ...measured].join(', ')}.`;
}
