import { setAt } from '../../../engine/project/edits/set-at.ts';
import type { Shelter } from '../../../engine/geometry/shelter.ts';
import type { OwnLoad, Project } from '../../../engine/project/model.ts';
import { YoursChoice } from '../../fields/choice.tsx';
import { CommandButton, CommandChoice } from '../../fields/command-choice.tsx';
import { Yours } from '../../fields/yours.tsx';
import { useOpenProject } from '../../state/use-workbench.ts';
import type { Names } from '../places.ts';

const KINDS = [
  { value: 'dead', words: 'is always there' },
  { value: 'live', words: 'comes and goes' },
  { value: 'snow', words: 'is snow' },
  { value: 'wind', words: 'is wind' },
];
const DURATIONS = [
  { value: 'permanent', words: 'for good' },
  { value: 'tenYears', words: 'for years on end' },
  { value: 'twoMonths', words: 'for weeks' },
  { value: 'sevenDays', words: 'for days' },
  { value: 'tenMinutes', words: 'for minutes' },
];
const DIRECTIONS = [
  { value: 'down', words: 'down' },
  { value: 'up', words: 'up' },
  { value: 'xPlus', words: 'along the lines, to the right' },
  { value: 'xMinus', words: 'along the lines, to the left' },
  { value: 'yPlus', words: 'across, toward the front' },
  { value: 'yMinus', words: 'across, toward the back' },
];
const STAYS = [
  { value: true, words: 'may be gone when the wind lifts' },
  { value: false, words: 'is there in any wind' },
];

interface OwnLoadsProps {
  readonly shelter: Shelter;
  readonly names: Names;
}

/** What the person hangs, leans or stores on the shelter beside what the codes ask. */
export function OwnLoads({ shelter, names }: OwnLoadsProps) {
  const { ownLoads } = useOpenProject();
  return (
    <>
      {ownLoads.map((own) => (
        <OwnLoadSentence key={own.id} own={own} shelter={shelter} names={names} />
      ))}
      <p className="sentence">
        {ownLoads.length === 0 ? 'Nothing else hangs on it. ' : ''}
        <CommandChoice
          label="One more load of your own"
          chosen={-1}
          unchosen={ownLoads.length === 0 ? 'add a load of your own' : 'add another load'}
          options={additions(shelter).map(({ words, where }) => ({ words, perform: (p) => withOwnLoad(p, where) }))}
        />
      </p>
      {ownLoads.some(({ kind }) => kind === 'live') && (
        <p className="caution">
          <strong>Mind:</strong> a hoist, a swing or an animal jerks: it pulls several times its weight. Have such a
          load designed by someone with a license.
        </p>
      )}
    </>
  );
}

function OwnLoadSentence({ own, shelter, names }: OwnLoadsProps & { readonly own: OwnLoad }) {
  const path = `ownLoads[${own.id}]`;
  const label = own.name;
  return (
    <p className="sentence">
      <Yours path={`${path}.name`} label={`${label}: what it is`} kind="text" />{' '}
      <YoursChoice path={`${path}.kind`} label={`${label}: kind`} choices={KINDS} />, acts{' '}
      <YoursChoice path={`${path}.duration`} label={`${label}: how long`} choices={DURATIONS} /> at a time, and{' '}
      <YoursChoice path={`${path}.removable`} label={`${label}: there or not`} choices={STAYS} />. It pushes{' '}
      <YoursChoice path={`${path}.direction`} label={`${label}: direction`} choices={DIRECTIONS} />{' '}
      <Where path={path} label={label} own={own} shelter={shelter} names={names} />.{' '}
      <CommandButton
        words="take it away"
        name={`${label} taken away`}
        perform={(p) => ({ ...p, ownLoads: p.ownLoads.filter(({ id }) => id !== own.id) })}
      />
    </p>
  );
}

interface WhereProps extends OwnLoadsProps {
  readonly path: string;
  readonly label: string;
  readonly own: OwnLoad;
}

