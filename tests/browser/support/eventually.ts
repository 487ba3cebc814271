import { expect } from 'vitest';

/** What a page shows a moment later: asked again until it holds, also on a slow machine. */
export const eventually = <T>(read: () => T | Promise<T>) => expect.poll(read, { timeout: 20_000, interval: 50 });
