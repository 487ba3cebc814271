import { SITE_FIELDS } from '../../data/words/sheet.ts';
import type { Evaluation } from '../../engine/evaluation.ts';
import { look } from '../frame/frame-view.ts';
import { blankSiteValues } from './blank-site.ts';

/** What to fill in before anything else: blanks of the site, with what waits for each, and the way to its field. */
export function FillFirst({ evaluation }: { readonly evaluation: Evaluation }) {
  return (
    <section className="fill-first" aria-label="What to fill in first">
      <p>
        <strong>Fill in the site first.</strong> A row waits for the first value that it lacks; when that is there, it
        may name the next.
      </p>
      <ul>
        {blankSiteValues(evaluation).map(({ path, rows }) => (
          <li key={path}>
            <button
              type="button"
              className="tool"
              onClick={() => look({ openLink: 'site', memberId: null, sought: `${path}.value` })}
            >
              {SITE_FIELDS[path] ?? path}
            </button>
            <span className="number">{rows === 1 ? '1 row waits' : `${rows} rows wait`}</span>
          </li>
        ))}
      </ul>
    </section>
  );
}
