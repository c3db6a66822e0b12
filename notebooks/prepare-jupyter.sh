#!/usr/bin/env bash
# Makes Jupyter on this machine ready for the notebooks of this folder: packs the toolkit as it is now into
# notebooks/.packages and installs the pinned C# kernel. Run it again after a change to the code.
# Usage: bash notebooks/prepare-jupyter.sh [Debug|Release]
# The variable JUPYTER names the jupyter command to make ready, if it is not the first on the path.
set -euo pipefail
cd "$(dirname "$0")/.."
configuration=${1:-Release}
jupyter=${JUPYTER:-jupyter}
packages=notebooks/.packages
kernel=.net-csharp
export DOTNET_CLI_TELEMETRY_OPTOUT=1 DOTNET_INTERACTIVE_CLI_TELEMETRY_OPTOUT=1 DOTNET_NOLOGO=1

if ! data=$("$jupyter" --data-dir); then
  echo "There is no $jupyter: install Jupyter (on Debian: apt-get install jupyter-notebook), or name it in JUPYTER." >&2
  exit 1
fi

rm -rf "$packages"
mkdir -p "$packages"
# One project after the other: packing two that share references at the same time fights over their files.
for project in BakeInsights.Inference BakeInsights BakeInsights.Reports BakeInsights.Notebooks; do
  dotnet pack "src/$project/$project.csproj" --configuration "$configuration" --output "$packages" --verbosity quiet
done

# The version stays the same while the code changes, and NuGet keeps what it has once unpacked.
cache=$(dotnet nuget locals global-packages --list | sed 's/^global-packages: //')
for name in bakeinsights bakeinsights.inference bakeinsights.reports bakeinsights.notebooks; do
  rm -rf "${cache:?}/$name"
done

dotnet tool restore
# The tool installs into an existing folder only, and says nothing in its status when it did not.
mkdir -p "$data/kernels"
dotnet interactive jupyter install --path "$data/kernels"
if [ ! -f "$data/kernels/$kernel/kernel.json" ]; then
  echo "The kernel $kernel was not installed in $data/kernels: see what the tool said above." >&2
  exit 1
fi

# The first load restores what the packages stand on. Done here once, the notebooks need no network later.
version=$(basename "$packages"/BakeInsights.Notebooks.*.nupkg .nupkg | sed 's/^BakeInsights\.Notebooks\.//')
cell='{"cell_type":"code","id":"setup","execution_count":null,"metadata":{},"outputs":[],"source":"#r \"nuget: BakeInsights.Notebooks, '$version'\""}'
printf '{"cells":[%s],"metadata":{"kernelspec":{"name":"%s","display_name":"C#"}},"nbformat":4,"nbformat_minor":5}' "$cell" "$kernel" \
  | (cd notebooks && "$jupyter" nbconvert --stdin --stdout --to notebook --execute --log-level ERROR > /dev/null)
echo "Ready: open the notebooks of this folder with $jupyter notebook notebooks"
