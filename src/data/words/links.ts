import type { Link } from '../rules.ts';

/** The links of the load path, from what the site asks down to what holds it sideways. */
export const LINK_WORDS: Readonly<Record<Link, string>> = {
  site: 'site',
  sheet: 'sheet',
  purlin: 'purlin',
  rafter: 'rafter',
  ledger: 'ledger',
  strip: 'strip',
  beam: 'beam',
  brace: 'brace',
  post: 'post',
  pier: 'pier',
  swayAlong: 'sway along',
  swayAcross: 'sway across',
};
