import { SIDE_WORDS } from '../../../data/words/sides.ts';
import { setAt } from '../../../engine/project/edits/set-at.ts';
import type { Project } from '../../../engine/project/model.ts';
import { YoursChoice } from '../../fields/choice.tsx';
import { CommandButton, CommandChoice } from '../../fields/command-choice.tsx';
import { Yours } from '../../fields/yours.tsx';
import { useOpenProject } from '../../state/use-workbench.ts';
import type { Names } from '../places.ts';
import { BuildingBeside } from './building-beside.tsx';

type Side = Project['surroundings']['closed'][number]['side'];

const NEIGHBOUR = 'surroundings.neighbour';
const SIDES = Object.keys(SIDE_WORDS) as readonly Side[];
const HELD_BY = [
  { value: 'frame', words: 'the frame' },
  { value: 'itself', words: 'a wall that stands by itself' },
];

/** What stands under, around and beside the roof: it turns the wind, gathers snow and leans. */
export function Surroundings({ names }: { readonly names: Names }) {
  return (
    <>
      <Goods names={names} />
      <ClosedSides />
      <OtherBuilding />
    </>
  );
}

function Goods({ names }: { readonly names: Names }) {
  const { surroundings, supportLines } = useOpenProject();
  const { goods } = surroundings;
  if (!goods)
    return (
      <p className="sentence">
        Nobody has said what will stand under the roof: wind is taken both with and without goods.{' '}
        <CommandButton
          words="goods will be stored"
          perform={(p) => setAt(p, 'surroundings.goods', { blockedShare: 1, heightIn: 60, leansOnLines: [] })}
        />
      </p>
    );
  const frames = supportLines.filter(({ kind }) => kind === 'frame').map(({ id }) => id);
  const leanings = setsOf(frames);
  const chosen = leanings.findIndex((ids) => setKey(ids) === setKey(goods.leansOnLines));
  return (
    <p className="sentence">
      Goods block up to <Yours path="surroundings.goods.blockedShare" label="Share of the opening blocked by goods" />{' '}
      of the opening, stand <Yours path="surroundings.goods.heightIn" label="Height of the goods" /> high and lean on{' '}
      <CommandChoice
        label="What the goods lean on"
        chosen={chosen}
        options={leanings.map((ids) => ({
          words: ids.length === 0 ? 'nothing of the shelter' : ids.map((id) => names.get(id) ?? id).join(' and '),
          perform: (p) => setAt(p, 'surroundings.goods.leansOnLines', ids),
        }))}
      />
      .{' '}
      <CommandButton
        words="not known yet"
        name="goods not said"
        perform={(p) => setAt(p, 'surroundings.goods', null)}
      />
    </p>
  );
}

/** Every choice among a few lines, none of them first. */
const setsOf = (ids: readonly string[]): readonly (readonly string[])[] =>
  ids.reduce<readonly (readonly string[])[]>((sets, id) => [...sets, ...sets.map((set) => [...set, id])], [[]]);
const setKey = (ids: readonly string[]): string => ids.toSorted().join();

function ClosedSides() {
  const { closed } = useOpenProject().surroundings;
  const open = SIDES.filter((side) => closed.every((each) => each.side !== side));
  return (
    <>
      {closed.map(({ side }, i) => {
        const path = `surroundings.closed[${i}]`;
        const words = SIDE_WORDS[side];
        return (
          <p key={side} className="sentence">
            A wall closes <Yours path={`${path}.share`} label={`Wall at ${words}: share closed`} /> of {words}; its wind
            goes into <YoursChoice path={`${path}.heldBy`} label={`Wall at ${words}: held by`} choices={HELD_BY} />.{' '}
            <CommandButton
              words="no wall there"
              name={`no wall at ${words}`}
              perform={(p) =>
                setAt(
                  p,
                  'surroundings.closed',
                  closed.filter((each) => each.side !== side),
                )
              }
            />
          </p>
        );
      })}
      {open.length > 0 && (
        <p className="sentence">
          {closed.length === 0 ? 'All sides are open. ' : ''}
          <CommandChoice
            label="One more closed side"
            chosen={-1}
            unchosen="a wall stands at"
            options={open.map((side) => ({
              words: SIDE_WORDS[side],
              perform: (p) => setAt(p, 'surroundings.closed', [...closed, { side, share: 1, heldBy: 'frame' }]),
            }))}
          />
        </p>
      )}
    </>
  );
}

/** A taller building nearby that does not carry the roof; the one that does is told of with its ledger. */
function OtherBuilding() {
  const { neighbour } = useOpenProject().surroundings;
  if (neighbour?.ledgerLine) return null;
  if (neighbour)
    return (
      <>
        <BuildingBeside />
        <p className="sentence">
          <CommandButton words="no taller roof is near" perform={withoutBeside} />
        </p>
      </>
    );
  return (
    <p className="sentence">
      No taller roof is near.{' '}
      <CommandChoice
        label="Side of a taller roof nearby"
        chosen={-1}
        unchosen="a taller roof stands at"
        options={SIDES.map((side) => ({
          words: SIDE_WORDS[side],
          perform: (p) => withBeside(p, side),
        }))}
      />
    </p>
  );
}

/** A house beside the shelter with figures to start from, none of them the person's own yet. */
const withBeside = (project: Project, side: Side): Project => ({
  ...setAt(project, NEIGHBOUR, {
    ...FIRST_FIGURES,
    side,
    ledgerLine: null,
    upperRisePer12: null,
    upperSlippery: true,
    upperCt: 1,
    slidesThisWay: true,
    ableBy: null,
  }),
  notYetYours: [...project.notYetYours, ...Object.keys(FIRST_FIGURES).map((name) => `${NEIGHBOUR}.${name}`)],
});
const withoutBeside = (project: Project): Project => ({
  ...setAt(project, NEIGHBOUR, null),
  notYetYours: project.notYetYours.filter((path) => !path.startsWith(`${NEIGHBOUR}.`)),
});
const FIRST_FIGURES = { gapFt: 4, stepFt: 6, upperLengthFt: 30, eaveToRidgeFt: 12 };
