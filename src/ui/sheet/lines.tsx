interface LinesProps {
  readonly lines: readonly string[];
  /** the first line begins so far in [pt] */
  readonly indent?: number;
}

/** Lines as they were fitted to the paper. On a narrow screen they run on as one text. */
export function Lines({ lines, indent = 0 }: LinesProps) {
  return lines.map((line, i) => (
    <span key={i} className="line" style={i === 0 && indent > 0 ? { paddingInlineStart: `${indent}pt` } : undefined}>
      {line}{' '}
    </span>
  ));
}
