namespace BakeInsights.Cli;

/// <summary>What <c>next --json</c> prints.</summary>
internal sealed record NextJson(
    JournalJson Journal,
    NextQuestionJson Question,
    int EarlierBakes,
    IReadOnlyList<string> Terms,
    NextAllowedJson Allowed,
    IReadOnlyList<NextBakeJson> Bakes,
    NarrowingJson? Narrowing,
    double? Until,
    int? BakesUntil,
    IReadOnlyList<string> StillTogether,
    IReadOnlyList<string> Remarks)
{
    public static NextJson From(JournalReading reading, NextBakes plan) => new(
        JournalJson.From(reading),
        new(plan.Question.Name, plan.Question.Words, plan.Question.Unit, plan.QuestionWasChosen),
        plan.Earlier,
        plan.Terms,
        new(LimitsJson.From(plan.DoughTemperatureC), LimitsJson.From(plan.HydrationPct), LimitsJson.From(plan.YeastPct)),
        [.. plan.Bakes.Select(bake => new NextBakeJson(bake.Order, bake.DoughTemperatureC, bake.HydrationPct, bake.YeastPct, bake.WaterC))],
        plan.Narrowing is { } narrowing
            ? new(narrowing.Now.Low, narrowing.Now.High, narrowing.Now.Half, narrowing.Now.IsOpen, narrowing.After, narrowing.AfterAtWorst, narrowing.StillOpenShare)
            : null,
        plan.Until,
        plan.BakesUntil,
        plan.StillTogether,
        [.. new[] { plan.WhyNoForecast, plan.WhyNoWater }.Where(remark => remark.Length > 0)]);
}

/// <summary>The question.</summary>
internal sealed record NextQuestionJson(string Name, string Words, string Unit, bool ChosenByJournal);

/// <summary>Between which settings the bakes may lie.</summary>
internal sealed record NextAllowedJson(LimitsJson DoughTempC, LimitsJson HydrationPct, LimitsJson YeastPct);

/// <summary>Two ends.</summary>
internal sealed record LimitsJson(double Low, double High)
{
    public static LimitsJson From(SettingLimits limits) => new(limits.Low, limits.High);
}

/// <summary>One bake.</summary>
internal sealed record NextBakeJson(int Order, double DoughTempC, double HydrationPct, double YeastPct, double? WaterTempC);

/// <summary>The interval now, and half of it after.</summary>
internal sealed record NarrowingJson(
    double Low, double High, double Half, bool IsOpen, double HalfAfter, double HalfAfterNineOfTen, double StillOpenShare);
