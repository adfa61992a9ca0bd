#!/usr/bin/env bash
# Runs every test of the project. On Debian it first installs what the tests need, where it may.
# Names what was skipped and why, and ends with the line "N passed, N failed".
# With CI=true restoring is locked to the lock files and a skipped test counts as a failed one, unless what it lacks
# is the open data sets, which are no part of the project and cannot be installed.
set -euo pipefail
cd "$(dirname "${BASH_SOURCE[0]}")"
export DOTNET_NOLOGO=1 DOTNET_CLI_TELEMETRY_OPTOUT=1 MSBUILDDISABLENODEREUSE=1
results=artifacts/test-results
passed=0 failed=0 skipped=0 without_data=0

say() { printf '\n== %s\n' "$1"; }

finish() {
  local lacking=$((skipped - without_data))
  if [ "${CI:-}" = true ] && [ "$lacking" -gt 0 ]; then
    printf '%d skipped, and here a skipped test counts as failed.\n' "$lacking"
    failed=$((failed + lacking)) skipped=$without_data
  fi
  local line="$passed passed, $failed failed"
  [ "$skipped" -eq 0 ] || line="$line, $skipped skipped"
  printf '%s\n' "$line"
  [ "$failed" -eq 0 ] && [ "$passed" -gt 0 ] && exit 0
  exit 1
}

give_up() {
  printf '%s\n' "$1"
  failed=$((failed + 1))
  finish
}

# What the tests can use beside the SDK: Debian's package for it, and what is skipped without it.
missing_packages() {
  compgen -G '/usr/lib/postgresql/*/bin/initdb' > /dev/null || echo postgresql
  [ -n "${EVENGRIST_CHROMIUM:-}" ] || command -v chromium-headless-shell > /dev/null || echo chromium-headless-shell
  compgen -G '/usr/share/fonts/truetype/dejavu/DejaVuSans.ttf' > /dev/null || echo fonts-dejavu-core
  command -v zbarimg > /dev/null || echo zbar-tools
  command -v dmtxread > /dev/null || echo dmtx-utils
  command -v ZXingReader > /dev/null || echo zxing-cpp-tools
  command -v pdftoppm > /dev/null || echo poppler-utils
}

without() {
  case $1 in
    postgresql) echo 'the tests on PostgreSQL' ;;
    chromium-headless-shell)
      command -v chromium chromium-browser google-chrome > /dev/null && echo 'nothing, but the tests in a browser take longer' ||
        echo 'the tests in a browser, and the picture for README' ;;
    fonts-dejavu-core) echo 'nothing, but text in pictures may look poor' ;;
    zbar-tools | dmtx-utils | zxing-cpp-tools | poppler-utils) echo 'reading printed symbols back' ;;
  esac
}

install_missing() {
  local packages package as_root=()
  mapfile -t packages < <(missing_packages)
  [ ${#packages[@]} -gt 0 ] || return 0
  [ "$(id -u)" -eq 0 ] || as_root=(sudo -n)
  if [ -e /etc/debian_version ] && { [ ${#as_root[@]} -eq 0 ] || sudo -n true 2> /dev/null; }; then
    say "Installing ${packages[*]}"
    "${as_root[@]}" env DEBIAN_FRONTEND=noninteractive apt-get update -q || true
    for package in "${packages[@]}"; do
      "${as_root[@]}" env DEBIAN_FRONTEND=noninteractive apt-get install -q -y --no-install-recommends "$package" || echo "$package could not be installed."
    done
  fi
  for package in $(missing_packages); do
    echo "Without $package this is skipped: $(without "$package")."
  done
}

# From a results file: "total executed passed".
counters() {
  awk -F'"' '/<Counters / { print $2, $4, $6 }' "$1"
}

# From results files: each reason for skipping, then the names of the tests under it.
skips() {
  awk '
    function plain(s) {
      gsub(/&lt;/, "<", s); gsub(/&gt;/, ">", s); gsub(/&quot;/, "\"", s); gsub(/&amp;/, "\\&", s); return s
    }
    /<UnitTestResult / {
      name = ""
      if (/outcome="NotExecuted"/) { match($0, /testName="[^"]*"/); name = substr($0, RSTART + 10, RLENGTH - 11) }
    }
    name != "" && /<Message>/ {
      reason = $0; sub(/.*<Message>/, "", reason); sub(/<\/Message>.*/, "", reason)
      print plain(reason) "\t" plain(name); name = ""
    }' "$@" | sort | awk -F'\t' '$1 != last { print "  " $1; last = $1 } { print "      " $2 }'
}

run_tests() {
  local project=$1 name file status=0 total=0 executed=0 good=0 count
  name=$(basename "$project" .csproj)
  file=$results/$name.trx
  say "$name"
  dotnet test "$project" -c Release --no-build --nologo --results-directory "$results" --logger "trx;LogFileName=$name.trx" || status=$?
  if [ -e "$file" ]; then
    count=$(counters "$file")
    read -r total executed good <<< "${count:-0 0 0}"
  fi
  passed=$((passed + good)) failed=$((failed + executed - good)) skipped=$((skipped + total - executed))
  if [ "$total" -eq 0 ]; then
    echo "No test of $name gave a result (dotnet test ended with $status): counted as a failure."
    failed=$((failed + 1))
  elif [ "$status" -ne 0 ] && [ "$executed" -eq "$good" ]; then
    echo "dotnet test ended with $status although no test of $name failed: counted as a failure."
    failed=$((failed + 1))
  fi
}

command -v dotnet > /dev/null || give_up 'The .NET 10 SDK (the program dotnet) is not installed: no test ran.'
install_missing
say 'Restoring'
dotnet restore Evengrist.slnx -v quiet || give_up 'Restoring failed: no test ran.'
say 'Building'
dotnet build Evengrist.slnx -c Release --no-restore --nologo -v quiet || give_up 'The build failed: no test ran.'
mkdir -p "$results"
rm -f "$results"/*.trx
for project in tests/*/*.Tests.csproj; do
  run_tests "$project"
done
if [ "$skipped" -gt 0 ]; then
  say "Skipped: $skipped, by reason"
  skips "$results"/*.trx
  without_data=$(grep -h '<Message>The open data sets do not lie beside the project' "$results"/*.trx | wc -l || true)
fi
say 'All together'
finish
