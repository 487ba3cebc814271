import type { Page } from 'playwright';
import type { Project } from '../../../src/engine/project/model.ts';
import { soundProject } from '../../support/files.ts';
import { saved } from './workbench.ts';

interface KeptRecord {
  readonly name: string;
  readonly counter: number;
  readonly text: string;
}

/** Every project that lies in the browser's database, by id, read beside the workbench and not through it. */
export const readDevice = (page: Page): Promise<Readonly<Record<string, KeptRecord>>> =>
  page.evaluate(
    () =>
      new Promise<Record<string, { name: string; counter: number; text: string }>>((resolve, reject) => {
        const opening = indexedDB.open('log-shelter-workbench');
        opening.addEventListener('error', () => reject(opening.error));
        opening.addEventListener('success', () => {
          const found: Record<string, { name: string; counter: number; text: string }> = {};
          const walk = opening.result.transaction('shelf').objectStore('shelf').openCursor();
          walk.addEventListener('error', () => reject(walk.error));
          walk.addEventListener('success', () => {
            const cursor = walk.result;
            if (!cursor) {
              opening.result.close();
              resolve(found);
              return;
            }
            const key = String(cursor.key);
            if (key.startsWith('project/')) found[key.slice('project/'.length)] = cursor.value;
            cursor.continue();
          });
        });
      }),
  );

/** The project on the screen as it was kept, with the counter of its record. */
export async function keptProject(
  page: Page,
  id = 'firewood-shed',
): Promise<{ readonly project: Project; readonly counter: number }> {
  await saved(page);
  const record = (await readDevice(page))[id];
  if (!record) throw new Error(`${id} does not lie on this device`);
  return { project: soundProject(record.text), counter: record.counter };
}
