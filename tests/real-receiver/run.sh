#!/usr/bin/env bash
# The console against a receiver that it does not know: JACK without a sound card, FluidSynth printing every event it gets.
#   tests/real-receiver/run.sh
# WARMUP names the program to try (default: the one that `dotnet build` makes). Prints one "ok" or "not ok" line per check.
# Exit code 0: all ok, 1: something is not, 77: skipped, with the reason. Ends only what it started.
set -euo pipefail
cd "$(dirname "${BASH_SOURCE[0]}")/../.."
exec </dev/null
root="$PWD"
warmup="$(realpath -m "${WARMUP:-src/WarmupConsole.App/bin/Debug/net10.0/warmup}")"
demo="$root/plans-demo/plans/2027-02-09.yaml"
python="/usr/bin/python3"
rungs_wanted=2
failures=0

skip() { echo "skipped: $*"; exit 77; }
for tool in jackd jack_lsp fluidsynth tmux stdbuf pgrep "$python"; do
    command -v "$tool" >/dev/null || skip "$tool is not installed (Debian: jackd2 fluidsynth timgm6mb-soundfont librtmidi6 tmux procps python3-yaml)"
done
"$python" -c 'import yaml' 2>/dev/null || skip "python3-yaml is not installed"
grep -q 'librtmidi\.so' <<<"$(ldconfig -p)" || skip "librtmidi is not installed"
soundfont="$(find /usr/share/sounds/sf2 -name 'TimGM6mb.sf2' 2>/dev/null | head -n 1)"
[ -n "$soundfont" ] || skip "no soundfont: timgm6mb-soundfont is not installed"
[ -x "$warmup" ] || skip "$warmup is not built"

