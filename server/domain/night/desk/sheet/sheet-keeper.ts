import type { SportRules } from '../../../season/sport-rules.ts';
import { takenBackIds } from '../../take-back.ts';
import type { DeskGame } from '../bundle.ts';
import type { DeskEntry } from '../desk-entry.ts';
import { foldLine, sheetOf } from './fold-line.ts';
import { emptySheet } from './table-sheet.ts';
import type { TableSheet } from './table-sheet.ts';

/**
 * Keeps the sheet of one game while its log grows: lines that were added are folded in; only where something was taken
 * back, or came in between, is all of it added up anew.
 */
export class SheetKeeper {
  private ids: string[] = [];
  private gone: ReadonlySet<string> = new Set();
  private sheet: TableSheet;

  constructor(private readonly game: Pick<DeskGame, 'gameId' | 'visitors' | 'home'>, private readonly rules: SportRules) {
    this.sheet = emptySheet(game, rules);
  }

  /** @param lines the whole log as far as it is known, in its order */
  of(lines: readonly DeskEntry[]): TableSheet {
    const added = this.ids.length <= lines.length && this.ids.every((id, place) => lines[place]!.id === id) ? lines.slice(this.ids.length) : null;
    if (added === null || added.some((line) => line.kind === 'takenBack')) {
      this.gone = takenBackIds(lines);
      this.sheet = sheetOf(this.game, this.rules, lines);
    } else {
      // A taking back may have come before what it takes back.
      this.sheet = added.filter((line) => !this.gone.has(line.id)).reduce(foldLine, this.sheet);
    }
    if (added === null) this.ids = lines.map((line) => line.id);
    else for (const line of added) this.ids.push(line.id);
    return this.sheet;
  }
}
