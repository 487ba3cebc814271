import type { Status } from '../../engine/check.ts';

/** Line style of a status on the cord: filled passes, crossed fails, dashed is not given, double is outside the method. */
export function StatusMark({ status }: { readonly status: Status | null }) {
  return (
    <svg className={`mark ${status ?? 'nothing'}`} viewBox="0 0 16 16" width="16" height="16" aria-hidden="true">
      <circle cx="8" cy="8" r="5" className="ring" />
      {status === 'outside' && <circle cx="8" cy="8" r="2" className="ring" />}
      {status === 'fail' && <path d="M5 5 L11 11 M11 5 L5 11" className="cross" />}
    </svg>
  );
}
