#!/usr/bin/env bash
# Times this command, R and Python on the same journal, whole processes in turn, and prints a table in Markdown.
# Usage: bash tests/BakeInsights.Benchmarks/journal-speed.sh [bakes] [rounds]
# Needs, from Debian: time r-cran-data.table python3-pandas python3-statsmodels (installed here when run as root).
set -euo pipefail
cd "$(dirname "$0")/../.."
bakes=${1:-1000000}
rounds=${2:-5}
here=tests/BakeInsights.Benchmarks
if ! { [ -x /usr/bin/time ] && command -v Rscript > /dev/null && /usr/bin/python3 -c 'import statsmodels' 2> /dev/null; }; then
  apt-get update -q > /dev/null
  apt-get install -q -y --no-install-recommends time r-base-core r-cran-data.table python3-pandas python3-statsmodels > /dev/null
fi
dotnet build -c Release -v quiet src/BakeInsights.Cli > /dev/null
dotnet build -c Release -v quiet "$here" > /dev/null
folder=$(mktemp -d)
trap 'rm -rf "$folder"' EXIT
journal=$folder/bakes.csv
ours=src/BakeInsights.Cli/bin/Release/net10.0/BakeInsights.Cli.dll
bench=$here/bin/Release/net10.0/BakeInsights.Benchmarks.dll
dotnet "$bench" journal "$journal" "$bakes"

names=("bare parse" "check" "fit" "R, lm" "R, leanest" "Python, statsmodels")
commands=(
  "dotnet $bench bare-parse $journal"
  "dotnet $ours check $journal --json"
  "dotnet $ours fit $journal --json"
  "Rscript $here/journal_fit.R $journal"
  "Rscript $here/journal_fit_lean.R $journal"
  "/usr/bin/python3 $here/journal_fit.py $journal"
)
for _ in $(seq "$rounds"); do
  for i in "${!commands[@]}"; do
    /usr/bin/time -f "%e %M" -a -o "$folder/times-$i" ${commands[$i]} > /dev/null 2> "$folder/errors" || { cat "$folder/errors" >&2; exit 1; }
  done
done

echo "$bakes bakes, $(du -m "$journal" | cut -f1) MB, $rounds rounds, $(nproc) cores; the median of whole processes"
echo
echo "| program | seconds | peak MiB |"
echo "|---|---|---|"
for i in "${!names[@]}"; do
  middle() { cut -d' ' -f"$1" "$folder/times-$i" | sort -n | awk '{ v[NR] = $1 } END { print v[int((NR + 1) / 2)] }'; }
  printf '| %s | %.2f | %d |\n' "${names[$i]}" "$(middle 1)" "$(($(middle 2) / 1024))"
done