function Where({ path, label, own, shelter, names }: WhereProps) {
  const where = `${path}.where`;
  switch (own.where.on) {
    case 'line':
      return (
        <>
          with <Yours path={`${where}.lb`} label={`${label}: pounds`} /> on{' '}
          <YoursChoice path={`${where}.line`} label={`${label}: which line`} choices={lines(shelter, names)} />,{' '}
          <Yours path={`${where}.xIn`} label={`${label}: from the mark`} /> right of the mark
        </>
      );
    case 'stretch':
      return (
        <>
          with <Yours path={`${where}.plf`} label={`${label}: pounds per foot`} /> on{' '}
          <YoursChoice path={`${where}.line`} label={`${label}: which line`} choices={lines(shelter, names)} />, from{' '}
          <Yours path={`${where}.fromXIn`} label={`${label}: from`} /> to{' '}
          <Yours path={`${where}.toXIn`} label={`${label}: to`} /> right of the mark
        </>
      );
    case 'member':
      return (
        <>
          with <Yours path={`${where}.lb`} label={`${label}: pounds`} /> on{' '}
          <YoursChoice path={`${where}.member`} label={`${label}: which piece`} choices={members(shelter, names)} />,{' '}
          <Yours path={`${where}.atIn`} label={`${label}: place on it`} /> {placeOf(own.where.member, shelter)}
        </>
      );
    case 'plane':
      return (
        <>
          with <Yours path={`${where}.psf`} label={`${label}: pounds per square foot`} /> of level area on{' '}
          {names.get(own.where.plane) ?? 'the roof'}, from <Yours path={`${where}.fromXIn`} label={`${label}: from`} />{' '}
          to <Yours path={`${where}.toXIn`} label={`${label}: to`} /> along and from{' '}
          <Yours path={`${where}.fromYIn`} label={`${label}: from, across`} /> to{' '}
          <Yours path={`${where}.toYIn`} label={`${label}: to, across`} /> across the lines, all from the mark
        </>
      );
  }
}

const lines = (shelter: Shelter, names: Names) =>
  shelter.lines.filter(({ kind }) => kind === 'frame').map(({ id }) => ({ value: id, words: names.get(id) ?? id }));

const members = (shelter: Shelter, names: Names) =>
  [...shelter.posts, ...shelter.rafters].map(({ id }) => ({ value: id, words: names.get(id) ?? id }));

/** From where a place on a piece is measured: a post from its foot, a rafter across the lines. */
const placeOf = (memberId: string, { posts }: Shelter): string =>
  posts.some(({ id }) => id === memberId) ? 'above its foot' : 'across the lines from the mark';

interface Addition {
  readonly words: string;
  readonly where: OwnLoad['where'];
}

/** What can be added, each at a place that exists. */
function additions({ lines: all, posts, planes }: Shelter): readonly Addition[] {
  const line = all.find(({ kind }) => kind === 'frame');
  const post = posts[0];
  const plane = planes[0];
  if (!line || !post || !plane) return [];
  const middleIn = (plane.fromXIn + plane.toXIn) / 2;
  const ys = [plane.lowYIn, plane.highYIn];
  const area = {
    fromXIn: plane.fromXIn,
    toXIn: plane.toXIn,
    fromYIn: Math.min(...ys),
    toYIn: Math.max(...ys),
  };
  return [
    { words: 'a weight hangs on a beam', where: { on: 'line', line: line.id, xIn: middleIn, lb: 0 } },
    {
      words: 'something lies along a beam',
      where: { on: 'stretch', line: line.id, fromXIn: plane.fromXIn, toXIn: plane.toXIn, plf: 0 },
    },
    { words: 'something hangs on a post or a rafter', where: { on: 'member', member: post.id, atIn: 48, lb: 0 } },
    { words: 'something lies on the roof', where: { on: 'plane', plane: plane.id, ...area, psf: 0 } },
  ];
}

function withOwnLoad(project: Project, where: OwnLoad['where']): Project {
  const taken = new Set(project.ownLoads.map(({ id }) => id));
  let n = project.ownLoads.length + 1;
  while (taken.has(`own-${n}`)) n += 1;
  const own: OwnLoad = {
    id: `own-${n}`,
    name: `Load ${n}`,
    kind: 'live',
    duration: 'tenYears',
    removable: true,
    direction: 'down',
    where,
  };
  return setAt(project, 'ownLoads', [...project.ownLoads, own]);
}
