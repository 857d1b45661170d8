import { MovePreviewController } from './move-preview.controller.ts';
import { MovePreviews } from './move-previews.service.ts';
import { MoveTraces } from './move-traces.service.ts';
import { MoveTrying } from './move-trying.service.ts';

/** What the preview of a move is made of. */
export const moveControllers = [MovePreviewController];
export const moveServices = [MoveTraces, MoveTrying, MovePreviews];
