import { useId, type ReactNode } from 'react';
import './drawing.css';
import { pathOf } from './outline.ts';
import type { Box } from './paper.ts';
import type { Picture, PlacedText } from './sketch.ts';

/** Where a shown length stands, for a field that is laid over it. */
export interface DimensionPlace {
  /** as it is written where there is no field */
  readonly text: string;
  readonly box: Box;
  /** the text runs up the paper */
  readonly rotated: boolean;
  /** the number at the path moves by this much times what the shown length grows */
  readonly sign: 1 | -1;
}
export type RenderDimension = (path: string, valueIn: number, place: DimensionPlace) => ReactNode;

export interface PictureViewProps {
  readonly picture: Picture;
  readonly renderDimension?: RenderDimension | undefined;
  readonly onSelect?: ((memberId: string) => void) | undefined;
  /** handles that lie over the picture */
  readonly children?: ReactNode;
}

/**
 * A picture as one image with a title and a description in words; what can be used lies over it: outlines of members
 * to pick, handles, fields on the lengths.
 */
export function PictureView({ picture, renderDimension, onSelect, children }: PictureViewProps) {
  const id = useId();
  const { view } = picture;
  const { unit, textSize } = view.paper;
  const size = {
    viewBox: `0 0 ${view.width} ${view.height}`,
    width: `${view.width}${unit}`,
    height: `${view.height}${unit}`,
  };
  const fields = renderDimension ? picture.texts.filter((t) => t.leaf) : [];
  const written = renderDimension ? picture.texts.filter((t) => !t.leaf) : picture.texts;
  return (
    <div className={`drawing ${unit === 'px' ? 'on-screen' : 'on-sheet'}`}>
      <svg role="img" aria-labelledby={`${id}-title ${id}-words`} {...size} fontSize={textSize}>
        <title id={`${id}-title`}>{picture.title}</title>
        <desc id={`${id}-words`}>{picture.description}</desc>
        {picture.strokes.map((s, i) => (
          <path key={i} d={s.d} className={s.covers ? `${s.ink} covers` : s.ink} />
        ))}
        {picture.texts.map((t) => t.leader && <path key={t.key} d={pathOf(t.leader)} className="leader" />)}
        {written.map((t) => (
          <PictureText key={t.key} text={t} />
        ))}
      </svg>
      {(onSelect || children) && (
        <svg className="handles" {...size} fontSize={textSize}>
          {onSelect &&
            picture.targets.map((t) => (
              // picking by pointer only: by keyboard the members are walked along the load path beside the drawing
              <path key={t.memberId} d={t.d} className="target" onClick={() => onSelect(t.memberId)} />
            ))}
          {children}
        </svg>
      )}
      {renderDimension &&
        fields.map((t) => (
          <span
            key={t.key}
            className={t.rotated ? 'length-place runs-up' : 'length-place'}
            style={{ left: t.box.x, top: t.box.y, width: t.box.width, height: t.box.height, fontSize: textSize }}
          >
            {t.leaf &&
              renderDimension(t.leaf.path, t.leaf.valueIn, {
                text: t.text,
                box: t.box,
                rotated: t.rotated,
                sign: t.leaf.sign,
              })}
          </span>
        ))}
    </div>
  );
}

function PictureText({ text }: { readonly text: PlacedText }) {
  const x = text.box.x + text.box.width / 2;
  const y = text.box.y + text.box.height / 2;
  return (
    <text x={x} y={y} className={`text-${text.kind}`} {...(text.rotated ? { transform: `rotate(-90 ${x} ${y})` } : {})}>
      {text.text}
    </text>
  );
}
