import { EngineError } from './errors.ts';
import { message, type Fault } from './message.ts';

/** A broken promise inside becomes a typed problem at the door. */
export function guarded<A>(work: () => A): A | { readonly ok: false; readonly faults: readonly Fault[] } {
  try {
    return work();
  } catch (error) {
    const detail =
      error instanceof EngineError
        ? error.message
        : error instanceof Error
          ? `${error.name}: ${error.message}`
          : String(error);
    return { ok: false, faults: [{ path: '', ...message('engineFault', { detail }) }] };
  }
}
