import { useDeferredValue, useMemo, useState } from 'react';
import type { ReportedValues } from '../../engine/evaluation.ts';
import { explainValues } from '../../engine/explain.ts';
import { setAt } from '../../engine/project/edits/set-at.ts';
import type { Log, WoodBasis } from '../../engine/project/model.ts';
import { YoursChoice } from '../fields/choice.tsx';
import { CommandChoice } from '../fields/command-choice.tsx';
import { Yours } from '../fields/yours.tsx';
import { say, useOpenProject, useWorkbench } from '../state/use-workbench.ts';
import { showQuantity } from '../units/show-quantity.ts';
import { PoleInspection } from './pole-inspection.tsx';
import { StepList } from './steps.tsx';

const VALUES = [
  { symbol: 'Fb', field: 'FbPsi', of: 'FbPsi', words: 'bending' },
  { symbol: 'Fv', field: 'FvPsi', of: 'FvPsi', words: 'shear' },
  { symbol: 'Fcp', field: 'FcPerpPsi', of: 'FcpPsi', words: 'across the grain' },
  { symbol: 'Fc', field: 'FcPsi', of: 'FcPsi', words: 'along the grain' },
  { symbol: 'Ft', field: 'FtPsi', of: 'FtPsi', words: 'pull' },
  { symbol: 'E', field: 'EPsi', of: 'EPsi', words: 'stiffness' },
  { symbol: 'Emin', field: 'EminPsi', of: 'EminPsi', words: 'stiffness for buckling' },
] as const;
type ValueSymbol = (typeof VALUES)[number]['symbol'];

const PUBLISHED = [
  { value: 'wet', words: 'wet (green)' },
  { value: 'dry', words: 'dry' },
];

const HELD = [
  { value: [], words: 'not yet in them' },
  { value: ['CM'], words: 'in them already' },
];
const GRADED_AS = [
  { value: false, words: 'graded as beams, rafters or timbers' },
  { value: true, words: 'graded as poles or piles' },
];

/** Where the strength of a log comes from, and its values; each opens into its steps. */
export function WoodSentence({ log, of }: { readonly log: Log; readonly of: string }) {
  const wood = useWorkbench(({ project }) => project?.woods.find(({ id }) => id === log.woodId));
  const report = useWorkbench(({ evaluation }) => evaluation?.logs.find(({ logId }) => logId === log.id));
  if (!wood) return null;
  const path = `woods[${wood.id}].basis`;
  const values = report?.values ?? null;
  const options: { words: string; kind: WoodBasis['kind']; basis: WoodBasis }[] = [
    { words: 'worked out from clear wood and what was seen', kind: 'derived', basis: { kind: 'derived' } },
  ];
  const asPoles: WoodBasis = wood.basis.kind === 'poles' ? wood.basis : UNINSPECTED;
  options.push({ words: 'read from the pole table after an inspection', kind: 'poles', basis: asPoles });
  if (wood.basis.kind === 'typed') {
    options.push({ words: 'typed from a stamp or a letter', kind: 'typed', basis: wood.basis });
  } else if (values) {
    options.push({ words: 'typed from a stamp or a letter', kind: 'typed', basis: typedLike(values) });
  }
  return (
    <>
      <p className="sentence">
        Its strength is{' '}
        <span className="as-one">
          <CommandChoice
            label={`${of}: where the strength of its wood comes from`}
            chosen={options.findIndex(({ kind }) => kind === wood.basis.kind)}
            options={options.map(({ words, basis }) => ({ words, perform: (p) => setAt(p, path, basis) }))}
          />
          .
        </span>{' '}
        {report?.reason && <span className="marked">{say(report.reason)}</span>}
      </p>
      {wood.basis.kind === 'poles' && <PoleInspection basis={wood.basis} path={path} of={of} />}
      {wood.basis.kind === 'typed' && <TypedValues isDry={wood.basis.published === 'dry'} path={path} of={of} />}
      {values && (
        <details>
          <summary>Design values of this wood</summary>
          <ValueList values={values} log={log} of={of} />
          {values.cautions.map((caution) => (
            <p key={caution.code} className="aside">
              {say(caution)}
            </p>
          ))}
        </details>
      )}
    </>
  );
}

const UNINSPECTED: WoodBasis = { kind: 'poles', ticked: [], by: '', date: null };

/** What holds now, to be overwritten with what the stamp or the letter says. */
const typedLike = (values: ReportedValues): WoodBasis => ({
  kind: 'typed',
  by: '',
  date: null,
  published: 'wet',
  asPoles: false,
  factorsHeld: [],
  FbPsi: values.FbPsi,
  FvPsi: values.FvPsi,
  FcpPsi: values.FcPerpPsi,
  FcPsi: values.FcPsi,
  FtPsi: values.FtPsi,
  EPsi: values.EPsi,
  EminPsi: values.EminPsi,
});

interface TypedProps {
  /** published for dry wood: it matters whether wet service is in the values */
  readonly isDry: boolean;
  readonly path: string;
  readonly of: string;
}

function TypedValues({ isDry, path, of }: TypedProps) {
  return (
    <p className="sentence">
      Given by <Yours path={`${path}.by`} label={`${of}: who gave the values`} kind="text" /> on{' '}
      <Yours path={`${path}.date`} label={`${of}: day of the values`} kind="text" />, for wood that is{' '}
      <YoursChoice path={`${path}.published`} label={`${of}: wet or dry values`} choices={PUBLISHED} />,{' '}
      {isDry && (
        <>
          wet service{' '}
          <YoursChoice path={`${path}.factorsHeld`} label={`${of}: wet service in the values`} choices={HELD} />,{' '}
        </>
      )}
      <YoursChoice path={`${path}.asPoles`} label={`${of}: how the logs are graded`} choices={GRADED_AS} />:{' '}
      {VALUES.map(({ symbol, of: field, words }, i) => (
        <span key={symbol}>
          {i > 0 && ', '}
          {words} <Yours path={`${path}.${field}`} label={`${of}: ${words}`} />
        </span>
      ))}
      .
    </p>
  );
}

interface ValueListProps {
  readonly values: ReportedValues;
  readonly log: Log;
  readonly of: string;
}

function ValueList({ values, log, of }: ValueListProps) {
  const project = useDeferredValue(useOpenProject());
  const system = useWorkbench((state) => state.system);
  const [open, setOpen] = useState<ValueSymbol | null>(null);
  const shown = VALUES.find(({ symbol }) => symbol === open);
  const steps = useMemo(() => (open ? explainValues(project, log.id)?.(open) : null), [project, log.id, open]);
  return (
    <>
      <p className="figures">
        {VALUES.map(({ symbol, field, words }) => (
          <span key={symbol} className="figure">
            {words}{' '}
            <button
              type="button"
              className="opens"
              aria-expanded={open === symbol}
              aria-label={`${of}: ${words}, ${symbol}, its steps`}
              onClick={() => setOpen(open === symbol ? null : symbol)}
            >
              {showQuantity({ value: values[field], unit: 'psi' }, system)}
            </button>
          </span>
        ))}
      </p>
      {shown && steps && <StepList steps={steps} label={`Steps of ${shown.words}, ${of}`} />}
    </>
  );
}
