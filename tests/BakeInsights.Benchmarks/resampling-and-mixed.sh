#!/bin/sh
# Times R and BakeInsights by turns on the same data: R, ours, R. R with lme4 has to be there (Debian: r-cran-lme4).
set -e
cd "$(dirname "$0")"
Rscript resampling-and-mixed.R
dotnet run -c Release --project BakeInsights.Benchmarks.csproj -- --filter '*BootstrapBenchmarks*' '*MixedBenchmarks*' --job short
Rscript resampling-and-mixed.R
