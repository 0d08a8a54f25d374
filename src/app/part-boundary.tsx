/**
 * Keeps a fault inside one part of the page: a part that could not be fetched, because the network is gone or a new version
 * lies on the server, or one that broke off. What is on the bench is kept by its draft, so loading the page again is safe.
 */
import { Component, type ReactNode } from 'react';
import { APP_WORDS } from './words.ts';

interface PartBoundaryProps {
  readonly children: ReactNode;
}

interface PartBoundaryState {
  readonly broke: boolean;
}

export class PartBoundary extends Component<PartBoundaryProps, PartBoundaryState> {
  override state: PartBoundaryState = { broke: false };

  static getDerivedStateFromError(): PartBoundaryState {
    return { broke: true };
  }

  override render(): ReactNode {
    if (!this.state.broke) return this.props.children;
    return (
      <div className="part-missing" role="alert">
        <p>{APP_WORDS.partMissing}</p>
        <button type="button" onClick={() => location.reload()}>
          {APP_WORDS.loadAgain}
        </button>
      </div>
    );
  }
}
