/** In which language an answer is given. */
export { english, speeches, speechFor, tellIn, told } from './speeches.ts';
