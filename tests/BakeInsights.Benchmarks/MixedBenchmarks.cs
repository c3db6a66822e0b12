using BakeInsights.Inference;
using BenchmarkDotNet.Attributes;

namespace BakeInsights.Benchmarks;

/// <summary>Two thousand groups of twelve rows; lme4's side is resampling-and-mixed.R.</summary>
public class MixedBenchmarks
{
    private readonly Design _design;
    private readonly double[] _response;
    private readonly string[] _groups;

    public MixedBenchmarks() => (_design, _response, _groups) = BenchmarkData.Groups();

    [Benchmark]
    public MixedFit Intercepts() => MixedModel.Fit(_design, _response, "group", _groups).Value;

    [Benchmark]
    public MixedFit InterceptsAndSlopes() => MixedModel.Fit(_design, _response, "group", _groups, "x").Value;
}
