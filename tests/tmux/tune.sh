#!/usr/bin/env bash
# Drives the built program in tmux as a hand would, and holds what its screen says against `predict --json`.
# Run: tests/tmux/tune.sh [PROGRAM]      (by default the one that `dotnet build -c Release` makes)
set -euo pipefail
top=$(cd "$(dirname "$0")/../.." && pwd)
program=$(realpath "${1:-$top/src/GlowMix.Console/bin/Release/net10.0/glowmix}")
command -v tmux >/dev/null || { echo "tmux is not here: nothing was tried" >&2; exit 1; }
folder=$(mktemp -d)
server=glowmix-$$
mux() { tmux -L "$server" -f /dev/null "$@"; }
trap 'mux kill-server 2>/dev/null || true; rm -rf "$folder"' EXIT
cp "$top/recipes/stair-edge.yaml" "$folder/"

fail() { echo "FAILED: $1"; screen; exit 1; }
screen() { mux capture-pane -p; }
keys() { mux send-keys "$@"; }

# Waits until the screen holds a text, a minute at most: nothing here is timed.
await() {
  for _ in $(seq 600); do screen | grep -qF -- "$1" && return 0; sleep 0.1; done
  fail "the screen never said '$1'"
}

start() { # COLUMNS ROWS [VARIABLES]
  mux kill-server 2>/dev/null || true
  # The last server may still be on its way out.
  until mux new-session -d -x "$1" -y "$2" "cd '$folder' && ${3-} '$program' tune stair-edge.yaml; echo ended with \$?; sleep 1000" 2>/dev/null; do sleep 0.2; done
}

json() { # a number of the figures: json lit cct_k
  (cd "$folder" && "$program" predict --json stair-edge.yaml) | tr -d ' \n' | grep -o "\"$1\":{.*" | grep -o "\"$2\":-\?[0-9.eE+-]*" | head -1 | cut -d: -f2
}

echo "turn, type, save"
start 120 36
await "LIT  "
await "plan on"
keys Down
keys Right
await "was 20"
keys 2 5 Enter
await "Glow loading"
keys s
await "Saved stair-edge.yaml."
grep -q "loading_percent: 25 " "$folder/stair-edge.yaml" || fail "25 % is not in the file"
diff <(sed 's/loading_percent: 25 /loading_percent: 20 /' "$folder/stair-edge.yaml") "$top/recipes/stair-edge.yaml" || fail "more than one number changed"

echo "the screen says what predict says"
keys Tab
await "plan on"
cct=$(json lit cct_k | awk '{ printf "%d K (bare", 10 * int($1 / 10 + 0.5) }')
kept=$(json lit flux_kept_percent | awk '{ printf "%d %%", int($1 + 0.5) }')
pigment=$(json lit blue_absorbed_by_pigment_percent | awk '{ printf "blue to pigment %d %%", int($1 + 0.5) }')
for told in "$cct" "$kept" "$pigment"; do await "$told"; done

echo "every size, and back"
for size in "80 24" "100 30" "160 48" "240 70" "60 20" "120 36"; do
  mux resize-window -x ${size% *} -y ${size#* }
  if [ "$size" = "60 20" ]; then await "needs 80 columns"; else await "loading"; fi
done

echo "a signal leaves the terminal whole and the turns beside the file"
keys Right
await "not saved"
sleep 1.5
pid=$(pgrep -P "$(mux display-message -p '#{pane_pid}')" -f tune)
kill -TERM "$pid"
await "ended with 143"
[ -f "$folder/stair-edge.yaml.autosave" ] || fail "nothing was left beside the file"
grep -q "loading_percent: 25 " "$folder/stair-edge.yaml" || fail "the file itself was changed"
start 80 24
await "An earlier run ended"
keys t
await "26 %"
keys q
await "Not saved."
keys d
await "ended with 0"
[ ! -f "$folder/stair-edge.yaml.autosave" ] || fail "the turns dropped are still there"

echo "a mouse, in the sequences that terminals send (xterm, SGR 1006): the wheel turns what is under it, a click holds"
start 80 24
await "LIT  "
row() { screen | grep -n -m1 "$1" | cut -d: -f1; }
loading=$(row "^ *loading")
keys -l $'\e[<64;10;'"$loading"'M'
await "was 25"
await "▸ loading   26 %"
grain=$(row "^ *grain")
keys -l $'\e[<0;10;'"$grain"'M'
keys -l $'\e[<0;10;'"$grain"'m'
await "▸ grain"

echo "ended by force, the turns are offered at the next start"
await "not saved"
sleep 2.5
kill -KILL "$(pgrep -P "$(mux display-message -p '#{pane_pid}')" -f tune)"
start 80 24
await "An earlier run ended"
keys d

echo "a broken recipe comes to life when it is mended on disk"
await "As the file has it"
sed -i.good 's/loading_percent: .*/loading_percent: 2000/' "$folder/stair-edge.yaml"
await "allowed: 0 to 80"
mv "$folder/stair-edge.yaml.good" "$folder/stair-edge.yaml"
await "LIT  "
keys q
await "ended with 0"

echo "no colour at all under NO_COLOR, no letter but of ASCII under LANG=C"
start 120 36 "NO_COLOR=1 LANG=C"
await "plan on"
if screen | LC_ALL=C grep -q '[^ -~]'; then fail "letters beyond ASCII"; fi
if mux capture-pane -pe | grep -qE $'\e\\[([0-9;]*;)?(3[0-7]|4[0-7]|9[0-7]|10[0-7]|38|48)[;m]'; then fail "colours"; fi

echo "without a terminal"
(cd "$folder" && "$program" tune stair-edge.yaml </dev/null >/dev/null 2>&1) && fail "it ran" || [ $? -eq 2 ] || fail "not 2"
echo "all as it should be"
