import { Inject, Injectable } from '@nestjs/common';
import { DepartmentService } from '../access/department.service.ts';
import type { NightForPacket } from '../domain/packet/night-for-packet.ts';
import { namesNotUsed, withoutNames } from '../domain/packet/redaction.ts';
import type { Moment } from '../domain/packet/script.ts';
import { EXAMPLE_VARIABLES, isAlwaysThere, SCRIPT_VARIABLES } from '../domain/packet/script-variables.ts';
import { secondsOf, segmentsOf } from '../domain/packet/segment.ts';
import { mainGameOf, variablesOf } from '../domain/packet/variables-of-night.ts';
import type { Variables } from '../domain/packet/variables-of-night.ts';
import { voiceAt } from '../domain/packet/voice.ts';
import type { Voice } from '../domain/packet/voice.ts';
import { refuse } from '../domain/refusals.ts';
import { fillIn, namesUsed, readAloudThoughEmpty, ScriptFailure } from './liquid.ts';
import { NightsForPackets } from './nights-for-packets.service.ts';
import { pronouncing } from './pronouncing.ts';
import { checkScript } from './script-check.ts';
import type { ScriptNote } from './script-check.ts';
import type { PreviewDto, PreviewedText, PreviewView } from './script.dto.ts';

interface Stage {
  variables: Variables;
  /** names of students that are not to be said */
  unsaid: readonly string[];
  isOfNight: boolean;
}

/** What a script says on a night, while it is written. Writes nothing. */
@Injectable()
export class ScriptPreview {
  constructor(
    @Inject(NightsForPackets) private readonly nights: NightsForPackets,
    @Inject(DepartmentService) private readonly departments: DepartmentService,
  ) {}

  async show(form: PreviewDto): Promise<PreviewView> {
    const { nightId, language = 'en', text, secondText, secondLanguage, moment = null } = form;
    const [night] = nightId ? await this.nights.load([nightId]) : [];
    if (nightId && !night) refuse('unknown-night');
    const wordsPerMinute = night?.settings.wordsPerMinute ?? (await this.departments.here()).settings.wordsPerMinute;
    const words = await pronouncing();
    const stage = stageOf(night, moment);
    const first = previewed(text, moment, stage, voiceAt(wordsPerMinute, words, language));
    const hasSecond = secondLanguage !== null && secondLanguage !== undefined && Boolean(secondText?.trim());
    const second = hasSecond ? previewed(secondText!, moment, stage, voiceAt(wordsPerMinute, words, secondLanguage)) : null;
    return { wordsPerMinute, first, second, seconds: first.seconds + (second?.seconds ?? 0) };
  }
}

function stageOf(night: NightForPacket | undefined, moment: Moment | null): Stage {
  const game = night && mainGameOf(night.games);
  if (!night || !game) return { variables: EXAMPLE_VARIABLES, unsaid: [], isOfNight: false };
  const ownOfMoment = Object.fromEntries(SCRIPT_VARIABLES.filter(({ name }) => isAlwaysThere(name, moment)).map(({ name, example }) => [name, example]));
  const presented = night.games.flatMap(({ placements }) => placements).find(({ presents }) => presents);
  const [list] = night.honours ?? [];
  const own = {
    ...ownOfMoment,
    ...(presented && moment === 'sponsorPresentation' ? { sponsor: presented.sponsorName, presents: presented.presents, copy: presented.copyText ?? presented.fallbackText ?? '' } : {}),
    ...(list && moment === 'honours' ? { honoursTitle: list.title, honoursCount: list.students.length } : {}),
  };
  return { variables: { ...variablesOf(night, game, night.games.indexOf(game)), ...own }, unsaid: namesNotUsed(night), isOfNight: true };
}

function previewed(text: string, moment: Moment | null, { variables, unsaid, isOfNight }: Stage, voice: Voice): PreviewedText {
  const { problems, notes } = checkScript(text, moment);
  if (problems.length > 0) return { segments: [], seconds: 0, problems, notes };
  try {
    const filled = fillIn(text, variables);
    const said = withoutNames(filled, unsaid);
    const segments = segmentsOf(said, voice);
    const named: ScriptNote[] = said === filled ? [] : [{ line: null, sentence: 'a student is named whose family chose otherwise; the packet says “a member of the team” instead' }];
    const tonight = isOfNight ? holes(text, variables) : notes;
    return { segments, seconds: secondsOf(segments), problems, notes: [...named, ...tonight] };
  } catch (failure) {
    if (!(failure instanceof ScriptFailure)) throw failure;
    return { segments: [], seconds: 0, problems: [{ line: failure.line, sentence: failure.sentence }], notes };
  }
}

/** What is read aloud on this night though nothing stands in it. */
function holes(text: string, variables: Variables): ScriptNote[] {
  const used = new Set(namesUsed(text).map(({ parts }) => parts[0]!));
  const empty = [...used].filter((name) => variables[name] === null);
  return empty.flatMap((name) => {
    const found = readAloudThoughEmpty(text, variables, [name]);
    return found ? [{ line: found.line, sentence: `nothing stands in \`${name}\` on this night` }] : [];
  });
}
