/** Who goes, as far as it is public; on which horse, where that is public too. */

interface Named {
  readonly name: string;
  readonly horse: string | null;
}

export function Who({ name, horse }: Named) {
  return (
    <>
      <span class="name">{name}</span>
      {horse !== null && <span class="horse">{horse}</span>}
    </>
  );
}
