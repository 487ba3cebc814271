import { JOINT_WORDS } from '../../data/words/cord.ts';
import { setAt } from '../../engine/project/edits/set-at.ts';
import { jointKey } from '../../engine/project/joint-capacity.ts';
import type { Capacity, JointKind, Project } from '../../engine/project/model.ts';
import { CommandButton, CommandChoice } from '../fields/command-choice.tsx';
import { Yours } from '../fields/yours.tsx';
import { useOpenProject } from '../state/use-workbench.ts';

/** A rating starts empty, and as one that already counts on the ten minutes of a storm: never more than was meant. */
const EMPTY_RATING: NonNullable<Capacity> = {
  kind: 'rated',
  label: '',
  parts: { pushLb: null, pullLb: null, alongLb: null, acrossLb: null },
  durationIncluded: 1.6,
};

const PARTS = [
  { field: 'pullLb', words: 'pull' },
  { field: 'pushLb', words: 'push' },
  { field: 'alongLb', words: 'along' },
  { field: 'acrossLb', words: 'across' },
] as const;

interface JointsProps {
  readonly kind: JointKind;
  /** one joint that may differ from its kind; its two members */
  readonly one?: { readonly upper: string; readonly lower?: string; readonly words: string } | undefined;
}

/** What all joints of a kind can carry, as somebody rated them, and one of them where it differs. */
export function JointSentences({ kind, one }: JointsProps) {
  const project = useOpenProject();
  const words = JOINT_WORDS[kind] ?? kind;
  const byKind = project.joints.defaults.find((joint) => joint.kind === kind)?.capacity ?? null;
  const key = one ? jointKey(kind, one.upper, one.lower) : null;
  const own = project.joints.own.find((joint) => joint.key === key);
  return (
    <>
      <CapacitySentence
        words={`Every joint ${words}`}
        capacity={byKind}
        path={`joints.defaults[${kind}].capacity`}
        write={(p, capacity) => withKind(p, kind, capacity)}
      />
      {one && key !== null && own && (
        <>
          <CapacitySentence
            words={`The one ${one.words}`}
            capacity={own.capacity}
            path={`joints.own[${key}].capacity`}
            write={(p, capacity) => setAt(p, `joints.own[${key}].capacity`, capacity)}
          />
          <p className="aside">
            <CommandButton
              words="as the others again"
              name={`${words} ${one.words}: as the others`}
              perform={(p) => ({ ...p, joints: { ...p.joints, own: p.joints.own.filter((each) => each.key !== key) } })}
            />
          </p>
        </>
      )}
      {one && key !== null && !own && (
        <p className="aside">
          <CommandButton
            words={`another rating ${one.words} only`}
            perform={(p) => ({ ...p, joints: { ...p.joints, own: [...p.joints.own, { key, capacity: byKind }] } })}
          />
        </p>
      )}
    </>
  );
}

function withKind(project: Project, kind: JointKind, capacity: Capacity): Project {
  const { defaults } = project.joints;
  const next = defaults.some((joint) => joint.kind === kind)
    ? defaults.map((joint) => (joint.kind === kind ? { ...joint, capacity } : joint))
    : [...defaults, { kind, capacity }];
  return { ...project, joints: { ...project.joints, defaults: next } };
}

interface CapacitySentenceProps {
  readonly words: string;
  readonly capacity: Capacity;
  readonly path: string;
  readonly write: (project: Project, capacity: Capacity) => Project;
}

function CapacitySentence({ words, capacity, path, write }: CapacitySentenceProps) {
  const kinds: readonly { readonly kind: string; readonly words: string; readonly capacity: Capacity }[] = [
    { kind: 'null', words: 'has no capacity given', capacity: null },
    { kind: 'none', words: 'is held by contact only', capacity: { kind: 'none' } },
    { kind: 'rated', words: 'is rated', capacity: capacity?.kind === 'rated' ? capacity : EMPTY_RATING },
    ...(capacity?.kind === 'fasteners'
      ? [{ kind: 'fasteners', words: 'has its fasteners written down', capacity }]
      : []),
  ];
  return (
    <p className="sentence">
      {words}{' '}
      <CommandChoice
        label={`${words}: what it can carry`}
        chosen={kinds.findIndex(({ kind }) => kind === (capacity?.kind ?? 'null'))}
        options={kinds.map((each) => ({ words: each.words, perform: (p) => write(p, each.capacity) }))}
      />
      {capacity?.kind === 'rated' && (
        <>
          {' '}
          by <Yours path={`${path}.label`} label={`${words}: who rated it`} kind="text" />:{' '}
          {PARTS.map(({ field, words: part }, i) => (
            <span key={field}>
              {i > 0 && ', '}
              {part} <Yours path={`${path}.parts.${field}`} label={`${words}: rated ${part}`} />
            </span>
          ))}
          , with a load duration factor of{' '}
          <Yours path={`${path}.durationIncluded`} label={`${words}: duration factor in the rating`} /> already in it
        </>
      )}
      .
    </p>
  );
}
