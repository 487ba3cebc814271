import { say } from '../../../data/words/say.ts';
import { ridgeOf } from '../../../engine/geometry/ridge.ts';
import type { Shelter } from '../../../engine/geometry/shelter.ts';
import { respaceRafters } from '../../../engine/project/edits/respace-rafters.ts';
import { setAt } from '../../../engine/project/edits/set-at.ts';
import type { GroupOf } from '../../../engine/project/model.ts';
import { YoursChoice } from '../../fields/choice.tsx';
import { CommandLength } from '../../fields/command-length.tsx';
import { Yours } from '../../fields/yours.tsx';
import { newId, useOpenProject } from '../../state/use-workbench.ts';
import { JointSentences } from '../joint-sentences.tsx';
import { LookAtLog } from '../../log/look-at-log.tsx';
import { LogSentences } from '../log-sentences.tsx';
import { groupsOfRole } from '../own.ts';
import { SawnSentence, StockChoice, TypedStickSentence } from '../sawn-sentences.tsx';
import { sentenceCase } from '../letter-case.ts';

const BLOCKED = [
  { value: true, words: 'blocked between the rafters over each line' },
  { value: false, words: 'not blocked over the lines' },
];

/** Sticks of the roof come in groups: what is written holds for all of them. */
function GroupStock({ group, of }: { readonly group: GroupOf<'rafter'> | GroupOf<'purlin'>; readonly of: string }) {
  const project = useOpenProject();
  const path = `groups[${group.id}].stock`;
  const members = project.members.filter((member) => member.group === group.id);
  const first = members[0];
  const { stock } = group;
  return (
    <>
      <p className="sentence">
        {members.length} {of}s, each{' '}
        <StockChoice project={project} stock={stock} of={of} write={(p, next) => setAt(p, path, next)} />.
      </p>
      {stock?.kind === 'log' && first && <LogSentences memberId={first.id} of={of} />}
      {first && <LookAtLog memberId={first.id} />}
      {stock?.kind === 'sawn' && <SawnSentence path={path} of={sentenceCase(of)} stock={stock} />}
      {stock?.kind === 'typed' && <TypedStickSentence path={path} of={sentenceCase(of)} stock={stock} />}
    </>
  );
}

export function RafterPiece({ shelter }: { readonly shelter: Shelter }) {
  const project = useOpenProject();
  return (
    <>
      {groupsOfRole(project, 'rafter').map((group) => (
        <div key={group.id}>
          <GroupStock group={group} of="rafter" />
          <p className="sentence">
            Seat cut <Yours path={`groups[${group.id}].seatCutIn`} label="Rafter: seat cut" /> deep,{' '}
            <YoursChoice path={`groups[${group.id}].blocked`} label="Rafter: blocking" choices={BLOCKED} />.
          </p>
        </div>
      ))}
      {ridgeOf(shelter.planes) && <p className="sentence">{say({ code: 'assumeNoThrust', values: {} })}</p>}
      {shelter.planes.map((plane) => {
        const several = shelter.planes.length > 1;
        const spacings = shelter.rafters.filter((r) => r.plane === plane.id).map((r) => r.spacingIn ?? 0);
        if (spacings.length < 2) return null;
        return (
          <p key={plane.id} className="sentence">
            {several && `On ${plane.label} spread`}
            {!several && 'Spread'} evenly, at most{' '}
            <CommandLength
              label={`Spacing of the rafters${several ? ` on ${plane.label}` : ''}`}
              valueIn={Math.max(...spacings)}
              perform={(p, spacingIn) => respaceRafters(p, plane.id, spacingIn, (what) => `${what}-${newId()}`)}
            />{' '}
            from axis to axis; the outermost stay where they are.
          </p>
        );
      })}
      <JointSentences kind="rafterStrip" />
      {project.supportLines.some(({ kind }) => kind === 'ledger') && <JointSentences kind="rafterLedger" />}
    </>
  );
}

export function PurlinPiece({ shelter }: { readonly shelter: Shelter }) {
  const project = useOpenProject();
  return (
    <>
      {groupsOfRole(project, 'purlin').map((group) => (
        <GroupStock key={group.id} group={group} of="purlin" />
      ))}
      {shelter.planes.map((plane) => {
        const rows = shelter.purlins.filter((p) => p.plane === plane.id);
        if (rows.length === 0) return null;
        return (
          <p key={plane.id} className="sentence">
            Rows{shelter.planes.length > 1 ? ` on ${plane.label}` : ''}, measured up the slope from the low edge, at{' '}
            {rows.map(({ id, label }, n) => (
              <span key={id}>
                {n > 0 && ', '}
                <Yours path={`members[${id}].upSlopeIn`} label={`${sentenceCase(label)}: up the slope`} />
              </span>
            ))}
            .
          </p>
        );
      })}
      <JointSentences kind="purlinRafter" />
    </>
  );
}
