import { Controller, Get } from '@nestjs/common';
import { ApiTags } from '@nestjs/swagger';
import { Needs } from '../access/needs.ts';
import { PROFILES } from '../domain/season/profiles.ts';
import { windowsOf } from '../domain/season/sport-profile.ts';
import type { GameWindow, SportProfile } from '../domain/season/sport-profile.ts';

/** A profile with a key and a name, and the windows of a usual game in the order of the night. */
export interface ProfileView extends Omit<SportProfile, 'windows'> {
  key: string;
  name: string;
  windows: (GameWindow & { name: string })[];
}

@ApiTags('season')
@Controller('api/profiles')
export class ProfileController {
  @Get()
  @Needs('see the season')
  list(): { data: ProfileView[]; total: number } {
    return { data: PROFILES.map(profileView), total: PROFILES.length };
  }
}

function profileView(profile: SportProfile): ProfileView {
  const state = profile.state ? `, ${profile.state}` : '';
  return {
    ...profile,
    key: `${profile.sport}-${profile.fromSeason}${profile.state ? `-${profile.state}` : ''}`,
    name: `${inWords(profile.sport)} from ${profile.fromSeason}-${String(profile.fromSeason + 1).slice(2)}${state}`,
    windows: windowsOf(profile, undefined, true).map((window) => ({ ...window, name: inWords(window.key) })),
  };
}

/** `betweenPeriods2` as `Between periods 2`. */
function inWords(key: string): string {
  const words = key.replace(/([A-Z]|\d+)/g, ' $1').toLowerCase();
  return words.charAt(0).toUpperCase() + words.slice(1);
}
