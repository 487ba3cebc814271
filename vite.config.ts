import react from '@vitejs/plugin-react';
import { defineConfig, type Plugin } from 'vite';
import { prepared } from './scripts/prepared.ts';

/** Everything the built page needs comes from beside it: no inline script or style, no other host, no eval. */
const CONTENT_SECURITY_POLICY = [
  "default-src 'none'",
  "script-src 'self'",
  "style-src 'self'",
  "font-src 'self'",
  "img-src 'self' data: blob:", // photos of logs and drawings saved as pictures are blobs of this page
  "connect-src 'self'",
  "manifest-src 'self'",
  "worker-src 'self'",
  "base-uri 'none'",
  "form-action 'none'",
].join('; ');

/** Only in the build: the development server's live reload works through an inline script. */
const contentSecurityPolicy = (): Plugin => ({
  name: 'content-security-policy',
  apply: 'build',
  transformIndexHtml: () => [
    {
      tag: 'meta',
      attrs: { 'http-equiv': 'Content-Security-Policy', content: CONTENT_SECURITY_POLICY },
      injectTo: 'head-prepend',
    },
  ],
});

export default defineConfig({
  base: './',
  plugins: [react(), contentSecurityPolicy(), prepared()],
  build: {
    target: 'es2022',
    assetsInlineLimit: 0, // a font inside a style sheet would be refused by the policy above
    modulePreload: { polyfill: false },
    license: { fileName: 'licences.md' }, // the libraries' licences travel with the built page
  },
});
