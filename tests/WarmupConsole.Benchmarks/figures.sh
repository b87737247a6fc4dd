#!/usr/bin/env bash
# All figures of docs/performance.md as Markdown, in about eleven minutes on a quiet machine:
#   tests/WarmupConsole.Benchmarks/figures.sh [--no-publish]
# And those that take long or load the machine (punctuality with every core busy, kill -9, lost ports, a JACK receiver beside other players): about
# half an hour with 600 seconds each:
#   tests/WarmupConsole.Benchmarks/figures.sh --live SECONDS [--no-publish]
set -euo pipefail
cd "$(dirname "${BASH_SOURCE[0]}")/../.."
export DOTNET_NOLOGO=1 DOTNET_CLI_TELEMETRY_OPTOUT=1 MSBUILDDISABLENODEREUSE=1 DOTNET_CLI_USE_MSBUILD_SERVER=0
builds="artifacts/figures"

publish() { # FOLDER OPTIONS...
    local folder="$1"
    shift
    dotnet publish src/WarmupConsole.App -c Release -o "$builds/$folder" -v q "$@" >&2
}

seconds=""
if [ "${1:-}" = --live ]; then seconds="$2"; shift 2; fi
if [ "${1:-}" != --no-publish ]; then
    linker=()
    command -v clang >/dev/null || linker=(-p:CppCompilerAndLinker=gcc)
    rm -rf "$builds"
    publish native "${linker[@]}"
    publish ready-to-run --use-current-runtime --self-contained -p:PublishReadyToRun=true -p:PublishAot=false
    publish framework --no-self-contained -p:PublishAot=false
    dotnet build tests/WarmupConsole.Benchmarks -c Release -v q >&2
fi

printf '%s, .NET %s\n' "$(uname -srm)" "$(dotnet --version)"
grep -m1 'model name' /proc/cpuinfo || true
if [ -n "$seconds" ]; then
    python3 tests/WarmupConsole.Benchmarks/live_figures.py "$builds/native" "$seconds"
    printf '\n'
    exec /usr/bin/python3 tests/WarmupConsole.Benchmarks/receiver_figures.py "$builds/native" 60 # Debian's own, which has the JACK client
fi
python3 tests/WarmupConsole.Benchmarks/figures.py \
    "native code=$builds/native" "ready to run, self-contained=$builds/ready-to-run" "framework-dependent=$builds/framework"
printf '\n'
dotnet tests/WarmupConsole.Benchmarks/bin/Release/net10.0/WarmupConsole.Benchmarks.dll
