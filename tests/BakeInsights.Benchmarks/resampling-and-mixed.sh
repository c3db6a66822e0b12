#!/bin/sh
# Times R and BakeInsights by turns on the same data: R, ours, R. Run it in this folder.
set -e
Rscript resampling-and-mixed.R
dotnet run -c Release --project BakeInsights.Benchmarks.csproj -- --filter '*BootstrapBenchmarks*' '*MixedBenchmarks*' --job short
Rscript resampling-and-mixed.R
