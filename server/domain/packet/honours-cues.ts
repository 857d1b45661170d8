import type { CueBuilder, Spot } from './cue-builder.ts';
import type { HonouredStudent, HonoursForPacket } from './night-for-packet.ts';
import { scriptsFor } from './script.ts';
import { direction, secondsOf, spoken } from './segment.ts';
import type { Segment } from './segment.ts';
import type { Variables } from './variables-of-night.ts';
import type { Voice } from './voice.ts';

/** As many as fit a page in large print. */
const STUDENTS_PER_CUE = 6;

/** Escorts and line are the family's too: where the name is not used, neither are they. */
function studentSegment(student: HonouredStudent, kind: HonoursForPacket['kind'], voice: Voice): Segment {
  if (student.announce === 'silence') return direction('One student of this list is not announced: leave the space and go on');
  if (student.announce !== 'name') return spoken(kind === 'seniors' ? 'A member of the team.' : 'One of our students.', voice);
  const escorts = student.escorts ? `, with ${student.escorts.replace(/[.\s]+$/, '')}` : '';
  return spoken(`${student.name}${escorts}.${student.line ? ` ${student.line}` : ''}`, voice, student.sayAs, student.name);
}

function openingOf(builder: CueBuilder, list: HonoursForPacket, variables: Variables): Segment[] {
  const own = { ...variables, honoursTitle: list.title, honoursCount: list.students.length };
  if (list.openingText !== null) return builder.filled(list, list.openingText, 'en', own);
  const scripts = scriptsFor(builder.library, 'honours');
  const script = scripts.find(({ variant }) => variant === list.kind) ?? scripts.find(({ variant }) => !variant);
  return script === undefined ? [] : builder.filled(script, script.text, script.language, own);
}

/**
 * A list of honoured students: the opening, then one after the other in their order, each with the list's seconds, or with
 * what their words take where that is longer. Six to a cue, so that each stands on one page.
 */
export function honours(builder: CueBuilder, list: HonoursForPacket, spot: Spot, variables: Variables): void {
  const opening = openingOf(builder, list, variables);
  const parts = Math.max(1, Math.ceil(list.students.length / STUDENTS_PER_CUE));
  for (let part = 0; part < parts; part += 1) {
    const students = list.students.slice(part * STUDENTS_PER_CUE, (part + 1) * STUDENTS_PER_CUE).map((student) => studentSegment(student, list.kind, builder.voice));
    const before = part === 0 ? opening : [];
    if (before.length + students.length === 0) continue;
    builder.put({
      cueKey: `night/honours/${list.honoursListId}${part === 0 ? '' : `/${part + 1}`}`, ...spot, moment: 'honours',
      title: parts === 1 ? list.title : `${list.title} (${part + 1} of ${parts})`, segments: [...before, ...students],
      seconds: secondsOf(before) + students.reduce((sum, { seconds }) => sum + Math.max(seconds, list.secondsEach), 0),
    });
  }
}
