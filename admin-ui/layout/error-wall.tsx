import { Component, type ReactNode } from 'react';
import { ErrorPage } from './error-page.tsx';

/** Keeps a broken page from taking the frame with it. */
export class ErrorWall extends Component<{ children: ReactNode }, { error: Error | null }> {
  override state: { error: Error | null } = { error: null };

  static getDerivedStateFromError(error: Error): { error: Error } {
    return { error };
  }

  override render(): ReactNode {
    return this.state.error ? <ErrorPage error={this.state.error} /> : this.props.children;
  }
}
