using BakeInsights.Inference;

namespace BakeInsights;

/// <summary>Asks what changed from the month before: the difference of the means, bakes taken as they were logged.</summary>
internal static class MonthBefore
{
    /// <summary>The first part of the names of these questions.</summary>
    public const string Prefix = "month.";

    /// <summary>In each month; with fewer a mean hardly has an interval. Our own choice.</summary>
    public const int LeastBakes = 3;

    private const string Odd = "far from its month's middle";

    private const string Caveat = "Taken as they were logged: doughs that differed otherwise are not made alike.";

    /// <summary>Asks it of all measures.</summary>
    public static void Ask(Asked asked, TwoMonths months)
    {
        Ask(asked, months, Comparisons[0]);
        AdjustedRiseTime.Ask(asked, months);
        foreach (var about in Comparisons.Skip(1))
        {
            Ask(asked, months, about);
        }
    }

    /// <summary>What is compared as it was logged, in the order asked.</summary>
    public static IReadOnlyList<Comparison> Comparisons { get; } =
    [
        Plain("dough_temperature", Measures.DoughTemperature),
        new(
            "rise_time_as_logged", Measures.RiseTime, "Did the rise time, as logged, change from the month before?",
            RiseTime.Question.Exclusions, RiseTime.Question.ResponseOf, RiseTime.Question.Scale),
        Plain("specific_volume", Measures.SpecificVolume),
        Plain("hydration", Measures.Hydration),
        Plain("bake_loss", Measures.BakeLoss),
    ];

    /// <summary>The question that stays open because there is nothing to compare with, or too little.</summary>
    public static OpenQuestion OpenOf(string name, string question, TwoMonths months, string? tooFew) => new(
        Prefix + name,
        question,
        months.Before is null ? $"The journal has no bakes before {months.Month}." : tooFew!,
        months.Before is null ? "Go on logging: the next month will have one to be compared with." : "Log it in every bake.");

    private static Comparison Plain(string name, Measure measure) => new(
        name, measure, $"Did the {measure.Words} change from the month before?",
        [Exclusion.Without(measure)],
        bake => measure.Of(bake)!.Value, ResultScale.Plain);

    private static void Ask(Asked asked, TwoMonths months, Comparison about)
    {
        List<LeftOutBakes> leftOut = [];
        IReadOnlyList<Bake> all = [.. months.BakesBefore, .. months.Bakes];
        foreach (var exclusion in about.Exclusions)
        {
            all = exclusion.LeaveOut(all, leftOut);
        }

        Bake[] before = [.. all.Intersect(months.BakesBefore)];
        Bake[] now = [.. all.Intersect(months.Bakes)];
        if (Math.Min(before.Length, now.Length) < LeastBakes)
        {
            asked.Add(OpenOf(about.Name, about.Question, months, FormattableString.Invariant(
                $"{before.Length} bakes of {months.Before} and {now.Length} of {months.Month} can speak to it, and each month takes {LeastBakes}.")));
            return;
        }

        if (!Difference(about, before, now).TryGet(out var difference, out var problem) || difference.PValue is not { } p)
        {
            asked.Add(OpenOf(about.Name, about.Question, months, problem?.Message ?? "There is no spread to compare with."));
            return;
        }

        IReadOnlyList<OddBake> odd = [.. new[] { before, now }.SelectMany(bakes => OddValues.Of(bakes, [.. bakes.Select(about.ValueOf)], Odd))];
        var (effect, percent) = about.InUnits(difference, before);
        asked.Add(new Finding
        {
            Name = Prefix + about.Name,
            Question = about.Question,
            Result = about.Measure,
            Contrast = months.Contrast,
            Effect = effect,
            EffectPct = percent,
            PValue = p,
            Bakes = all,
            LeftOut = leftOut,
            OddBakes = odd,
            WithoutOddBakes = Without(about, before, now, odd),
            Caveats = [Caveat, .. CupsCaveat(about.Measure, all)],
            NextStep = $"Look what else was different in {months.Month}: flour, room, hands or clock.",
        });
    }

    private static Estimate? Without(Comparison about, Bake[] before, Bake[] now, IReadOnlyList<OddBake> odd)
    {
        var odds = odd.Select(one => one.Bake).ToList();
        Bake[] first = [.. before.Except(odds)];
        Bake[] second = [.. now.Except(odds)];
        return odd.Count > 0 && Math.Min(first.Length, second.Length) >= LeastBakes
            && Difference(about, first, second).TryGet(out var difference, out _)
            ? about.InUnits(difference, first).Effect
            : null;
    }

    private static Attempt<Term> Difference(Comparison about, Bake[] before, Bake[] now) =>
        MeanDifference.Of([.. before.Select(about.ValueOf)], [.. now.Select(about.ValueOf)]);

    private static IEnumerable<string> CupsCaveat(Measure measure, IReadOnlyList<Bake> bakes)
    {
        var cups = bakes.Count(bake => measure.SdOf(bake) > 0);
        if (cups > 0)
        {
            yield return $"{cups} of {MonthWords.Bakes(bakes.Count)} had their flour by the cup, which may be off all one way.";
        }
    }
}
