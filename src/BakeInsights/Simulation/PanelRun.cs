namespace BakeInsights;

/// <summary>The judges of the virtual kitchen at work.</summary>
internal static class PanelRun
{
    private const double Low = 1;
    private const double High = 9;
    private const double Middle = (Low + High) / 2;
    private const double UsualLogRise = 4.6; // ln(100 min)

    /// <summary>What is judged, on scales of one to nine.</summary>
    public static IReadOnlyList<ScoredAttribute> Attributes { get; } =
    [
        Attribute("crumb", AttributeKind.MoreIsBetter, 2),
        Attribute("openness", AttributeKind.MiddleIsBest, 3),
        Attribute("flavour", AttributeKind.MoreIsBetter, 4),
    ];

    /// <summary>The scores of the first loaf of each bake.</summary>
    public static IReadOnlyList<Score> Scores(VirtualKitchen kitchen, int seed, IReadOnlyList<MadeLoaf> loaves)
    {
        var panel = kitchen.Panel;
        var judges = Judges(panel, seed);
        var draws = new Draws(seed, Draws.Purpose.Scores);
        List<Score> scores = [];
        foreach (var loaf in loaves.Where(loaf => loaf.Written.Name == KitchenRun.LoafName(0)))
        {
            ReadOnlySpan<double> seen =
            [
                panel.CrumbPerVolume * (loaf.SpecificVolume - kitchen.Truth.VolumeAtCentre),
                (panel.OpennessPerHydration * (loaf.HydrationPct - ModelAnswer.CentreHydrationPct)) + (panel.OpennessPerLogProof * loaf.LogProof),
                panel.FlavourPerLogRise * (loaf.LogRise - UsualLogRise),
            ];
            for (var judge = 0; judge < judges.Length; judge++)
            {
                for (var attribute = 0; attribute < seen.Length; attribute++)
                {
                    var (shift, stretch) = judges[judge];
                    var score = Math.Round(Middle + shift + (stretch * seen[attribute]) + (panel.ErrorSd * draws.Normal()));
                    scores.Add(new Score(
                        loaf.Written.BakeId,
                        loaf.Written.Name,
                        panel.Judges[judge],
                        Attributes[attribute].Name,
                        Math.Clamp(score, Low, High),
                        new SourceLine("scores.csv", scores.Count + 2),
                        KitchenRun.NoColumns));
                }
            }
        }

        return scores;
    }

    private static (double Shift, double Stretch)[] Judges(TastingPanel panel, int seed)
    {
        var draws = new Draws(seed, Draws.Purpose.Judges);
        return [.. panel.Judges.Select(_ => (panel.ShiftSd * draws.Normal(), Math.Exp(panel.StretchSd * draws.Normal())))];
    }

    private static ScoredAttribute Attribute(string name, AttributeKind kind, long line) =>
        new(name, Low, High, kind, new SourceLine("attributes.csv", line), KitchenRun.NoColumns);
}
