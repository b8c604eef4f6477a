/**
 * Which passwords are too common to be taken (OWASP ASVS 5.0, 6.2.4, 6.2.11 and 6.2.12). There are no rules about
 * kinds of characters (6.2.5): what counts is how soon a guesser would come to it, estimated offline from lists of leaked
 * passwords, words, names, keyboard runs, dates and repetitions.
 */
import { problem } from '../../platform/problems/index.ts';

/** 3: beyond 10^8 guesses, "safely unguessable" as the estimator says; scores go from 0 to 4. */
const leastScore = 3;

/** Long ones take the estimator a second; what 64 characters do not make strong, more will not. */
const estimatedCharacters = 64;
/** How many ways of writing l33t are tried for one password: with 100, the estimator's own number, it takes seconds. */
const spellingsTried = 4;

/** What anybody would try here first (ASVS 6.1.2). */
const wordsOfThePlace = ['ringledger', 'horseshow', 'horse show', 'show office', 'show secretary'];

/** Is it among what a guesser would try early? `known`: what colleagues know of the person, name and sign-in. */
export async function isCommonPassword(password: string, known: readonly string[]): Promise<boolean> {
  const estimator = await loadEstimator();
  const parts = known.flatMap((text) => [text, ...spellings(text.split(/[^\p{L}\p{N}]+/u))]);
  const tried = [...wordsOfThePlace, ...parts]
    .map((text) => text.toLowerCase())
    .filter((text) => text !== '');
  return estimator.check(password.normalize('NFC'), tried).score < leastScore;
}

/** Throws password_too_common. `known`: what colleagues know of the person. */
export async function mustBeUncommon(
  password: string,
  { field, known }: { readonly field: string; readonly known: readonly string[] },
): Promise<void> {
  if (!(await isCommonPassword(password, known))) return;
  const message = 'it is too easy to guess: known from leaks, a name, or a simple pattern';
  throw problem('password_too_common', { errors: [{ field, message }] });
}

/** "Ada", "Brandt", "AdaBrandt", "BrandtAda". */
const spellings = (words: readonly string[]) => [...words, words.join(''), words.toReversed().join('')];

let loading: ReturnType<typeof makeEstimator> | undefined;

/** Its lists take some 40 MB and half a second, and are needed only when a password is set. */
function loadEstimator() {
  loading ??= makeEstimator();
  return loading;
}

async function makeEstimator() {
  const [{ ZxcvbnFactory }, common, english] = await Promise.all([
    import('@zxcvbn-ts/core'),
    import('@zxcvbn-ts/language-common'),
    import('@zxcvbn-ts/language-en'),
  ]);
  return new ZxcvbnFactory({
    dictionary: { ...common.dictionary, ...english.dictionary },
    graphs: common.adjacencyGraphs,
    maxLength: estimatedCharacters,
    l33tMaxSubstitutions: spellingsTried,
  });
}