work="$(mktemp -d)"
started=()
terminal() { tmux -L "real-receiver-$$" -f "$work/tmux.conf" "$@"; }
end_all() {
    terminal kill-server 2>/dev/null || true
    local i pid
    for ((i = ${#started[@]} - 1; i >= 0; i--)); do # clients before their server
        pid="${started[i]}"
        kill "$pid" 2>/dev/null || continue
        until_true 3 gone "$pid" || kill -KILL "$pid" 2>/dev/null || true
        wait "$pid" 2>/dev/null || true
    done
    rm -rf "$work"
}
trap end_all EXIT
trap 'exit 1' INT TERM HUP

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
until_true() { # SECONDS COMMAND...: tries again until the command succeeds or the seconds have passed
    local deadline=$((EPOCHSECONDS + $1))
    shift
    until "$@" >/dev/null 2>&1; do
        [ "$EPOCHSECONDS" -le "$deadline" ] || return 1
        sleep 0.1
    done
}
ask() { "$python" tests/real-receiver/check.py "$@"; }
# Processes that have ended but are not yet collected count as gone.
gone() { local state; state="$(ps -o stat= -p "$1" 2>/dev/null)" || return 0; [[ "$state" == Z* ]]; }
running() { ! gone "$1"; }

# --- the receiver ---------------------------------------------------------------------------------------------------------

# Without it the first-run tour would take the keys.
export CI=true
# One name for all runs: JACK keeps the place of a server that was killed until one of the same name comes, and has eight.
export JACK_DEFAULT_SERVER=real-receiver JACK_NO_AUDIO_RESERVATION=1
# And so one run at a time: a second one would find the server of the first.
exec 8>"${TMPDIR:-/tmp}/$JACK_DEFAULT_SERVER-$(id -u).lock"
flock -w 600 8 || skip "another run has held the receiver for ten minutes"
events="$work/events.txt"
: >"$events"
# On a busy machine an asynchronous server drops the events of a period that a client missed: -S waits for it. Measured with
# three busy loops on two cores: 40 of 400 notes lost at -p 128 without -S, none at -p 1024 with it. 512 frames are 10.7 ms.
rights=-r
if chrt -f 1 true 2>/dev/null; then rights=-R; fi
jackd "$rights" -m -S -t 5000 -n "$JACK_DEFAULT_SERVER" -d dummy -r 48000 -p 512 >"$work/jackd.log" 2>&1 8>&- &
started+=("$!")
jackd_id="$!"
{ until_true 10 jack_lsp && running "$jackd_id"; } || { sed 's/^/    /' "$work/jackd.log"; skip "JACK does not start here"; }

mkfifo "$work/commands" "$work/heard"
while IFS= read -r line; do printf '%s %s\n' "$EPOCHREALTIME" "$line"; done <"$work/heard" >>"$events" &
started+=("$!")
exec 9<>"$work/commands" # an input that never ends, and no network port
stdbuf -oL fluidsynth -q -d -o shell.prompt= -a file -o audio.file.name=/dev/null -o audio.file.type=raw -m jack -o midi.jack.id=fs \
    -g 0.6 "$soundfont" <&9 >"$work/heard" 2>"$work/fluidsynth.log" 8>&- &
started+=("$!")
until_true 10 bash -c 'jack_lsp | grep -q ^fs:' || { sed 's/^/    /' "$work/fluidsynth.log"; skip "FluidSynth does not start here"; }

# --- the console ----------------------------------------------------------------------------------------------------------

cat >"$work/tmux.conf" <<'CONF'
set -g remain-on-exit on
set -g status off
set -s escape-time 0
set -g default-terminal tmux-256color
CONF

keys() { terminal send-keys -t console "$@"; }
screen() { terminal capture-pane -p -t console; }
shows_start() { screen | grep -q 'Space starts'; }
heard_any() { grep -q 'event_post_noteon' "$events"; }
shows_saved() { screen | grep -q 'saved'; }
sounds_now() { ask sounds "$events"; }

find_player() { player="$(pgrep -P "$console" -f ' player( |$)')"; }

start_console() { # HOME [PORT PLAN]: a run with settings and logs of its own; sets console and player
    mkdir -p "$1/home" "$1/config" "$1/data" "$1/state"
    : >"$events"
    terminal new-session -d -s console -x 120 -y 36 \
        "exec env HOME='$1/home' XDG_CONFIG_HOME='$1/config' XDG_DATA_HOME='$1/data' XDG_STATE_HOME='$1/state' '$warmup' run '${3:-$demo}' --port ${2:-fs} --anew 2>'$1/stderr'"
    console="$(terminal display-message -p -t console '#{pane_pid}')"
    until_true 20 shows_start
    until_true 10 find_player || true
}
start_singing() { # [STEPS BEFORE IT]: from the first screen to the first key of the first sung step
    local i
    keys Space
    sleep 0.5
    for ((i = 0; i < ${1:-$first_sung}; i++)); do keys Right; sleep 0.3; done
    keys Space
}
close_terminal() { terminal kill-server 2>/dev/null || true; until_true 5 gone "$console" || true; }

digest() { find plans-demo -type f -print0 | sort -z | xargs -0 sha256sum | sha256sum; }
log_has() { grep -qs "$1" "$work"/run/config/warmup-console/demo/plans-demo/sessions/*.jsonl; }

before="$(digest)"
named="$work/keys.json"
"$warmup" keys "$demo" --json >"$named" || { echo "not ok - warmup keys names the rungs"; exit 1; }
check "the rungs that warmup keys names follow from the files" ask keys "$demo" "$named"
first_sung="$(ask step "$demo" "$named")"

# --- a run: keys, notes, a mark, silence, the way out --------------------------------------------------------------------

start_console "$work/run" || { echo "not ok - the screen appears"; screen | sed 's/^/    /'; exit 1; }
start_singing
check "a first note arrives" until_true 60 heard_any
until_true 90 ask reached "$demo" "$named" "$rungs_wanted" "$events" || true
check "cue chords, melody and chords of $rungs_wanted keys arrive, each at its time, and nothing else" ask heard "$demo" "$named" "$rungs_wanted" "$events"

keys a Space f Enter
check "a mark made while it sounds is in the session log" until_true 5 log_has '"raw":"a f"'

until_true 20 sounds_now || true
pressed="$EPOCHREALTIME"
keys Tab
sleep 2
check "after the silence key nothing sounds" ask hanging "$events"
check "note-offs and the silence follow the key" ask silenced "$events" "$pressed"
count="$(grep -c 'event_post_noteon' "$events")"
sleep 3
check "and nothing starts again by itself" test "$count" = "$(grep -c 'event_post_noteon' "$events")"

keys C-q
sleep 1
check "one press of Ctrl+Q does not end a warm-up" running "$console"
keys C-q
check "a second press does" until_true 10 gone "$console"
[ -z "$player" ] || check "and its player with it" until_true 5 gone "$player"
close_terminal
"$warmup" review --json "$work"/run/config/warmup-console/demo/plans-demo/sessions/*.jsonl >"$work/review.json" 2>"$work/review.err" || sed 's/^/    /' "$work/review.err"
check "warmup review understands the mark" ask mark "$work/review.json" "a f" alto flat
check "the demo folder is as it was" test "$before" = "$(digest)"

# --- the ports themselves ------------------------------------------------------------------------------------------------

tests_program="tests/WarmupConsole.Tests/bin/Debug/net10.0/WarmupConsole.Tests.dll"
contract() { WARMUP_TEST_PORT=fs dotnet "$tests_program" -class '*RtMidiPortContractTests' 2>&1 | grep -E 'Total: [1-9].*Failed: 0, Skipped: 0' | sed 's/.*Total/Total/'; }
if [ -f "$tests_program" ]; then
    check "RtMidi over JACK keeps the contract that all ports keep" contract
else
    echo "skipped: the tests are not built, so RtMidi's contract was not tried"
fi

# A synthesizer that reads raw bytes from a pipe, as one on a MIDI cable would: no library between the console and it.
raw_bytes() {
    mkfifo "$work/midi"
    exec 7<>"$work/midi" # a writer that keeps it open before the console comes
    stdbuf -oL fluidsynth -q -d -o shell.prompt= -a file -o audio.file.name=/dev/null -o audio.file.type=raw -m oss -o midi.oss.device="$work/midi" \
        -g 0.6 "$soundfont" <&9 7>&- 8>&- >"$work/raw.txt" 2>>"$work/fluidsynth.log" &
    trap "kill $! 2>/dev/null || true" EXIT # a check is a shell of its own: what it starts, it ends
    until_true 10 test -e "/proc/$!/fd" || return 1
    XDG_CONFIG_HOME="$work/ports" timeout 60 "$warmup" ports --test --port "$work/midi" >/dev/null || return 1
    local heard
    heard="$(awk '$1 == "event_post_noteon" { print $3 }' "$work/raw.txt" | tr '\n' ' ')"
    [ "$heard" = "60 62 64 65 67 69 71 72 60 64 67 72 " ] || { echo "heard: $heard"; return 1; }
    echo "$heard"
}
check "a synthesizer that reads raw bytes hears the scale and the chord of the port test" raw_bytes

# What a synthesizer makes of it, heard by a third program: the port test, and the first keys of a warm-up in unison, live over JACK.
with_an_ear() { # COMMAND...: what it makes sound at the port "ear" is measured; onsets and pitches stand in $work after it
    mkfifo "$work/ear-commands"
    exec 6<>"$work/ear-commands"
    fluidsynth -q -o shell.prompt= -a file -o audio.file.name="$work/ear.wav" -o audio.file.type=wav -r 44100 -m jack -o midi.jack.id=ear \
        -g 0.8 -R 0 -C 0 "$soundfont" <&6 6>&- 8>&- >/dev/null 2>>"$work/fluidsynth.log" &
    local ear="$!"
    trap "kill $ear 2>/dev/null || true" EXIT
    until_true 10 bash -c 'jack_lsp | grep -q ^ear:' || return 1
    "$@" || return 1
    echo quit >&6
    until_true 10 gone "$ear" || return 1
    rm "$work/ear-commands"
    aubioonset -i "$work/ear.wav" -B 512 -H 128 >"$work/onsets.txt" 2>/dev/null && aubiopitch -i "$work/ear.wav" -p yin -u midi -B 4096 -H 512 -s -50 >"$work/pitches.txt" 2>/dev/null
}
test_ear() { XDG_CONFIG_HOME="$work/ports" timeout 60 "$warmup" ports --test --port ear >/dev/null; }
scale_heard() { with_an_ear test_ear && ask scale "$work/onsets.txt" "$work/pitches.txt"; }

unison="$work/unison"
unison_plan="$unison/plans/2027-02-09.yaml"
sings() { # until the rungs wanted have been sung
    start_console "$work/unison-run" ear "$unison_plan" || return 1
    start_singing 0
    until_true 60 grep -qs "\"rung-ended\".*\"rung\":$((rungs_wanted - 1))," "$unison"/sessions/*.jsonl
    close_terminal
}
rungs_heard() { with_an_ear sings && ask rungs "$unison_plan" "$work/unison.json" "$rungs_wanted" "$work/onsets.txt" "$work/pitches.txt"; }
if command -v aubioonset >/dev/null && command -v aubiopitch >/dev/null; then
    check "aubio hears the pitches and onsets of a live scale" scale_heard
    "$warmup" new "$unison" --voices children >/dev/null
    printf 'format: 1\ndate: 2027-02-09\nminutes: 10\nadvance: rolling\npiano: {style: melody, between: tonic}\nsteps:\n  - exercise: five-note-scale\n    tempo: 66\n' >"$unison_plan"
    "$warmup" keys "$unison_plan" --json >"$work/unison.json" || true
    check "aubio hears the pitches and onsets of the melody of $rungs_wanted live keys" rungs_heard
else
    echo "skipped: aubio is not installed (Debian: aubio-tools)"
fi

# --- runs that are cut off in the middle of a note ----------------------------------------------------------------------

has_mark() { grep -qs '"raw":"b f"' "$work/cut-$1"/config/warmup-console/demo/plans-demo/sessions/*.jsonl; }
cut_off() { # SIGNAL WORDS
    start_console "$work/cut-$1" || { echo "not ok - the screen appears before $2"; failures=$((failures + 1)); return 0; }
    start_singing
    if ! until_true 60 sounds_now; then
        check "a note sounds before $2" false
    else
        keys b Space f Enter
        local confirmed=no
        until_true 5 shows_saved && confirmed=yes
        until_true 20 sounds_now || true
        local at="$EPOCHREALTIME"
        kill -s "$1" "$console"
        sleep 2
        check "$2 leaves no note sounding" ask hanging "$events"
        check "note-offs and the silence follow $2" ask silenced "$events" "$at"
        check "$2 ends the console" until_true 5 gone "$console"
        [ "$confirmed" = no ] || check "$2 loses no mark that the screen called saved" has_mark "$1"
        [ -z "$player" ] || check "$2 ends the player too" until_true 5 gone "$player"
    fi
    close_terminal
}
cut_off KILL "kill -9"
cut_off HUP "closing the terminal"

[ "$failures" = 0 ]
