import { Component, type ReactNode } from 'react';
import { saveDocument } from '../document/index.ts';
import { download, fileStem } from './files/download.ts';
import type { AppStore } from '../store/index.ts';

interface Props {
  readonly store: AppStore;
  readonly children: ReactNode;
}

/** When a mistake in the program stops the screen, the work is still there: this lets the coach take it with him. */
export class ErrorBoundary extends Component<Props, { readonly message: string | null }> {
  override state: { readonly message: string | null } = { message: null };

  static getDerivedStateFromError(error: unknown): { readonly message: string } {
    return { message: error instanceof Error ? error.message : String(error) };
  }

  override render(): ReactNode {
    const { message } = this.state;
    if (message === null) return this.props.children;
    return (
      <main className="fallen">
        <h1>Gapwright has stopped</h1>
        <p>Something in the program went wrong. Your playbook is not lost: save it to a file, then go on.</p>
        <p className="hint">{message}</p>
        <div className="button-row">
          <button type="button" className="is-main" onClick={this.save}>
            Save the playbook to a file
          </button>
          <button type="button" onClick={this.undo}>
            Undo the last change and go on
          </button>
          <button type="button" onClick={() => window.location.reload()}>
            Reload the page
          </button>
        </div>
      </main>
    );
  }

  private readonly save = (): void => {
    const { playbook } = this.props.store.get();
    const bytes = new TextEncoder().encode(saveDocument(playbook));
    download(`${fileStem(playbook.team.name)}.gapwright.json`, bytes, 'application/json');
  };

  private readonly undo = (): void => {
    this.props.store.undo();
    this.setState({ message: null });
  };
}
