namespace BakeInsights;

/// <summary>The question what moved the time of the proof, apart from that of the first rise.</summary>
internal static class ProofTime
{
    private const string PerPoint = "ln(min) per percent of flour";

    public static Question Question { get; } = new(
        Measures.ProofTime,
        "proof time",
        bake => Looks.Middle(bake[BakeColumns.ProofNotReady], bake[BakeColumns.Proof]),
        Math.Log,
        "ln(min)",
        [
            new("no proof time", bake => bake[BakeColumns.Proof] is not > 0),
            new("ready at the first look, so that only the latest time is known", bake => bake[BakeColumns.ProofNotReady] == 0),
            new("partly in the cold", bake => bake[BakeColumns.Cold] > 0),
        ],
        [
            CandidateTerm.Line(RiseTime.DoughTemperatureTerm, "ln(min) per °C", Cause.DoughTemperature),
            CandidateTerm.Log(RiseTime.LogYeastTerm, "ln(min) per ln(percent)", Cause.Yeast),
            CandidateTerm.Line(RiseTime.HydrationTerm, PerPoint, Cause.Hydration),
        ]);
}
