import { notGiven, outside } from '../check.ts';
import type { CheckRow } from '../evaluation.ts';
import type { RoofForm } from '../../data/loads/free-roof-main.ts';
import type { Shelter } from '../geometry/shelter.ts';
import { areKnotsMeasured, isFootUnlisted, isGrainRead } from '../material/strength-ratio.ts';
import { logValues } from '../material/log-values.ts';
import type { Given, OwnLoad, Project } from '../project/model.ts';
import { whyOwnNotComputed } from '../loads/own-loads.ts';
import { earthquakeDoubts, highestFt } from '../loads/earthquake.ts';
import { codeOfAnotherEdition } from '../loads/site/edition.ts';
import { LEAST_DRAINING_RISE, mayPond } from '../loads/site/ponding.ts';
import type { SitePressures } from '../loads/site/site-pressures.ts';
import { message } from '../message.ts';
import { plainRow } from './site-of-check.ts';

/** Rows that no load decides: guesses and blanks of the site, what the method does not reach, logs not looked at. */
export function siteRows(
  project: Project,
  shelter: Shelter,
  site: SitePressures,
  form: RoofForm | null,
): readonly CheckRow[] {
  return [
    ...givenRows(project, site),
    ...outsideRows(project, shelter, site, form),
    ...site.uneven.notGiven.map((reason) =>
      plainRow('site.driftAndSliding', 'site', at(reason.code), notGiven(reason)),
    ),
    ...earthquakeDoubts(project.site, highestFt(shelter)).map(({ name, verdict }) =>
      plainRow('site.seismic', 'site', at(name), verdict),
    ),
    ...pondingRows(shelter),
    ...editionRows(project),
    ...logRows(project),
  ];
}

function pondingRows(shelter: Shelter): readonly CheckRow[] {
  const reason = message('pondingNotComputed', { least: LEAST_DRAINING_RISE });
  return mayPond(shelter) ? [plainRow('site.ponding', 'site', at(''), outside(reason))] : [];
}

/** The edition that is computed is a row of the site's figures; here the adopted code speaks of another one. */
function editionRows({ code }: Project): readonly CheckRow[] {
  const reason = codeOfAnotherEdition(code.building.value);
  return reason ? [plainRow('site.edition', 'site', at('code.building'), notGiven(reason))] : [];
}

const at = (name: string) => ({ kind: 'whole', name }) as const;

function givenRows(project: Project, site: SitePressures): readonly CheckRow[] {
  const missing = site.missing.map((f) =>
    plainRow('site.value', 'site', at(f.path), notGiven({ code: f.code, values: f.values })),
  );
  const asked: readonly (readonly [string, Given<unknown>])[] = [
    ...Object.entries(project.code).map(([k, v]) => [`code.${k}`, v] as const),
    ...Object.entries(project.site).flatMap(([k, v]): (readonly [string, Given<unknown>])[] =>
      isGiven(v) ? [[`site.${k}`, v]] : [],
    ),
    ['site.soil.bearingPsf', project.site.soil.bearingPsf],
    ['site.soil.lateralPsfPerFt', project.site.soil.lateralPsfPerFt],
  ];
  const guesses = asked
    .filter(([path, g]) => g.value !== null && g.givenBy === 'guess' && !site.missing.some((m) => m.path === path))
    .map(([path]) =>
      plainRow('site.value', 'site', at(path), notGiven({ code: 'guessedValue', values: { field: path } })),
    );
  const unsized = project.ownLoads
    .filter(isNothing)
    .map(({ id, name }) => plainRow('site.ownLoad', id, at(''), notGiven(message('ownLoadIsNothing', { name }))));
  return [...missing, ...guesses, ...unsized];
}

const isGiven = (v: unknown): v is Given<unknown> =>
  typeof v === 'object' && v !== null && 'givenBy' in v && 'value' in v;

/** A load that was added and has no size yet. */
const isNothing = ({ where }: OwnLoad): boolean =>
  (where.on === 'plane' ? where.psf : where.on === 'stretch' ? where.plf : where.lb) === 0;

function outsideRows(
  project: Project,
  shelter: Shelter,
  site: SitePressures,
  form: RoofForm | null,
): readonly CheckRow[] {
  const rows: CheckRow[] = site.outside.map((o) => plainRow(o.ruleId, 'site', at(''), outside(o.reason)));
  const add = (
    ruleId: CheckRow['ruleId'],
    member: string,
    code: Parameters<typeof outside>[0]['code'],
    values: Record<string, string | number> = {},
  ): void => {
    rows.push(plainRow(ruleId, member, at(''), outside({ code, values })));
  };
  if (form === null) add('site.roofForm', 'site', 'roofFormNotCovered');
  for (const own of project.ownLoads) {
    const why = whyOwnNotComputed(project, shelter, own);
    if (why) rows.push(plainRow('site.ownLoad', own.id, at(''), outside(why)));
  }
  return rows;
}

/** One row per log in use whose knots or grain nobody read, or that is past the method. */
function logRows(project: Project): readonly CheckRow[] {
  const used = new Set(
    [...project.groups, ...project.members.flatMap((m) => (m.own ? [m.own] : []))].flatMap((holder) =>
      'stock' in holder && holder.stock?.kind === 'log' ? [holder.stock.logId] : [],
    ),
  );
  return project.logs
    .filter((l) => used.has(l.id))
    .flatMap((log): CheckRow[] => {
      const wood = project.woods.find((w) => w.id === log.woodId);
      if (!wood) return [];
      const answer = logValues(log, wood);
      if (!answer.ok)
        return [
          plainRow(
            'log.limits',
            log.id,
            at(''),
            answer.status === 'outside' ? outside(answer.reason) : notGiven(answer.reason),
          ),
        ];
      const unread = wood.basis.kind === 'derived' && (!areKnotsMeasured(log) || !isGrainRead(log));
      const code = isFootUnlisted(log) ? 'knotsOfFootUnlisted' : 'knotsNotMeasured';
      return unread ? [plainRow('log.knots', log.id, at(''), notGiven(message(code, { log: log.id })))] : [];
    });
}
