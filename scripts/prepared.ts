import { runnerImport, type Plugin } from 'vite';

const PREPARED = /\.prepared\.ts$/;

/**
 * A module named `*.prepared.ts` runs while the page is built, or when the development server hands it out. The page
 * carries the texts that it exports, and nothing of what it imports.
 */
export function prepared(): Plugin {
  let root = '';
  return {
    name: 'prepared',
    enforce: 'pre',
    configResolved: (config) => {
      root = config.root;
    },
    async transform(_code, id) {
      if (!PREPARED.test(id)) return null;
      const { module, dependencies } = await runnerImport<Readonly<Record<string, string>>>(id, {
        root,
        configFile: false,
        logLevel: 'error',
      });
      for (const path of dependencies) this.addWatchFile(path);
      return Object.entries(module)
        .map(([name, text]) => `export const ${name} = ${JSON.stringify(text)};`)
        .join('\n');
    },
  };
}
