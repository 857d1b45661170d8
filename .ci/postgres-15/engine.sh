# Sourced by .ci/run. Starts a container engine of our own on its own folders and builds the PostgreSQL 15 image in it from Debian's
# packages, without any image registry. Nothing of an engine that runs here already is touched.
engine_root=$(mktemp -d /var/tmp/rafterline-engine.XXXXXX)
engine_socket=$engine_root/docker.sock
engine_pid=

start_engine() {
  if ! command -v dockerd > /dev/null || ! command -v mmdebstrap > /dev/null; then
    apt-get update -qq
    DEBIAN_FRONTEND=noninteractive apt-get install -y -qq --no-install-recommends docker.io mmdebstrap > "$engine_root/apt.log" 2>&1 ||
      { tail -20 "$engine_root/apt.log"; return 1; }
  fi
  local storage=()
  for attempt in '' vfs; do
    [ -n "$attempt" ] && storage=(--storage-driver "$attempt")
    dockerd --data-root "$engine_root/data" --exec-root "$engine_root/exec" --pidfile "$engine_root/docker.pid" \
      -H "unix://$engine_socket" "${storage[@]}" > "$engine_root/dockerd.log" 2>&1 &
    engine_pid=$!
    for _ in $(seq 1 100); do
      if DOCKER_HOST="unix://$engine_socket" docker version > /dev/null 2>&1; then return 0; fi
      kill -0 "$engine_pid" 2> /dev/null || break
      sleep 0.2
    done
    kill "$engine_pid" 2> /dev/null; wait "$engine_pid" 2> /dev/null
  done
  echo 'The container engine did not start:'; tail -20 "$engine_root/dockerd.log"
  return 1
}

build_postgres_15() {
  local work=$engine_root/image
  mkdir -p "$work"
  cp .ci/postgres-15/Dockerfile .ci/postgres-15/entrypoint.sh "$work/"
  mmdebstrap --quiet --variant=extract \
    --include=postgresql-15,dash,bash,coreutils,sed,grep,findutils,util-linux,libc-bin,tzdata bookworm "$work/rootfs" 2> "$work/debian.log" ||
    { tail -20 "$work/debian.log"; return 1; }
  printf 'root:x:0:0:root:/root:/bin/bash\npostgres:x:999:999::/var/lib/postgresql:/bin/bash\n' > "$work/rootfs/etc/passwd"
  printf 'root:x:0:\npostgres:x:999:\n' > "$work/rootfs/etc/group"
  mkdir -p "$work/rootfs/var/lib/postgresql" "$work/rootfs/var/run/postgresql" "$work/rootfs/tmp"
  chmod 1777 "$work/rootfs/tmp"
  ln -sf dash "$work/rootfs/bin/sh"
  tar -C "$work/rootfs" -cf "$work/rootfs.tar" --exclude=./usr/share/doc --exclude=./usr/share/man --exclude=./usr/share/locale \
    --exclude=./var/cache --exclude=./var/lib/apt --exclude=./dev .
  rm -rf "$work/rootfs"
  DOCKER_BUILDKIT=0 DOCKER_HOST="unix://$engine_socket" docker build -q -t rafterline/postgres:15 "$work" > "$work/build.log" 2>&1 ||
    { tail -20 "$work/build.log"; return 1; }
  rm -rf "$work"
}

stop_engine() {
  [ -n "$engine_pid" ] || return 0
  kill "$engine_pid" 2> /dev/null
  wait "$engine_pid" 2> /dev/null
  grep -o " $engine_root/[^ ]*" /proc/mounts | sort -r | xargs -r umount 2> /dev/null
  rm -rf "$engine_root"
}
