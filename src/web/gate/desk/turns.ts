/** Work that is asked for again while it is done is done once more after it, and never twice at a time. */
export function inTurns(work: () => Promise<void>): () => Promise<void> {
  let underWay: Promise<void> | undefined;
  let next: Promise<void> | undefined;
  const begin = () => {
    next = undefined;
    underWay = work().finally(() => {
      underWay = undefined;
    });
    return underWay;
  };
  return () => {
    if (underWay === undefined) return begin();
    next ??= underWay.then(begin, begin);
    return next;
  };
}
