export { renderedPages } from './rendered-pages.ts';
