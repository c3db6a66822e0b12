namespace BakeInsights.Cli;

/// <summary>What <c>compare --json</c> prints.</summary>
internal sealed record CompareJson(
    JournalJson Journal,
    string Column,
    WayJson First,
    WayJson Second,
    double MarginPct,
    IReadOnlyList<ResultComparedJson> Results,
    IReadOnlyList<NotComparedJson> NotCompared,
    IReadOnlyList<SettingBesideJson> Settings,
    IReadOnlyList<string> CannotTellApart)
{
    public static CompareJson From(JournalReading reading, TwoWays ways) => new(
        JournalJson.From(reading),
        ways.Wish.Column,
        new(ways.First, ways.FirstCount),
        new(ways.Second, ways.SecondCount),
        ways.Wish.MarginPct,
        [.. ways.Compared.Select(ResultComparedJson.From)],
        [.. ways.NotCompared.Select(not => new NotComparedJson(not.Result.Name, not.Reason))],
        [.. ways.SettingsBeside.Select(beside => new SettingBesideJson(beside.Setting.Name, RangeJson.From(beside.First), RangeJson.From(beside.Second), beside.AreApart))],
        ways.CannotTellApart);
}

/// <summary>A way.</summary>
internal sealed record WayJson(string Value, int Bakes);

/// <summary>A result of both.</summary>
internal sealed record ResultComparedJson(
    string Result,
    int FirstBakes,
    int SecondBakes,
    EstimateJson? FirstMean,
    EstimateJson? SecondMean,
    EstimateJson? Difference,
    EstimateJson? PercentInterval90,
    Likeness Likeness,
    double P,
    double PAllCounted,
    IReadOnlyList<string> Blocks,
    IReadOnlyList<string> HeldStill)
{
    public static ResultComparedJson From(ResultCompared one) => new(
        one.Result.Name, one.FirstCount, one.SecondCount, EstimateJson.From(one.FirstMean), EstimateJson.From(one.SecondMean),
        EstimateJson.From(one.Difference), EstimateJson.From(one.PercentInterval90), one.Likeness, one.Finding.PValue, one.Finding.FamilyPValue,
        one.Blocks, one.HeldStill);
}

/// <summary>A result that can't be compared.</summary>
internal sealed record NotComparedJson(string Result, string Reason);

/// <summary>A setting of both.</summary>
internal sealed record SettingBesideJson(string Setting, RangeJson First, RangeJson Second, bool Apart);

/// <summary>Least, middle and most of some values.</summary>
internal sealed record RangeJson(int Count, double Least, double Middle, double Most)
{
    public static RangeJson From(MeasureSummary summary) => new(summary.Count, summary.Least, summary.Middle, summary.Most);
}
