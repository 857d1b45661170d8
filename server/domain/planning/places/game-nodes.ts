import type { FlowNetwork } from '../flow/flow-network.ts';
import { UNLIMITED } from '../flow/flow-network.ts';
import type { PlanPromise } from '../season.ts';
import { freeFor, isOf, keyOf } from './open-season.ts';
import type { OpenSeason, OpenWindow } from './open-season.ts';

/** By `kind game`: where a kind's room in a game is divided among promises that may go to different windows, by `group windows`. */
export type SplitRooms = ReadonlyMap<string, ReadonlyMap<string, number>>;

/** The nodes of a game: kinds whose sponsors compete, groups of promises that may go to the same windows, and windows. */
export class GameNodes {
  /** arcs that carry no more than windows, or a group within them, have places */
  readonly windowArcs: { readonly arc: number; readonly game: number; readonly keys: readonly string[] }[] = [];
  /** by node of a kind: `kind game` and the arc of its room */
  readonly kinds = new Map<number, { readonly kindId: string; readonly game: number; readonly arc: number }>();
  /** by `kind game`: the windows its promises may go to, by `group windows`, where they differ and its room is not divided */
  readonly sharedRooms = new Map<string, readonly string[]>();
  private readonly doors = new Map<string, number>();
  private readonly kindNodes = new Map<string, number>();
  /** by `kind game index`: the windows its promises may go to */
  private readonly kindClasses = new Map<string, Set<string>>();
  private readonly windowNodes: Map<string, number>[];
  private readonly classesAt: Map<string, { readonly group: string | null; readonly windows: readonly OpenWindow[] }>[];

  constructor(private readonly network: FlowNetwork, private readonly sink: number, private readonly season: OpenSeason, private readonly splits: SplitRooms) {
    this.classesAt = season.games.map(() => new Map());
    for (const { promise, games, reads } of season.slots) {
      if (reads === 0) continue;
      for (const { at } of games) {
        const key = this.noteClass(promise, at);
        const kind = keyOf(promise.readKindId, at);
        if (key !== null) this.kindClasses.set(kind, (this.kindClasses.get(kind) ?? new Set()).add(key));
      }
    }
    this.windowNodes = season.games.map((_, game) => this.joinWindows(game));
    this.classesAt.forEach((classes, game) => classes.forEach((one, key) => this.doors.set(keyOf(game, key), this.door(game, one.group, one.windows))));
  }

  /** Where reads of a promise enter a game, or -1 where no window has a place for them. */
  entry(promise: PlanPromise, game: number): number {
    const classKey = this.noteClass(promise, game);
    const door = classKey === null ? undefined : this.doors.get(keyOf(game, classKey));
    if (door === undefined) return -1;
    const { gameId } = this.season.games[game]!.game;
    const kindKey = keyOf(promise.readKindId, gameId);
    const room = this.season.kindRoom.get(kindKey);
    if (room === undefined) return door;
    if (room === 0) return -1;
    const split = this.splits.get(kindKey);
    const nodeKey = split === undefined ? kindKey : keyOf(kindKey, classKey!);
    const known = this.kindNodes.get(nodeKey);
    if (known !== undefined) return known;
    if (split !== undefined) return this.kindNode(nodeKey, promise.readKindId, game, split.get(classKey!) ?? 0, [door]);
    const classes = this.kindClasses.get(keyOf(promise.readKindId, game))!;
    if (classes.size > 1) this.sharedRooms.set(kindKey, [...classes]);
    return this.kindNode(nodeKey, promise.readKindId, game, room, [...new Set([...classes].map((key) => this.doors.get(keyOf(game, key))!))]);
  }

  private kindNode(key: string, kindId: string, game: number, room: number, doors: readonly number[]): number {
    const node = this.network.addNode();
    const inside = doors.length === 1 ? doors[0]! : this.network.addNode();
    if (doors.length > 1) doors.forEach((door, place) => {
      const arc = this.network.addArc(inside, door, UNLIMITED);
      if (place === 0) this.network.startBy(arc);
    });
    const arc = this.network.addArc(node, inside, room);
    this.network.startBy(arc);
    this.kinds.set(node, { kindId, game, arc });
    this.kindNodes.set(key, node);
    return node;
  }

  /** The promises that may go to the same windows share a door; null where there is none. */
  classKey(promise: PlanPromise, game: number): string | null {
    const windows = this.season.games[game]!.windows.filter((window) => isOf(window, promise) && freeFor(window, promise.placeGroup) > 0);
    if (windows.length === 0) return null;
    const group = windows.some((window) => promise.placeGroup !== null && promise.placeGroup in window.freeOfGroup) ? promise.placeGroup : null;
    return keyOf(group ?? '', ...windows.map((window) => window.at));
  }

  private noteClass(promise: PlanPromise, game: number): string | null {
    const key = this.classKey(promise, game);
    if (key === null || this.classesAt[game]!.has(key)) return key;
    const windows = this.season.games[game]!.windows.filter((window) => isOf(window, promise) && freeFor(window, promise.placeGroup) > 0);
    this.classesAt[game]!.set(key, { group: key.startsWith('\u0000') ? null : promise.placeGroup, windows });
    return key;
  }

  /**
   * Windows that the same promises may go to are one; where groups have limits inside, only if these are the same too.
   * Then whatever the joined window carries can be divided among its windows (sums of polymatroids of one rank function).
   */
  private joinWindows(game: number): Map<string, number> {
    const nodes = new Map<string, number>();
    const joined = new Map<string, OpenWindow[]>();
    for (const window of this.season.games[game]!.windows) {
      const users = [...this.classesAt[game]!].filter(([, one]) => one.windows.includes(window)).map(([key]) => key);
      if (users.length === 0) continue;
      const limits = Object.keys(window.freeOfGroup).length === 0 ? '' : JSON.stringify([window.free, Object.entries(window.freeOfGroup).sort()]);
      const key = keyOf(...users, limits);
      joined.set(key, [...(joined.get(key) ?? []), window]);
    }
    for (const windows of joined.values()) {
      const node = this.network.addNode();
      const arc = this.network.addArc(node, this.sink, windows.reduce((sum, window) => sum + window.free, 0));
      this.network.startBy(arc);
      const keys = windows.map((window) => window.key);
      this.windowArcs.push({ arc, game, keys });
      for (const window of windows) nodes.set(keyOf('', window.at), node);
      for (const group of Object.keys(windows[0]!.freeOfGroup)) {
        const free = windows.reduce((sum, window) => sum + window.freeOfGroup[group]!, 0);
        if (free === 0) continue;
        const inner = this.network.addNode();
        const innerArc = this.network.addArc(inner, node, free);
        this.network.startBy(innerArc);
        this.windowArcs.push({ arc: innerArc, game, keys });
        for (const window of windows) nodes.set(keyOf(group, window.at), inner);
      }
    }
    return nodes;
  }

  private door(game: number, group: string | null, windows: readonly OpenWindow[]): number {
    const targets = new Set(windows.map((window) => {
      const nodes = this.windowNodes[game]!;
      return (group === null ? undefined : nodes.get(keyOf(group, window.at))) ?? nodes.get(keyOf('', window.at))!;
    }));
    if (targets.size === 1) return [...targets][0]!;
    const node = this.network.addNode();
    [...targets].forEach((target, place) => {
      const arc = this.network.addArc(node, target, UNLIMITED);
      if (place === 0) this.network.startBy(arc);
    });
    return node;
  }
}
