import { useId, useRef, useState, type KeyboardEvent, type PointerEvent } from 'react';
import type { Point } from './paper.ts';
import { DRAWING_WORDS } from './words.ts';

export type Phase = 'move' | 'end' | 'cancel';

export interface SlideHandleProps {
  readonly at: Point;
  /** paper units that the handle travels when its value grows by an inch */
  readonly travel: Point;
  readonly label: string;
  readonly valueIn: number;
  readonly minIn: number;
  readonly maxIn: number;
  /** where round lengths are counted from [in] */
  readonly originIn: number;
  readonly valueText: string;
  readonly units: 'feet' | 'metric';
  /** what else moves with it; said before, and shown beside it while it is held */
  readonly alike?: string | null;
  readonly onSlide: (valueIn: number, phase: Phase) => void;
  readonly onChoose?: (() => void) | undefined;
}

/** A pointer lands on these; an arrow key goes by the longer step, with Shift by the shorter [in]. */
const SNAP_IN = { feet: 0.25, metric: 5 / 25.4 } as const;
const STEP_IN = { feet: { long: 1, short: 1 / 8 }, metric: { long: 25 / 25.4, short: 5 / 25.4 } } as const;
const WAY: Readonly<Record<string, 1 | -1>> = { ArrowRight: 1, ArrowUp: 1, ArrowLeft: -1, ArrowDown: -1 };

/** Half of a target that a thumb can hit [px]. */
const THUMB = 22;

interface Gesture {
  readonly startIn: number;
  readonly nowIn: number;
  /** client place where the pointer took hold; null for a gesture by keys */
  readonly from: Point | null;
}

/**
 * A place on the drawing that slides along one straight way, by pointer, touch or arrow keys. One gesture runs from the
 * first move to the release; Escape takes it back.
 */
export function SlideHandle(props: SlideHandleProps) {
  const id = useId();
  const gesture = useRef<Gesture | null>(null);
  const [isHeld, setHeld] = useState(false);
  const within = (valueIn: number): number => Math.min(Math.max(valueIn, props.minIn), props.maxIn);

  const move = (valueIn: number): void => {
    const held = gesture.current;
    const nextIn = within(valueIn);
    if (!held || nextIn === held.nowIn) return;
    gesture.current = { ...held, nowIn: nextIn };
    props.onSlide(nextIn, 'move');
  };
  const finish = (phase: 'end' | 'cancel'): void => {
    const held = gesture.current;
    gesture.current = null;
    setHeld(false);
    if (held && held.nowIn !== held.startIn) props.onSlide(phase === 'end' ? held.nowIn : held.startIn, phase);
  };

  const takeHold = (event: PointerEvent<SVGGElement>): void => {
    if (event.button !== 0) return;
    event.currentTarget.setPointerCapture(event.pointerId);
    event.currentTarget.focus();
    gesture.current = {
      startIn: props.valueIn,
      nowIn: props.valueIn,
      from: { x: event.clientX, y: event.clientY },
    };
    setHeld(true);
    props.onChoose?.();
  };
  const follow = (event: PointerEvent<SVGGElement>): void => {
    const held = gesture.current;
    if (!held?.from) return;
    const perPixel = paperPerPixel(event.currentTarget);
    const { travel } = props;
    const along = ((event.clientX - held.from.x) * travel.x + (event.clientY - held.from.y) * travel.y) * perPixel;
    const inches = along / (travel.x * travel.x + travel.y * travel.y);
    const snap = SNAP_IN[props.units];
    move(props.originIn + Math.round((held.startIn + inches - props.originIn) / snap) * snap);
  };
  const press = (event: KeyboardEvent<SVGGElement>): void => {
    if (event.key === 'Escape' && gesture.current) {
      event.stopPropagation();
      finish('cancel');
      return;
    }
    if (event.key === 'Enter' || event.key === ' ') {
      event.preventDefault();
      props.onChoose?.();
      return;
    }
    const way = WAY[event.key];
    if (way === undefined || gesture.current?.from) return;
    event.preventDefault();
    gesture.current ??= { startIn: props.valueIn, nowIn: props.valueIn, from: null };
    setHeld(true);
    const step = STEP_IN[props.units];
    move(gesture.current.nowIn + way * (event.shiftKey ? step.short : step.long));
  };
  const release = (event: KeyboardEvent<SVGGElement>): void => {
    if (WAY[event.key] !== undefined && !gesture.current?.from) finish('end');
  };

  const { alike = null } = props;
  return (
    <g
      role="slider"
      tabIndex={0}
      className="handle"
      aria-label={props.label}
      aria-describedby={`${id}keys`}
      aria-orientation={Math.abs(props.travel.x) >= Math.abs(props.travel.y) ? 'horizontal' : 'vertical'}
      aria-valuemin={props.minIn}
      aria-valuemax={props.maxIn}
      aria-valuenow={props.valueIn}
      aria-valuetext={alike === null ? props.valueText : `${props.valueText}, ${alike}`}
      onPointerDown={takeHold}
      onPointerMove={follow}
      onPointerUp={() => finish('end')}
      onPointerCancel={() => finish('cancel')}
      onKeyDown={press}
      onKeyUp={release}
      onBlur={() => finish('end')}
    >
      <title id={`${id}keys`}>
        {DRAWING_WORDS.handleKeys[props.units]}
        {alike !== null && ` It moves ${alike}.`}
      </title>
      {isHeld && alike !== null && (
        <text x={props.at.x + THUMB + 4} y={props.at.y} className="moves-too">
          {alike}
        </text>
      )}
      <circle cx={props.at.x} cy={props.at.y} r={THUMB} className="grip" />
      <circle cx={props.at.x} cy={props.at.y} r={5} className="knob" />
    </g>
  );
}

/** The page may show the drawing larger or smaller than it was laid out. */
function paperPerPixel(element: SVGGElement): number {
  const svg = element.ownerSVGElement;
  const shown = svg?.getBoundingClientRect().width ?? 0;
  return svg && shown > 0 ? svg.viewBox.baseVal.width / shown : 1;
}
