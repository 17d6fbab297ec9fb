#!/usr/bin/env bash
# Runs a PostgreSQL of its own in FOLDER on loopback at PORT. Lines on standard input: "crash" stops it without a
# goodbye, "start" starts it again; each is answered with "ready". When the input ends, by whatever end the test came
# to, the server is stopped and its data removed. It refuses to run as root, so root hands it to the user postgres.
set -euo pipefail
folder=$1
port=$2
bin=$(printf '%s\n' /usr/lib/postgresql/*/bin | sort -V | tail -1)
as=()
if [ "$(id -u)" -eq 0 ]; then
    chown postgres "$folder"
    as=(runuser -u postgres --)
fi
cd "$folder"

control() { "${as[@]}" "$bin/pg_ctl" --pgdata="$folder/data" --silent --wait "$@" >/dev/null 2>&1; }
start() {
    control start --log="$folder/log" \
        --options="-p $port -k '$folder' -c listen_addresses=127.0.0.1 -c fsync=off -c timezone=UTC"
    echo ready
}
finish() {
    control stop --mode=immediate || true
    rm -rf "$folder/data" "$folder/log"
}
trap finish EXIT

"${as[@]}" "$bin/initdb" --pgdata="$folder/data" --username=office --auth=trust --encoding=UTF8 --locale=C --no-sync \
    >/dev/null
start
while read -r order; do
    case $order in
    crash) control stop --mode=immediate && echo ready ;;
    start) start ;;
    esac
done
