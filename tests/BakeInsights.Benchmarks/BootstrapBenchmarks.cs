using BakeInsights.Inference;
using BenchmarkDotNet.Attributes;

namespace BakeInsights.Benchmarks;

/// <summary>Ten thousand refits of sixty rows and four coefficients; R's side is resampling-and-mixed.R.</summary>
public class BootstrapBenchmarks
{
    private readonly Design _design;
    private readonly double[] _response;

    public BootstrapBenchmarks() => (_design, _response) = BenchmarkData.SixtyRows();

    [Params(1, -1)]
    public int Cores { get; set; }

    [Benchmark]
    public BootstrapRefits TenThousandRefits() =>
        Bootstrap.LeastSquares(_design, _response, new Resamples(10_000, 1) { Cores = Cores }).Value;
}
