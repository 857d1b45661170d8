import { EditPage } from '../forms/record-form.tsx';
import { GameFields } from './fields.tsx';
import { gameForForm, gameFromForm } from './form.ts';
import type { Game } from './types.ts';

export const GameEdit = () => (
  <EditPage title={(game: Game) => `Change ${game.label}`} expand={gameForForm} transform={gameFromForm}>
    <GameFields />
  </EditPage>
);
