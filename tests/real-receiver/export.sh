#!/usr/bin/env bash
# What `warmup export` writes, read and heard by programs that do not know the console: midicsv and mido read it, FluidSynth
# plays it, aubio hears the pitches; all compared with the plan's own files.
#   tests/real-receiver/export.sh
# WARMUP names the program to try (default: the one that `dotnet build` makes). Prints one "ok" or "not ok" line per check.
# Exit code 0: all ok, 1: something is not, 77: skipped, with the reason.
set -euo pipefail
cd "$(dirname "${BASH_SOURCE[0]}")/../.."
exec </dev/null
warmup="$(realpath -m "${WARMUP:-src/WarmupConsole.App/bin/Debug/net10.0/warmup}")"
python="/usr/bin/python3"
failures=0

skip() { echo "skipped: $*"; exit 77; }
for tool in midicsv csvmidi fluidsynth aubiopitch "$python"; do
    command -v "$tool" >/dev/null || skip "$tool is not installed (Debian: midicsv fluidsynth timgm6mb-soundfont aubio-tools python3-yaml python3-mido)"
done
"$python" -c 'import yaml, mido' 2>/dev/null || skip "python3-yaml or python3-mido is not installed"
soundfont="$(find /usr/share/sounds/sf2 -name 'TimGM6mb.sf2' 2>/dev/null | head -n 1)"
[ -n "$soundfont" ] || skip "no soundfont: timgm6mb-soundfont is not installed"
[ -x "$warmup" ] || skip "$warmup is not built"

work="$(mktemp -d)"
trap 'rm -rf "$work"' EXIT
check() { # WORDS COMMAND...: one line; what the command printed follows its words
    local words="$1" said
    shift
    if said="$("$@" 2>&1)"; then
        echo "ok - $words${said:+: $said}"
    else
        echo "not ok - $words"
        [ -z "$said" ] || sed 's/^/    /' <<<"$said"
        failures=$((failures + 1))
    fi
}
ask() { "$python" tests/real-receiver/export.py "$@"; }

render() { # MID WAV: without reverb and chorus, as a file
    timeout 120 fluidsynth -ni -q -R 0 -C 0 -g 0.8 -r 44100 -F "$2" -T wav "$soundfont" "$1" >"$work/fluidsynth.log" 2>&1
}
heard() { # MIDI PLAN KEYS PART: one part alone, as it stands in the file, rendered and heard
    midicsv "$1" >"$work/whole.csv" && ask alone "$work/whole.csv" "$4" >"$work/part.csv" && csvmidi "$work/part.csv" "$work/part.mid" || return 1
    render "$work/part.mid" "$work/part.wav" || return 1
    aubiopitch -i "$work/part.wav" -p yin -u midi -B 4096 -H 512 -s -90 >"$work/pitches.txt" 2>/dev/null || return 1
    ask pitches "$2" "$3" "$4" "$work/part.mid" "$work/pitches.txt"
}

for name in 2027-02-02 2027-02-09 2027-02-16; do
    plan="plans-demo/plans/$name.yaml"
    "$warmup" keys "$plan" --json >"$work/$name.json"
    "$warmup" export "$plan" --midi "$work/$name.mid" >/dev/null || { echo "not ok - $name is exported"; failures=$((failures + 1)); continue; }
    midicsv "$work/$name.mid" >"$work/$name.csv"
    check "$name: midicsv reads format 1 with a track for the course, the piano and each part" ask csv "$plan" "$work/$name.csv"
    check "$name: mido reads every part's notes, syllables and times as the files say" ask notes "$plan" "$work/$name.json" "$work/$name.mid"
done

# Listening takes its time, so a short plan of the same choir is heard: a scale, a canon, a staccato line, minor and a rest at the top.
mkdir -p "$work/choir/plans"
cp -r plans-demo/choir.yaml plans-demo/exercises "$work/choir/"
cat >"$work/choir/plans/heard.yaml" <<'YAML'
format: 1
steps:
  - {exercise: five-note-scale, keys: {start: C4, shape: up, most: 2}}
  - {exercise: five-note-canon, keys: {start: D4, shape: up, most: 1}}
  - {exercise: doubled-notes, keys: {start: Eb4, shape: up, most: 1}}
  - {exercise: minor-five-notes, keys: {start: C4, shape: up, most: 1}}
  - {exercise: octave-arpeggio, keys: {start: D4, shape: up, limit: any, most: 2}}
YAML
plan="$work/choir/plans/heard.yaml"
"$warmup" keys "$plan" --json >"$work/heard.json"
"$warmup" export "$plan" --midi "$work/heard.mid" >/dev/null || failures=$((failures + 1))
for part in soprano alto tenor bass; do
    check "FluidSynth plays and aubio hears the $part" heard "$work/heard.mid" "$plan" "$work/heard.json" "$part"
done

plan="plans-demo/plans/2027-02-16.yaml"
"$warmup" export "$plan" --midi "$work/home.mid" --part alto >/dev/null || failures=$((failures + 1))
check "the alto's own file stays inside the alto's comfortable range" ask within "$plan" "$work/home.mid" alto

[ "$failures" = 0 ]
