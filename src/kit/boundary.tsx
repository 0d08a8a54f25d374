/** Keeps a fault inside a part of the page, such as the picture: the rest goes on. */
import { Component, type ReactNode } from 'react';

interface BoundaryProps {
  /** What stands in its place; `retry` draws the part again. */
  readonly fallback: (retry: () => void) => ReactNode;
  readonly children: ReactNode;
}

interface BoundaryState {
  readonly broke: boolean;
}

export class Boundary extends Component<BoundaryProps, BoundaryState> {
  override state: BoundaryState = { broke: false };

  static getDerivedStateFromError(): BoundaryState {
    return { broke: true };
  }

  private readonly retry = () => this.setState({ broke: false });

  override render(): ReactNode {
    return this.state.broke ? this.props.fallback(this.retry) : this.props.children;
  }
}
