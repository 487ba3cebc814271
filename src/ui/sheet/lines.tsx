/** Lines as they were fitted to the paper. On a narrow screen they run on as one text. */
export function Lines({ lines }: { readonly lines: readonly string[] }) {
  return lines.map((line, i) => (
    <span key={i} className="line">
      {line}{' '}
    </span>
  ));
}
