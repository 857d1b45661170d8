import type { PlanPromise, PlanRead, PlanSeason, PlanSlot } from '../../server/domain/planning/season.ts';

/** The weights of a missing read, written down a second time. */
const WEIGHT = { 1: 9, 2: 3, 3: 1 } as const;

interface Choice {
  readonly promise: PlanPromise;
  readonly slot: PlanSlot;
  readonly game: number;
  readonly window: number;
  readonly name: string;
}

/**
 * The places form as a mixed-integer program, written from the words of the job and sharing nothing with the flow: one
 * variable for each slot, game and window, one for what is missing. Slots of a promise have no game in common.
 */
export class PlacesModel {
  readonly rows: string[] = [];
  private readonly integers: string[] = [];
  private readonly choices: Choice[] = [];
  /** in the program's words, so that it can be the goal or a row */
  readonly shortfall: string;

  constructor(private readonly season: PlanSeason, private readonly prefix = '') {
    this.choices = this.everyChoice();
    this.integers.push(...this.choices.map((choice) => choice.name));
    this.demand();
    this.windows();
    this.limits();
    this.kinds();
    this.shortfall = this.slots().map(({ promise, name }) => `${WEIGHT[promise.priority]} ${name}`).join(' + ') || '0 none';
  }

  /** What has to be said about the variables once, for a program that several models share. */
  parts(): { readonly rows: readonly string[]; readonly integers: readonly string[] } {
    return { rows: this.rows, integers: this.integers };
  }

  /** Games promised aloud that have no read. */
  bare(): string {
    const pins = this.season.promises.flatMap((promise, at) => promise.pinnedGameIds.map((gameId, nth) => ({ promise, gameId, name: `${this.prefix}bare_${at}_${nth}` })));
    const open = pins.filter(({ promise, gameId }) => this.fixed((read) => read.promiseId === promise.promiseId && read.gameId === gameId) === 0);
    for (const { promise, gameId, name } of open) {
      const here = this.sum((choice) => choice.promise === promise && this.season.games[choice.game]!.gameId === gameId);
      this.row(`${here === '' ? '' : `${here} + `}${name} >= 1`);
      this.integers.push(name);
    }
    return open.map(({ name }) => name).join(' + ') || '0 none';
  }

  /** Reads that leave their game, over every promise and game where some are that may move. */
  leaving(): string {
    const names: string[] = [];
    this.season.promises.forEach((promise, at) => {
      this.season.games.forEach(({ gameId, isLocked }, game) => {
        const loose = this.season.placed.filter((read) => !isLocked && !read.isFixed && read.promiseId === promise.promiseId && read.gameId === gameId).length;
        if (loose === 0) return;
        const name = `${this.prefix}leave_${at}_${game}`;
        const here = this.sum((choice) => choice.promise === promise && choice.game === game);
        this.row(`${here === '' ? '' : `${here} + `}${name} >= ${loose}`);
        names.push(name);
      });
    });
    return names.join(' + ') || '0 none';
  }

  /** Sixtieths of a read by which what was given after each bucket but the last differs from an even pace. */
  pace(): string {
    const names: string[] = [];
    for (const slot of this.slots()) {
      for (const { games, ideal, given } of paceOf(this.season, slot.promise, slot.slot)) {
        const name = `${this.prefix}pace_${names.length}`;
        const here = this.sum((choice) => choice.slot === slot.slot && games.includes(choice.game), 60);
        if (here === '') continue;
        this.row(`${here} - ${name} <= ${ideal - given * 60}`);
        this.row(`${here} + ${name} >= ${ideal - given * 60}`);
        names.push(name);
      }
    }
    return names.join(' + ') || '0 none';
  }

  freeze(what: string, at: number): void {
    this.row(`${what} <= ${at}`);
  }

  private row(text: string): void {
    this.rows.push(text);
  }

  private sum(isMeant: (choice: Choice) => boolean, each = 1): string {
    return this.choices.filter(isMeant).map(({ name }) => (each === 1 ? name : `${each} ${name}`)).join(' + ');
  }

  private fixed(isMeant: (read: PlanRead) => boolean): number {
    return staying(this.season).filter(isMeant).length;
  }

  private slots(): { readonly promise: PlanPromise; readonly slot: PlanSlot; readonly name: string }[] {
    return this.season.promises.flatMap((promise, at) => promise.slots.map((slot, nth) => ({ promise, slot, name: `${this.prefix}s_${at}_${nth}` })));
  }

  private everyChoice(): Choice[] {
    return this.season.promises.flatMap((promise, at) => promise.slots.flatMap((slot, nth) => this.season.games.flatMap(({ gameId, isLocked, windows }, game) => {
      if (isLocked || !slot.gameIds.includes(gameId)) return [];
      return windows.flatMap((window, place) => (promise.windows.some((name) => name === window.key || name === window.kind)
        ? [{ promise, slot, game, window: place, name: `${this.prefix}y_${at}_${nth}_${game}_${place}` }] : []));
    })));
  }

  private demand(): void {
    for (const { promise, slot, name } of this.slots()) {
      const there = this.fixed((read) => read.promiseId === promise.promiseId && slot.gameIds.includes(read.gameId));
      const sum = this.sum((choice) => choice.slot === slot);
      this.row(`${sum === '' ? '' : `${sum} + `}${name} = ${Math.max(0, slot.reads - there)}`);
    }
  }

  private windows(): void {
    this.season.games.forEach(({ gameId, windows }, game) => windows.forEach(({ key, places, groupPlaces }, window) => {
      const inside = (read: PlanRead): boolean => read.gameId === gameId && read.windowKey === key;
      this.limit((choice) => choice.game === game && choice.window === window, places - this.fixed(inside));
      for (const [group, held] of Object.entries(groupPlaces)) {
        const ofGroup = (promiseId: string): boolean => this.season.promises.some((promise) => promise.promiseId === promiseId && promise.placeGroup === group);
        this.limit((choice) => choice.game === game && choice.window === window && choice.promise.placeGroup === group, held - this.fixed((read) => inside(read) && ofGroup(read.promiseId)));
      }
    }));
  }

