import { SchoolService } from '../server/season/school.service.ts';
import { SeasonService } from '../server/season/season.service.ts';
import { TeamService } from '../server/season/team.service.ts';
import { VenueService } from '../server/season/venue.service.ts';
import { schoolYearOf } from '../server/domain/season/sport-profile.ts';
import { OUR_COACHES, OUR_ROSTERS, theirCoach, theirRoster } from './rosters.ts';
import type { Story } from './story.ts';

export const OPPONENTS = {
  Herons: { name: 'Port Ansel High School', shortName: 'Port Ansel', firstColour: '#1B2A4E', secondColour: '#C9A227', gym: 'Harborside Gymnasium' },
  Miners: { name: 'Quarry Bend High School', shortName: 'Quarry Bend', firstColour: '#1A1A1A', secondColour: '#E2711D', gym: 'Quarry Bend Gym' },
  Otters: { name: 'Linden Falls High School', shortName: 'Linden Falls', firstColour: '#5B2A86', secondColour: '#FFFFFF', gym: 'Millrace Court' },
  Larks: { name: 'Saint Odile Academy', shortName: 'Saint Odile', firstColour: '#6CB4E4', secondColour: '#FFFFFF', gym: 'Saint Odile Hall' },
  Pronghorns: { name: 'Corbin Flats High School', shortName: 'Corbin Flats', firstColour: '#6E1423', secondColour: '#C8AD7F', gym: 'Corbin Flats Activity Center' },
} as const;
export type Opponent = keyof typeof OPPONENTS;
export type TeamName = keyof typeof OUR_ROSTERS;

const TEAMS: readonly TeamName[] = ['Boys varsity', 'Girls varsity', 'Boys JV'];
const SAY: Partial<Record<Opponent, string>> = { Larks: 'saint oh-DEEL', Herons: 'port AN-sul' };

/** Ids by the names that the rest of the story uses. */
export interface SeasonPlaces {
  seasonId: string;
  seasonName: string;
  home: { venueId: string; floorId: string };
  gyms: Record<Opponent, string>;
  ours: Record<TeamName, string>;
  theirs: Record<Opponent, Record<TeamName, string>>;
  schoolIds: Record<Opponent | 'Kestrels', string>;
}

export async function tellSchools(story: Story): Promise<SeasonPlaces> {
  const { seasonStartsOn: startsOn, seasonEndsOn: endsOn } = story.calendar;
  return story.on(startsOn, async () => {
    const year = schoolYearOf(startsOn);
    const seasonName = `Basketball ${year}-${String(year + 1).slice(2)}`;
    const season = await story.of(SeasonService).add({ name: seasonName, sport: 'basketball', startsOn, endsOn });
    const home = await tellAlder(story);
    const ourSchool = await story.of(SchoolService).add({
      name: 'Tamarack Ridge High School', shortName: 'Tamarack Ridge', nickname: 'Kestrels', sayAs: 'TAM-uh-rack Ridge', isOurs: true,
      firstColour: '#1F5C3A', secondColour: '#B8632A', accountCode: '21-4710', outsideId: 'TR',
    });
    const ours = {} as Record<TeamName, string>;
    for (const name of TEAMS) {
      const [headCoach, headCoachSayAs] = OUR_COACHES[name];
      ours[name] = await tellTeam(story, { seasonId: season.id, schoolId: ourSchool.id, name, headCoach, headCoachSayAs }, OUR_ROSTERS[name]);
    }
    const others = await tellOpponents(story, season.id);
    return { seasonId: season.id, seasonName, home, ours, ...others, schoolIds: { ...others.schoolIds, Kestrels: ourSchool.id } };
  });
}

async function tellOpponents(story: Story, seasonId: string): Promise<Pick<SeasonPlaces, 'gyms' | 'theirs' | 'schoolIds'>> {
  const gyms = {} as SeasonPlaces['gyms'];
  const theirs = {} as SeasonPlaces['theirs'];
  const schoolIds = {} as SeasonPlaces['schoolIds'];
  for (const [place, nickname] of (Object.keys(OPPONENTS) as Opponent[]).entries()) {
    const { gym, ...school } = OPPONENTS[nickname];
    schoolIds[nickname] = (await story.of(SchoolService).add({ ...school, nickname, sayAs: SAY[nickname] ?? null })).id;
    gyms[nickname] = (await story.of(VenueService).add({ name: gym, isOurs: false })).id;
    theirs[nickname] = {} as Record<TeamName, string>;
    for (const name of TEAMS) {
      const form = { seasonId, schoolId: schoolIds[nickname], name, headCoach: theirCoach(place, name), headCoachSayAs: null };
      theirs[nickname][name] = await tellTeam(story, form, theirRoster(place, name));
    }
  }
  return { gyms, theirs, schoolIds };
}

async function tellTeam(
  story: Story,
  form: { seasonId: string; schoolId: string; name: TeamName; headCoach: string; headCoachSayAs: string | null },
  players: (typeof OUR_ROSTERS)[TeamName],
): Promise<string> {
  const teams = story.of(TeamService);
  const team = await teams.add({ ...form, level: form.name === 'Boys JV' ? 'juniorVarsity' : 'varsity' }, ['director']);
  await teams.putRoster(team.id, team.version, { players }, ['director']);
  return team.id;
}

async function tellAlder(story: Story): Promise<SeasonPlaces['home']> {
  const venue = await story.of(VenueService).add({
    name: 'Alder Fieldhouse', sayAs: 'AWL-der Fieldhouse', isOurs: true, address: '400 Ridge Road, Tamarack Ridge',
    exitsText: 'There are four exits: two at the lobby end behind the home bench, and one in each far corner beside the bleachers.',
    defibrillatorPlace: 'In the lobby, on the wall to the left of the ticket window',
    evacuationText:
      'May I have your attention, please. We need everyone to leave the building now. Please walk to the exit nearest to you and go to the lower parking lot, away from the building. Leave your things behind. Staff will show you the way.',
    weatherText:
      'May I have your attention, please. The weather outside is not safe. Please stay inside the fieldhouse, move away from the glass doors, and wait for the next announcement.',
    injuryText: '[[Say nothing while a player is down. No music, no reads.]]',
    threatText: 'May I have your attention, please. Please listen to the staff near you and do as they ask.',
    floors: [{ name: 'the Perch' }],
  });
  return { venueId: venue.id, floorId: venue.floors[0]!.id };
}
