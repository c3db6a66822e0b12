namespace BakeInsights;

/// <summary>The question what moved the time of the proof, apart from that of the first rise.</summary>
internal static class ProofTime
{
    private const string PerPoint = "ln(min) per percent of flour";

    public static Question Question { get; } = new(
        Measures.ProofTime,
        "proof time",
        bake => Looks.Middle(bake[BakeColumns.ProofNotReady], bake[BakeColumns.Proof]),
        ResultScale.Logarithm,
        "ln(min)",
        [
            new("no proof time", bake => bake[BakeColumns.Proof] is not > 0),
            Looks.ReadyAtFirst(BakeColumns.ProofNotReady),
            RiseTime.Cold,
        ],
        [
            CandidateTerm.Line(RiseTime.DoughTemperatureTerm, "ln(min) per °C", Cause.DoughTemperature),
            CandidateTerm.Log(RiseTime.LogYeastTerm, "ln(min) per ln(percent)", Cause.Yeast),
            CandidateTerm.Line(RiseTime.HydrationTerm, PerPoint, Cause.Hydration),
        ]);
}
