import { Box } from '@mui/material';
import { Component, type ReactNode } from 'react';
import type { BarsProps } from './bars.ts';

export const PACE_HEIGHT = 280;

/** Lying bars need room for each; upright ones do not. */
export function heightOfBars({ labels, series, isLying = false, isStacked = false }: BarsProps): number {
  return isLying ? 56 + labels.length * (isStacked ? 44 : 24 + 16 * series.length) : 300;
}

/** The place of a drawing: as high as it will be, so that nothing jumps; what cannot be fetched is said, and the table stands anyway. */
export class Drawing extends Component<{ height: number; children: ReactNode }, { isMissing: boolean }> {
  override state = { isMissing: false };

  static getDerivedStateFromError(): { isMissing: boolean } {
    return { isMissing: true };
  }

  override render(): ReactNode {
    if (this.state.isMissing) return <Box component="p" sx={{ color: 'text.secondary' }}>The chart could not be drawn just now. The table says the same.</Box>;
    return <Box sx={{ minHeight: this.props.height }}>{this.props.children}</Box>;
  }
}
