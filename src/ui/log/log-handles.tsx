import { useRef, type KeyboardEvent, type PointerEvent } from 'react';
import { SlideHandle, type Phase } from '../drawing/SlideHandle.tsx';
import type { ShowLength } from '../drawing/words.ts';
import type { LogPicture } from './log-picture.ts';
import type { LogShown } from './log-shown.ts';

export interface LogHandlesProps {
  readonly drawn: LogPicture;
  readonly shown: LogShown;
  readonly units: 'feet' | 'metric';
  readonly showLength: ShowLength;
  /** place looked at, from the butt [in] */
  readonly atIn: number;
  readonly onLook: (fromButtIn: number) => void;
  readonly onAdd: (fromButtIn: number) => void;
  readonly onMove: (index: number, fromButtIn: number, phase: Phase) => void;
  readonly onRemove: (index: number) => void;
}

/** A pointer that went farther than this slides, it does not touch [px]. */
const TOUCH_PX = 6;
/** Stations lie no closer together than this [in]. */
const APART_IN = 1;

/** What can be touched on a drawn log: the log itself, every station but the butt, the place that is looked at. */
export function LogHandles(props: LogHandlesProps) {
  const { drawn, shown, units, showLength, atIn } = props;
  const { stations } = shown;
  const travel = { x: drawn.scale, y: 0 };
  const place = drawn.at(atIn, 0).x;
  const thick = halfThickness(shown);
  const onKeyDown = (event: KeyboardEvent<SVGGElement>): void => {
    if (event.key === 'Enter') props.onAdd(atIn);
  };
  return (
    <g>
      <Body {...props} />
      <path d={`M${place} ${drawn.at(0, thick).y}V${drawn.at(0, -thick).y}`} className="looked-at" />
      {stations.map((station, i) => {
        const before = stations[i - 1];
        if (!before) return null;
        const next = stations[i + 1];
        return (
          <g key={i} onKeyDown={(event) => next && event.key === 'Delete' && props.onRemove(i)}>
            <SlideHandle
              at={{ x: drawn.at(station.fromButtIn, 0).x, y: drawn.stationsY }}
              travel={travel}
              label={next ? `Station ${i}, from the butt` : 'Tip, from the butt'}
              valueIn={station.fromButtIn}
              minIn={before.fromButtIn + APART_IN}
              maxIn={next ? next.fromButtIn - APART_IN : station.fromButtIn + 120}
              originIn={0}
              valueText={showLength(station.fromButtIn)}
              units={units}
              onSlide={(valueIn, phase) => props.onMove(i, valueIn, phase)}
              onChoose={() => props.onLook(station.fromButtIn)}
            />
          </g>
        );
      })}
      <g onKeyDown={onKeyDown}>
        <SlideHandle
          at={{ x: place, y: drawn.rulerY }}
          travel={travel}
          label="Place looked at, from the butt; Enter adds a station there"
          valueIn={atIn}
          minIn={0}
          maxIn={shown.lengthIn}
          originIn={0}
          valueText={showLength(atIn)}
          units={units}
          onSlide={props.onLook}
        />
      </g>
    </g>
  );
}

const halfThickness = ({ stations }: LogShown): number => Math.max(...stations.map((s) => s.diameterIn)) / 2;

/** Round places where a touch measures [in]. */
const ROUND_IN = { feet: 1, metric: 25 / 25.4 } as const;

/** The log's own outline: the pointer over it shows the section there, a touch adds a station. */
function Body({ drawn, shown, units, onLook, onAdd }: LogHandlesProps) {
  const from = useRef<number | null>(null);
  const start = drawn.at(0, 0).x;
  const end = drawn.at(shown.lengthIn, 0).x;
  const thick = halfThickness(shown);
  const placeOf = (event: PointerEvent<SVGRectElement>): number => {
    const box = event.currentTarget.getBoundingClientRect();
    const share = Math.min(Math.max((event.clientX - box.left) / box.width, 0), 1);
    const step = ROUND_IN[units];
    return Math.min(Math.round((share * shown.lengthIn) / step) * step, shown.lengthIn);
  };
  return (
    <rect
      className="log-body"
      x={start}
      y={drawn.at(0, thick).y}
      width={end - start}
      height={drawn.at(0, -thick).y - drawn.at(0, thick).y}
      onPointerDown={(event) => {
        from.current = event.clientX;
      }}
      onPointerMove={(event) => onLook(placeOf(event))}
      onPointerUp={(event) => {
        const isTouch = from.current !== null && Math.abs(event.clientX - from.current) <= TOUCH_PX;
        from.current = null;
        if (isTouch) onAdd(placeOf(event));
      }}
    />
  );
}
