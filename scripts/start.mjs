// `npm start [-- --port N] [-- --no-open]`: from a bare copy of the sources to the demo shelter in a browser.
import { bootstrap, TOP } from './bootstrap.mjs';

bootstrap();
const { createServer } = await import('vite');

const words = process.argv.slice(2);
const portAt = words.indexOf('--port');
const port = portAt >= 0 ? Number(words[portAt + 1]) : 5173;
if (!Number.isInteger(port) || port < 0 || port > 65_535) {
  console.error(`--port wants a whole number from 0 to 65535, for example --port 5173; got ${words[portAt + 1]}.`);
  process.exit(1);
}

const server = await createServer({ root: TOP, server: { host: '127.0.0.1', port }, logLevel: 'warn' });
await server.listen();
const address = server.resolvedUrls?.local[0] ?? `http://127.0.0.1:${port}/`;
console.log(`\n  Log shelter workbench is open at ${address}\n  Stop it with Ctrl+C.\n`);

const hasScreen =
  process.platform === 'darwin' ||
  process.platform === 'win32' ||
  Boolean(process.env['DISPLAY'] ?? process.env['WAYLAND_DISPLAY']);
if (hasScreen && process.stdout.isTTY && !process.env['CI'] && !words.includes('--no-open')) server.openBrowser();
