/** Keeps a fault of the picture inside the picture: the rest of the page goes on. */
import { Component, type ReactNode } from 'react';

interface PictureBoundaryProps {
  /** What stands in its place; `retry` draws it again. */
  readonly fallback: (retry: () => void) => ReactNode;
  readonly children: ReactNode;
}

interface PictureBoundaryState {
  readonly broke: boolean;
}

export class PictureBoundary extends Component<PictureBoundaryProps, PictureBoundaryState> {
  override state: PictureBoundaryState = { broke: false };

  static getDerivedStateFromError(): PictureBoundaryState {
    return { broke: true };
  }

  private readonly retry = () => this.setState({ broke: false });

  override render(): ReactNode {
    return this.state.broke ? this.props.fallback(this.retry) : this.props.children;
  }
}
