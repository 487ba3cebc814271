// `npm run test:long`: the same as `npm test` with LONG=1, which the property tests read to run their full number.
process.env['LONG'] = '1';
await import('./test.mjs');
