import { SHEET_WORDS } from '../../data/words/sheet.ts';
import type { Shelter } from '../../engine/geometry/shelter.ts';
import type { Project } from '../../engine/project/model.ts';
import { onScreen, onSheet, type Paper } from '../drawing/paper.ts';
import { PictureView } from '../drawing/PictureView.tsx';
import { lineDetailsOf } from '../frame/line-details.ts';
import type { UnitSystem } from '../units/system.ts';
import { Lines } from './lines.tsx';
import { NOTE } from './page-format.ts';
import type { SnowOnSheet, SnowRow } from './sheet-plan.ts';
import { greatestOf, snowPicture } from './snow-cases.ts';
import { PHONE_HEIGHT, PHONE_WIDTH, useNarrowScreen } from './use-narrow-screen.ts';

interface SnowDrawingsProps {
  readonly snow: SnowRow;
  readonly project: Project;
  readonly shelter: Shelter;
  readonly system: UnitSystem;
}

/** What a higher roof sends onto this one, case beside case; nothing where none does. */
export function SnowDrawings({ snow, project, shelter, system }: SnowDrawingsProps) {
  const isNarrow = useNarrowScreen();
  const details = lineDetailsOf(project);
  const greatestPsf = greatestOf(snow.cases.map(({ picture }) => picture));
  const drawn = ({ picture, title, description }: SnowOnSheet, paper: Paper) => (
    <PictureView picture={snowPicture(picture, shelter, { paper, system, details, title, description, greatestPsf })} />
  );
  if (snow.cases.length === 0) return null;
  return (
    <section className="text-block">
      <h3>{SHEET_WORDS.snowCases}</h3>
      <div className="drawing-row for-paper">
        {snow.cases.map((each) => (
          <figure key={each.title} style={{ width: `${snow.width}pt`, height: `${snow.height + NOTE.line}pt` }}>
            <figcaption className="note">
              <Lines lines={[each.caption]} />
            </figcaption>
            {drawn(each, onSheet(snow.width, snow.height))}
          </figure>
        ))}
      </div>
      {isNarrow &&
        snow.cases.map((each) => (
          <figure key={each.title} className="for-screen">
            <figcaption className="figure-name">{each.title}</figcaption>
            {drawn(each, onScreen(PHONE_WIDTH, PHONE_HEIGHT))}
          </figure>
        ))}
    </section>
  );
}
