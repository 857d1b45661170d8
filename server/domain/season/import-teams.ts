import type { Level } from './game.ts';
import { foldedText } from './import-headings.ts';
import { problem } from './import-plan.ts';
import type { ImportProblem } from './import-plan.ts';
import { choiceOfCell } from './import-values.ts';

/** A team of ours in the season a file is imported into. */
export interface TeamThere {
  readonly id: string;
  readonly name: string;
  readonly level: Level;
  readonly schoolId: string;
  readonly schoolName: string;
}

const LEVEL_SPELLINGS: Readonly<Record<Level, readonly string[]>> = {
  varsity: ['v', 'var'],
  juniorVarsity: ['jv', 'junior varsity', 'j v'],
  sophomore: ['soph', 'sophomores', '10th'],
  freshman: ['frosh', 'fr', 'freshmen', '9th', 'c'],
  middleSchool: ['ms', 'middle school', 'jr high', 'junior high'],
};

/**
 * Finds a team of ours by what a file calls it: its name, alone or with its school or level before or
 * after it, narrowed by the level where the file has one.
 */
export function findTeam(
  teams: readonly TeamThere[],
  line: number,
  teamText: string,
  levelText: string,
): { team: TeamThere } | { problems: ImportProblem[] } {
  const level = levelText === '' ? null : choiceOfCell(levelText, LEVEL_SPELLINGS);
  if (levelText !== '' && level === null) {
    const choices = Object.keys(LEVEL_SPELLINGS).join(', ');
    return { problems: [problem(line, 'level', 'import-choice-unknown', { value: levelText, choices })] };
  }
  const ofLevel = teams.filter((team) => level === null || team.level === level);
  const wanted = foldedText(teamText);
  const found = wanted === '' ? ofLevel : ofLevel.filter((team) => namesOf(team).includes(wanted));
  const [first, ...others] = found;
  if (!first) return { problems: [problem(line, 'team', 'import-team-unknown', { value: teamText || levelText })] };
  const exact = found.filter((team) => foldedText(team.name) === wanted);
  if (exact.length === 1) return { team: exact[0]! };
  if (others.length > 0) return { problems: [problem(line, 'team', 'import-team-unclear', { value: teamText })] };
  return { team: first };
}

function namesOf(team: TeamThere): string[] {
  const levels = [team.level, ...LEVEL_SPELLINGS[team.level]];
  const bare = [team.name, `${team.schoolName} ${team.name}`, ...levels.flatMap((level) => [`${level} ${team.name}`, `${team.name} ${level}`])];
  return bare.map(foldedText);
}
