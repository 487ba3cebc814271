import type { Evaluation } from '../../engine/evaluation.ts';
import type { Project } from '../../engine/project/model.ts';
import { cutToFit } from './fit-text.ts';
import { CELL_AIR, NOTE } from './page-format.ts';
import { lineWidth } from './type-width.ts';

/** What stands at the foot of every page: whose it is, of which inputs and versions, which page. */
export function pageFoot(
  { title }: Project,
  { fingerprint, programVersion, dataVersion }: Evaluation,
  width: number,
  page: { readonly at: number; readonly of: number },
): readonly [string, string, string] {
  const { number, date } = title.revision;
  const revision = [...(number === '' ? [] : [`revision ${number}`]), ...(date === null ? [] : [date])]
    .map((words) => `, ${words}`)
    .join('');
  const third = width / 3 - CELL_AIR;
  const name = cutToFit(title.name, third - lineWidth(revision, NOTE.size), NOTE.size);
  return [
    `${name}${revision}`,
    `inputs ${fingerprint} · program ${programVersion} · data ${dataVersion}`,
    `page ${page.at} of ${page.of}`,
  ];
}