  private limit(isMeant: (choice: Choice) => boolean, most: number): void {
    const sum = this.sum(isMeant);
    if (sum !== '') this.row(`${sum} <= ${Math.max(0, most)}`);
  }

  private limits(): void {
    this.season.promises.forEach((promise) => this.season.games.forEach(({ gameId }, game) => {
      if (promise.mostPerGame === null) return;
      const there = this.fixed((read) => read.promiseId === promise.promiseId && read.gameId === gameId);
      this.limit((choice) => choice.promise === promise && choice.game === game, promise.mostPerGame - there);
    }));
  }

  /** Where more sponsors compete for a kind in a game than it holds, it holds that many reads there. */
  private kinds(): void {
    for (const kindId of new Set(this.season.promises.map((promise) => promise.readKindId))) {
      const ofKind = this.season.promises.filter((promise) => promise.readKindId === kindId);
      this.season.games.forEach(({ gameId, isLocked }, game) => {
        if (isLocked) return;
        const there = (promise: PlanPromise): number => this.fixed((read) => read.promiseId === promise.promiseId && read.gameId === gameId);
        const competing = ofKind.filter((promise) => there(promise) > 0 || this.mayCome(promise, game));
        const most = Math.min(...competing.map((promise) => promise.sponsorsPerGame));
        if (new Set(competing.map((promise) => promise.sponsorId)).size <= most) return;
        this.limit((choice) => choice.promise.readKindId === kindId && choice.game === game, most - ofKind.reduce((sum, promise) => sum + there(promise), 0));
      });
    }
  }

  /** It asks for a read there that has no fixed place, and a window of its own has one free. */
  private mayCome(promise: PlanPromise, game: number): boolean {
    const { gameId } = this.season.games[game]!;
    const there = this.fixed((read) => read.promiseId === promise.promiseId && read.gameId === gameId);
    const asks = promise.slots.some((slot) => slot.gameIds.includes(gameId) && slot.reads > this.fixed((read) => read.promiseId === promise.promiseId && slot.gameIds.includes(read.gameId)));
    return asks && there < (promise.mostPerGame ?? Infinity) && hasFreePlace(this.season, promise, game);
  }
}

const STAYING = new WeakMap<PlanSeason, PlanRead[]>();

/** The reads that stay where they are: fixed, on a locked night, or of promises nobody names. */
function staying(season: PlanSeason): PlanRead[] {
  const known = STAYING.get(season);
  if (known !== undefined) return known;
  const locked = new Set(season.games.filter((game) => game.isLocked).map((game) => game.gameId));
  const reads = season.placed.filter((read) => read.isFixed || locked.has(read.gameId) || !season.promises.some((promise) => promise.promiseId === read.promiseId));
  STAYING.set(season, reads);
  return reads;
}

function hasFreePlace(season: PlanSeason, promise: PlanPromise, game: number): boolean {
  const { gameId, windows, isLocked } = season.games[game]!;
  if (isLocked) return false;
  return windows.filter((window) => promise.windows.includes(window.key) || promise.windows.includes(window.kind)).some((window) => {
    const inside = staying(season).filter((read) => read.gameId === gameId && read.windowKey === window.key);
    const groupOf = (read: PlanRead): string | null | undefined => season.promises.find((one) => one.promiseId === read.promiseId)?.placeGroup;
    const ofGroup = inside.filter((read) => promise.placeGroup !== null && groupOf(read) === promise.placeGroup).length;
    const held = promise.placeGroup === null ? Infinity : (window.groupPlaces[promise.placeGroup] ?? Infinity);
    return inside.length < window.places && ofGroup < held;
  });
}

/** After each bucket but the last: the games up to its end, reads that stay there, and what an even pace has given, in sixtieths. */
export function paceOf(season: PlanSeason, promise: PlanPromise, slot: PlanSlot): { readonly games: readonly number[]; readonly given: number; readonly ideal: number }[] {
  const stays = staying(season).filter((read) => read.promiseId === promise.promiseId && slot.gameIds.includes(read.gameId));
  const staysAt = (games: readonly number[]): number => stays.filter((read) => games.some((game) => season.games[game]!.gameId === read.gameId)).length;
  const open = season.games.flatMap(({ gameId, isLocked }, game) => (!isLocked && slot.gameIds.includes(gameId) && (staysAt([game]) > 0 || hasFreePlace(season, promise, game)) ? [game] : []));
  const asks = slot.reads - stays.length + staysAt(open);
  const count = open.length <= 16 ? open.length : 12;
  if (slot.reads <= stays.length) return [];
  return Array.from({ length: Math.max(0, count - 1) }, (_, bucket) => {
    const until = Math.floor(((bucket + 1) * open.length) / count);
    const games = open.slice(0, until);
    return { games, given: staysAt(games), ideal: Math.round((60 * asks * until) / open.length) };
  });
}

/** A program in CPLEX LP text, which all three solvers read. */
export function writeProgram(goal: string, ...models: readonly { parts(): { readonly rows: readonly string[]; readonly integers: readonly string[] } }[]): string {
  const rows = models.flatMap((model) => model.parts().rows).map((row, at) => `c${at}: ${row}`);
  const integers = models.flatMap((model) => model.parts().integers);
  return ['Minimize', ` goal: ${goal}`, 'Subject To', ...rows.map((row) => ` ${row}`), 'General', ...integers.map((name) => ` ${name}`), 'End', ''].join('\n');
}
