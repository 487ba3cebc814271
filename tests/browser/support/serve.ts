import { existsSync } from 'node:fs';
import { preview } from 'vite';
import type { TestProject } from 'vitest/node';

declare module 'vitest' {
  export interface ProvidedContext {
    /** address of the built workbench, with a closing slash */
    readonly workbenchAddress: string;
  }
}

/** Serves the built page on a free port of this machine only. */
export async function serveBuilt(): Promise<{ readonly address: string; readonly close: () => Promise<void> }> {
  if (!existsSync('dist/index.html')) throw new Error('Nothing built yet: run `npm run build` first.');
  const server = await preview({ preview: { host: '127.0.0.1', port: 0, strictPort: false }, logLevel: 'error' });
  const address = server.resolvedUrls?.local[0];
  if (address === undefined) throw new Error('The built page could not be served.');
  return { address, close: () => server.close() };
}

/** Called once around all browser tests. */
export default async function setup(project: TestProject): Promise<() => Promise<void>> {
  const { address, close } = await serveBuilt();
  project.provide('workbenchAddress', address);
  return close;
}
