import '../styles/joint.css';
import { useMemo, useState } from 'react';
import { JOINT_WORDS } from '../../data/words/cord.ts';
import { STATUS_WORDS } from '../../data/words/status.ts';
import type { JointSetting } from '../../engine/checks/joints/joint-setting.ts';
import type { Evaluation } from '../../engine/evaluation.ts';
import { setAt } from '../../engine/project/edits/set-at.ts';
import { capacityOf } from '../../engine/project/joint-capacity.ts';
import type { Capacity, JointKind, Project } from '../../engine/project/model.ts';
import { CommandButton } from '../fields/command-choice.tsx';
import { late } from '../late.tsx';
import { useOpenProject, useWorkbench } from '../state/use-workbench.ts';
import { showRatio } from '../units/show-quantity.ts';
import { JointAsked } from './joint-asked.tsx';
import { askedOf, jointsHere, type AskedJoint } from './joint-at.ts';
import { CapacitySentence } from './joint-capacity.tsx';
import { PieceChooser } from './piece-chooser.tsx';
import { Folding } from './pieces/folding.tsx';

const JointPicture = late(async () => (await import('../joint/joint-picture.tsx')).JointPicture);

interface JointsProps {
  readonly kind: JointKind;
  /** the piece whose joints are told one by one, and what the joint is called where it has only one */
  readonly one?: { readonly upper: string; readonly words: string } | undefined;
  /** a kind that few shelters have is not spoken of where there is none */
  readonly isRare?: boolean;
}

/** What all joints of a kind hold, and what is asked of the hardest of them. */
export function JointSentences({ kind, one, isRare = false }: JointsProps) {
  const evaluation = useWorkbench((state) => state.evaluation);
  const project = useOpenProject();
  const words = JOINT_WORDS[kind] ?? kind;
  const upper = one?.upper;
  const joints = useMemo(
    () => (evaluation ? jointsHere(project, evaluation, kind, upper) : []),
    [project, evaluation, kind, upper],
  );
  const byKind = project.joints.defaults.find((joint) => joint.kind === kind)?.capacity ?? null;
  const hardest = useMemo(() => (evaluation ? askedOf(joints, evaluation) : null), [joints, evaluation]);
  if (isRare && joints.length === 0) return null;
  return (
    <section className="joint" aria-label={`Joint ${words}${one ? ` ${one.words}` : ''}`}>
      <CapacitySentence
        kind={kind}
        words={`Every joint ${words}`}
        capacity={byKind}
        path={`joints.defaults[${kind}].capacity`}
        setting={hardest?.setting ?? null}
        write={(p, capacity) => withKind(p, kind, capacity)}
      />
      {evaluation && hardest && (
        <>
          {one ? (
            <OneJoint {...{ kind, joints, hardest, evaluation, byKind }} called={one.words} />
          ) : (
            <Asked asked={hardest} evaluation={evaluation} words={`The hardest of ${joints.length}, ${words}`} />
          )}
        </>
      )}
    </section>
  );
}

interface OneJointProps {
  readonly kind: JointKind;
  readonly joints: readonly JointSetting[];
  readonly hardest: AskedJoint;
  readonly evaluation: Evaluation;
  readonly byKind: Capacity;
  readonly called: string;
}

/** One joint of a piece: of several the one that was picked, else the hardest. It may differ from its kind. */
function OneJoint({ kind, joints, hardest, evaluation, byKind, called }: OneJointProps) {
  const [picked, setPicked] = useState<string | null>(null);
  const setting = joints.find(({ key }) => key === picked) ?? hardest.setting;
  const { key } = setting;
  const asked = useMemo(() => askedOf([setting], evaluation), [setting, evaluation]);
  const words = joints.length > 1 ? `at ${setting.lower.label}` : called;
  return (
    <>
      <PieceChooser
        name={`Which joint ${JOINT_WORDS[kind] ?? kind}`}
        ids={joints.map((joint) => joint.key)}
        chosen={key}
        names={new Map(joints.map((joint) => [joint.key, joint.lower.label]))}
        onChoose={setPicked}
      />
      <div onFocusCapture={() => setPicked(key)}>
        <OwnCapacity kind={kind} setting={setting} byKind={byKind} words={words} />
      </div>
      {asked && <Asked asked={asked} evaluation={evaluation} words={`The one ${words}`} />}
    </>
  );
}

interface OwnCapacityProps {
  readonly kind: JointKind;
  readonly setting: JointSetting;
  readonly byKind: Capacity;
  readonly words: string;
}

/** What one joint holds where it differs from its kind, and the way there and back. */
function OwnCapacity({ kind, setting, byKind, words }: OwnCapacityProps) {
  const { key } = setting;
  const own = useOpenProject().joints.own.find((joint) => joint.key === key);
  const path = `joints.own[${key}].capacity`;
  if (!own) {
    return (
      <p className="aside">
        <CommandButton
          words={`other hardware ${words} only`}
          perform={(p) => ({ ...p, joints: { ...p.joints, own: [...p.joints.own, { key, capacity: byKind }] } })}
        />
      </p>
    );
  }
  return (
    <>
      <CapacitySentence
        kind={kind}
        jointKey={key}
        words={`The one ${words}`}
        capacity={own.capacity}
        path={path}
        setting={setting}
        write={(p, capacity) => setAt(p, path, capacity)}
      />
      <p className="aside">
        <CommandButton
          words="as the others again"
          name={`${JOINT_WORDS[kind] ?? kind} ${words}: as the others`}
          perform={(p) => ({ ...p, joints: { ...p.joints, own: p.joints.own.filter((each) => each.key !== key) } })}
        />
      </p>
    </>
  );
}

interface AskedProps {
  readonly asked: AskedJoint;
  readonly evaluation: Evaluation;
  readonly words: string;
}

/** Folded on a narrow screen, where the word of the joint stands in its heading. */
function Asked({ asked, evaluation, words }: AskedProps) {
  const project = useOpenProject();
  const { setting } = asked;
  return (
    <Folding words={`${words}: ${worstInWords(asked)}`}>
      <JointPicture setting={setting} capacity={capacityOf(project, setting.kind, setting.key)} />
      <JointAsked asked={asked} evaluation={evaluation} words={words} />
    </Folding>
  );
}

function worstInWords({ worst }: AskedJoint): string {
  if (!worst) return 'no figures for it';
  return worst.ratio === null
    ? STATUS_WORDS[worst.status]
    : `${STATUS_WORDS[worst.status]}, ${showRatio(worst.ratio)} at the worst`;
}

function withKind(project: Project, kind: JointKind, capacity: Capacity): Project {
  const { defaults } = project.joints;
  const next = defaults.some((joint) => joint.kind === kind)
    ? defaults.map((joint) => (joint.kind === kind ? { ...joint, capacity } : joint))
    : [...defaults, { kind, capacity }];
  return { ...project, joints: { ...project.joints, defaults: next } };
}
