import type { Project } from '../../engine/project/model.ts';
import { openProjectText, present } from '../state/use-workbench.ts';

const fileName = (project: Project): string => {
  const plain = project.title.name.toLowerCase().replace(/[^a-z0-9]+/g, '-');
  return `${plain.replace(/^-+|-+$/g, '') || 'shelter'}.shelter.json`;
};

/** Hands the open project to the person as a file of their own. */
export function saveOpenProject(): void {
  const { project } = present();
  if (!project) return;
  const address = URL.createObjectURL(new Blob([openProjectText()], { type: 'application/json' }));
  const link = document.createElement('a');
  link.href = address;
  link.download = fileName(project);
  link.click();
  setTimeout(() => URL.revokeObjectURL(address), 10_000); // the browser reads it after the click returns
}
