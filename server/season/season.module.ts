import { Module } from '@nestjs/common';
import { CalendarController } from './calendar-feed/calendar.controller.ts';
import { CalendarFeedController } from './calendar-feed/calendar-feed.controller.ts';
import { CalendarFeeds } from './calendar-feed/calendar-feeds.service.ts';
import { FeedGames } from './calendar-feed/feed-games.service.ts';
import { Floor } from './floor.entity.ts';
import { GameChange } from './game-change.service.ts';
import { GameController } from './game.controller.ts';
import { Game } from './game.entity.ts';
import { GameNight } from './game-night.entity.ts';
import { GameNights } from './game-nights.service.ts';
import { GameParticipant } from './game-participant.entity.ts';
import { GameReader } from './game-reader.service.ts';
import { GameService } from './game.service.ts';
import { GameTeams } from './game-teams.service.ts';
import { RosterImportController } from './import.controller.ts';
import { RosterImport } from './import-rosters.service.ts';
import { ScheduleImport } from './import-schedule.service.ts';
import { ImportedPlaces } from './imported-places.service.ts';
import { Night } from './night.entity.ts';
import { NightService } from './night.service.ts';
import { PersonOfNight } from './person-of-night.entity.ts';
import { PlayerController } from './player.controller.ts';
import { Player } from './player.entity.ts';
import { PlayerService } from './player.service.ts';
import { PlayersThere } from './players-there.service.ts';
import { ProfileController } from './profile.controller.ts';
import { RosterEntry } from './roster-entry.entity.ts';
import { RosterService } from './roster.service.ts';
import { RosterWriter } from './roster-writer.service.ts';
import { SchoolController } from './school.controller.ts';
import { School } from './school.entity.ts';
import { SchoolService } from './school.service.ts';
import { SeasonController } from './season.controller.ts';
import { Season } from './season.entity.ts';
import { SeasonService } from './season.service.ts';
import { TeamController } from './team.controller.ts';
import { Team } from './team.entity.ts';
import { TeamService } from './team.service.ts';
import { VenueController } from './venue.controller.ts';
import { Venue } from './venue.entity.ts';
import { VenueService } from './venue.service.ts';
import { WindowPlacesController } from './window-places.controller.ts';
import { WindowPlaces } from './window-places.entity.ts';
import { WindowPlacesService } from './window-places.service.ts';

export const seasonEntities = [
  School,
  Venue,
  Floor,
  Season,
  Team,
  Player,
  RosterEntry,
  Night,
  Game,
  GameParticipant,
  GameNight,
  PersonOfNight,
  WindowPlaces,
];

const services = [
  PlayersThere,
  SchoolService,
  VenueService,
  SeasonService,
  TeamService,
  RosterService,
  RosterWriter,
  PlayerService,
  GameReader,
  GameTeams,
  GameNights,
  GameService,
  GameChange,
  NightService,
  ImportedPlaces,
  RosterImport,
  ScheduleImport,
  WindowPlacesService,
  FeedGames,
  CalendarFeeds,
];

@Module({
  controllers: [
    SchoolController,
    VenueController,
    SeasonController,
    TeamController,
    PlayerController,
    GameController,
    ProfileController,
    RosterImportController,
    WindowPlacesController,
    CalendarFeedController,
    CalendarController,
  ],
  providers: services,
  exports: services,
})
export class SeasonModule {}
