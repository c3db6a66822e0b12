#!/usr/bin/env bash
# Times `run` on a notebook of two fits and three pictures against Jupyter's own way on a Python notebook of the same,
# whole processes in turn, each to a page, and the month's notebook beside them; prints a table in Markdown.
# Usage: bash tests/BakeInsights.Benchmarks/notebook-speed.sh [rounds]
# Needs, from Debian: jupyter-nbconvert, ipykernel, pandas, statsmodels, plotly for Python (installed here when run as root).
set -euo pipefail
cd "$(dirname "$0")/../.."
rounds=${1:-7}
here=tests/BakeInsights.Benchmarks/notebooks
needed=(jupyter-nbconvert python3-ipykernel python3-pandas python3-statsmodels python3-plotly)
if ! dpkg -s "${needed[@]}" > /dev/null 2>&1; then
  apt-get update -q > /dev/null
  apt-get install -q -y --no-install-recommends "${needed[@]}" > /dev/null
fi
dotnet build -c Release -v quiet src/BakeInsights.Cli > /dev/null
folder=$(mktemp -d)
trap 'rm -rf "$folder"' EXIT
ours="dotnet src/BakeInsights.Cli/bin/Release/net10.0/BakeInsights.Cli.dll run"

# Debian's Python: another one may be the first on the path, with a kernel of its own and without these packages.
mkdir -p "$folder/kernels/python3"
printf '{"argv":["/usr/bin/python3","-m","ipykernel_launcher","-f","{connection_file}"],"display_name":"Python 3","language":"python"}' \
  > "$folder/kernels/python3/kernel.json"
export JUPYTER_PATH=$folder

names=("\`run\`, two fits and three pictures" "nbconvert, the same in Python" "\`run\`, the month's notebook")
commands=(
  "$ours $here/two-fits.ipynb --to $folder/ours.html"
  "/usr/bin/jupyter-nbconvert --to html --execute $here/two-fits-python.ipynb --output-dir $folder --output theirs.html"
  "$ours notebooks/review-a-month.ipynb --to $folder/month.html"
)
for round in $(seq 0 "$rounds"); do
  for i in "${!commands[@]}"; do
    start=$EPOCHREALTIME
    ${commands[$i]} > "$folder/said" 2>&1 || { cat "$folder/said" >&2; exit 1; }
    end=$EPOCHREALTIME
    # The first round only warms the disk's cache.
    [ "$round" -eq 0 ] || echo "$start $end" | awk '{ printf "%.2f\n", $2 - $1 }' >> "$folder/times-$i"
  done
done

echo "$rounds rounds, $(nproc) cores, load $(cut -d' ' -f1-3 /proc/loadavg)"
echo
echo "| work | seconds, median | least to most |"
echo "|---|---|---|"
for i in "${!names[@]}"; do
  sort -n "$folder/times-$i" | awk -v name="${names[$i]}" \
    '{ v[NR] = $1 } END { printf "| %s | %.2f | %.2f to %.2f |\n", name, v[int((NR + 1) / 2)], v[1], v[NR] }'
done
paste "$folder/times-0" "$folder/times-1" | awk '{ print $1 / $2 }' | sort -n \
  | awk '{ v[NR] = $1 } END { printf "\nRatio of the first to the second, round by round: %.2f in the middle, %.2f to %.2f\n", v[int((NR + 1) / 2)], v[1], v[NR] }'
