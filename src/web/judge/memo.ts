/** A component that is not made again while its properties are the same; signals that it reads renew it by themselves. */
import { Component, type ComponentChild, type FunctionComponent, h } from 'preact';

export function memo<Properties extends object>(
  View: (properties: Properties) => ComponentChild,
): FunctionComponent<Properties> {
  const Inner = View as FunctionComponent<Properties>;
  class Memo extends Component<Properties> {
    override shouldComponentUpdate(next: Properties): boolean {
      const [old, now] = [Object.entries(this.props), Object.entries(next)];
      return (
        old.length !== now.length ||
        now.some(([name, value]) => this.props[name as keyof Properties] !== value)
      );
    }
    override render(): ComponentChild {
      return h(Inner, this.props as Properties);
    }
  }
  return Memo as unknown as FunctionComponent<Properties>;
}
