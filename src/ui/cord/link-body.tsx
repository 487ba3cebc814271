import '../styles/link-body.css';
import type { Link } from '../../data/rules.ts';
import { CAUTIONS } from '../../data/words/cord.ts';
import type { Evaluation } from '../../engine/evaluation.ts';
import { ShowLoads } from '../loads/show-loads.tsx';
import { useWorkbench } from '../state/use-workbench.ts';
import { whatComesDown } from './comes-down.ts';
import { Gives } from './gives.tsx';
import type { CordLink } from './links.ts';
import { Piece } from './piece.tsx';
import type { Names } from './places.ts';
import { useEscape } from './use-escape.ts';
import { useSoughtField } from './use-sought-field.ts';

export interface LinkBodyProps {
  readonly id: string;
  readonly link: CordLink;
  readonly evaluation: Evaluation;
  readonly names: Names;
  readonly onLeave: () => void;
}

/** Links on which the loads of the roof act as they are drawn. */
const ROOF_LINKS: ReadonlySet<Link> = new Set<Link>(['site', 'sheet', 'purlin', 'rafter', 'swayAlong', 'swayAcross']);

/** What an open link shows: what comes down on it, what it is made of, every check of it. */
export function LinkBody({ id, link, evaluation, names, onLeave }: LinkBodyProps) {
  const system = useWorkbench((state) => state.system);
  const inside = useEscape<HTMLDivElement>(onLeave);
  useSoughtField();
  const arriving = whatComesDown(link, { evaluation, names, system });
  return (
    <div ref={inside} id={id} className="link-body">
      {arriving.length > 0 && (
        <>
          <h3>What comes down on it</h3>
          {arriving.map((sentence) => (
            <p key={sentence}>{sentence}</p>
          ))}
        </>
      )}
      {ROOF_LINKS.has(link.link) && (
        <p>
          <ShowLoads wish={{ by: 'link', link: link.link }} words="see these loads on the roof" />
        </p>
      )}
      <h3>What this piece is</h3>
      <Piece link={link} evaluation={evaluation} names={names} />
      <h3>What it gives</h3>
      <Gives link={link} names={names} />
      {(CAUTIONS[link.link] ?? []).map((caution) => (
        <p key={caution} className="caution">
          <strong>Mind:</strong> {caution}
        </p>
      ))}
    </div>
  );
}
