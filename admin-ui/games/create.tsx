import { CreatePage } from '../forms/record-form.tsx';
import { GameFields } from './fields.tsx';
import { gameFromForm } from './form.ts';

export const GameCreate = () => (
  <CreatePage title="Add a game" transform={gameFromForm}>
    <GameFields />
  </CreatePage>
);
