#!/usr/bin/env bash
# The one test command: runs every test of the toolkit, on a machine that need have no more than the .NET SDK.
# Ends with one line, "N passed, N failed", and a status other than 0 if anything failed or nothing ran.
set -uo pipefail
cd "$(dirname "$0")/.."
configuration=Release
results=TestResults
export DOTNET_CLI_TELEMETRY_OPTOUT=1 DOTNET_NOLOGO=1

# program, and the Debian package that brings it
needed=(
  /usr/bin/chromium:chromium
  /usr/bin/jupyter:jupyter-core
  /usr/bin/jupyter-nbconvert:jupyter-nbconvert
  /usr/bin/pdftotext:poppler-utils
)

# The end, in the form that is promised, for what prevents the tests as well.
stop() {
  echo "$1" >&2
  echo "0 passed, 1 failed"
  exit 1
}

install_what_is_missing() {
  local missing=() entry
  for entry in "${needed[@]}"; do
    [ -x "${entry%%:*}" ] || missing+=("${entry##*:}")
  done
  [ ${#missing[@]} -eq 0 ] && return
  if [ "$(id -u)" -ne 0 ] || ! command -v apt-get > /dev/null; then
    stop "These tests need a browser, Jupyter and a reader of PDF. As root on Debian: apt-get install ${missing[*]}"
  fi
  export DEBIAN_FRONTEND=noninteractive
  apt-get update -q && apt-get install -q -y --no-install-recommends "${missing[@]}" \
    || stop "apt-get could not install ${missing[*]}: see what it said above."
}

# Sums one counter over all result files.
sum() {
  grep -ho "<Counters [^>]*" "$results"/*.trx 2> /dev/null | grep -o " $1=\"[0-9]*\"" | tr -dc '0-9\n' | awk '{ n += $1 } END { print n + 0 }'
}

command -v dotnet > /dev/null || stop "There is no dotnet: install the .NET SDK that global.json names."
install_what_is_missing
rm -rf "$results"
dotnet build BakeInsights.sln --configuration $configuration || stop "The build failed: see above."

crashed=0
# Runs one project's tests, in the language of this machine or in the one named second.
run_tests() {
  local project=$1 language=${2:-} name before status
  name=$(basename "$project" .csproj)${language:+.$language}
  echo "== $name"
  before=$(sum failed)
  LC_ALL=${language:-${LC_ALL:-}} dotnet test "$project" --no-build --configuration $configuration --verbosity quiet \
    --results-directory "$results" --logger "trx;LogFileName=$name.trx" --logger "console;verbosity=minimal"
  status=$?
  # A test process that dies leaves no failed test behind, but it is a failure.
  if [ $status -ne 0 ] && [ "$(sum failed)" -eq "$before" ]; then
    echo "$name ended with status $status and without a failed test." >&2
    crashed=$((crashed + 1))
  fi
}

for project in tests/*/*.Tests.csproj; do
  run_tests "$project"
done

# Turkish has another capital of i and a decimal comma: what hangs on the machine's language shows there.
export DOTNET_CLI_UI_LANGUAGE=en
for name in BakeInsights.Tests BakeInsights.Reports.Tests BakeInsights.Cli.Tests BakeInsights.Inference.Tests; do
  run_tests "tests/$name/$name.csproj" tr_TR.UTF-8
done

passed=$(sum passed)
failed=$(($(sum failed) + crashed))
skipped=$(sum notExecuted)
line="$passed passed, $failed failed"
[ "$skipped" -gt 0 ] && line="$line, $skipped skipped"
echo "$line"
[ "$failed" -eq 0 ] && [ "$passed" -gt 0 ]
