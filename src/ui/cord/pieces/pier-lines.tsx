import { bagsFor, concreteVolume, postAreaInGround } from '../../../engine/checks/ground/concrete.ts';
import type { Evaluation } from '../../../engine/evaluation.ts';
import type { PostGeometry } from '../../../engine/geometry/shelter.ts';
import { useWorkbench } from '../../state/use-workbench.ts';
import { showQuantity } from '../../units/show-quantity.ts';
import { FEW } from '../comes-down.ts';

interface LineProps {
  readonly memberId: string;
  readonly evaluation: Evaluation;
}

/** What this one foot gets, the worst of each direction: every pier answers for its own. Of few, each is told above. */
export function ReactionLine({ memberId, evaluation, name }: LineProps & { readonly name: string }) {
  const system = useWorkbench((state) => state.system);
  const posts = evaluation.lines.flatMap((line) => line.posts);
  const reaction = posts.find(({ postId }) => postId === memberId);
  if (!reaction || posts.length <= FEW) return null;
  const force = (lb: number): string => showQuantity({ value: Math.round(lb), unit: 'lb' }, system);
  return (
    <p>
      {name} presses down with {force(reaction.greatestDownLb)} at the worst, pulls up with{' '}
      {force(reaction.greatestUpLb)} and pushes along its line with {force(reaction.greatestAlongLb)}.
    </p>
  );
}

/** How much concrete to buy: for this foot, and for all of them. */
export function ConcreteLine({ memberId, evaluation }: LineProps) {
  const system = useWorkbench((state) => state.system);
  const { posts } = evaluation.shelter;
  const post = posts.find(({ id }) => id === memberId);
  if (!post) return null;
  const volumeOf = ({ foot, stick }: PostGeometry): number => concreteVolume(foot, postAreaInGround(stick));
  const one = volumeOf(post);
  if (one === 0) return null;
  const all = posts.reduce((sum, each) => sum + volumeOf(each), 0);
  const volume = (ft3: number): string => showQuantity({ value: ft3, unit: 'ft3' }, system);
  const bags = (ft3: number): string =>
    bagsFor(ft3)
      .map(({ lb, count }) => `${count} bags of ${lb} lb`)
      .join(' or ');
  return (
    <p className="aside">
      It takes {volume(one)} of concrete, {bags(one)} of dry mix; all {posts.length} together {volume(all)}, {bags(all)}
      . Buy a few more.
    </p>
  );
}
