using System.Globalization;

namespace BakeInsights.Reports;

/// <summary>How doughs rose, in words and tables.</summary>
public static class RiseCurvesView
{
    /// <summary>Every attempt in turn: the answer as a baker reads it, or why there is none.</summary>
    public static View Of(IReadOnlyList<RiseCurveAttempt> attempts)
    {
        ArgumentNullException.ThrowIfNull(attempts);
        return attempts.Count == 0
            ? new View([new ViewParagraph("The journal has no readings of a rise: rise.csv would hold them.")])
            : new View([.. attempts.SelectMany(attempt => Of(attempt).Blocks)]);
    }

    /// <summary>One attempt.</summary>
    public static View Of(RiseCurveAttempt attempt)
    {
        ArgumentNullException.ThrowIfNull(attempt);
        var heading = new ViewHeading(TitleOf(attempt));
        return attempt.Outcome.Match(
            answer => new View([heading, new ViewParagraph(Headline(answer)), Numbers(answer), .. Reservations(answer)]),
            problem => new View([heading, new ViewParagraph($"{problem.Message} {problem.Remedy}")]));
    }

    /// <summary>What an attempt is of: "ML-03, first rise".</summary>
    internal static string TitleOf(RiseCurveAttempt attempt) => attempt.BakeId + attempt.Stage switch
    {
        RiseStage.Preferment => ", preferment",
        RiseStage.Rise => ", first rise",
        RiseStage.Proof => ", proof",
        _ => ", stage not written",
    };

    /// <summary>The time to double in a few words: "doubled at 67 min (65 to 69)".</summary>
    internal static string Doubled(RiseCurveFit fit) => fit.Doubling is { } doubling
        ? $"doubled at {Figures.Rounded(doubling.Value, 0)} min ({Figures.Range(doubling.Low, doubling.High, 0)})"
        : $"not doubled, it ends at {Figures.Rounded(fit.Ceiling.Value, 2)} times its start";

    private static IEnumerable<ViewBlock> Reservations(RiseCurveAnswer answer)
    {
        if (answer.Caveats is { Count: > 0 } caveats)
        {
            yield return new ViewList(caveats);
        }
    }

    private static string Headline(RiseCurveAnswer answer)
    {
        var fit = answer.Chosen;
        var count = answer.Series.Minutes.Length.ToString(CultureInfo.InvariantCulture);
        var choice = answer.AiccDifference is { } difference
            ? $"The {fit.Curve.Name} curve suits the {count} readings better than the other, by {Figures.Rounded(difference, 1)} in AICc."
            : $"Only the {fit.Curve.Name} curve could be fitted to the {count} readings.";
        var doubled = fit.NoDoubling is { } reason ? $"It has no time to double. {reason}" : $"The dough {Doubled(fit)}.";
        return $"{doubled} {choice} Readings scatter about it by {Figures.Rounded(100 * fit.Scatter, 1)} % of the starting size. Ranges are 95 % intervals.";
    }

    private static ViewTable Numbers(RiseCurveAnswer answer)
    {
        var other = answer.Other.Match<RiseCurveFit?>(fit => fit, _ => null);
        RiseCurveFit[] fits = [.. new[] { answer.Chosen, other }.OfType<RiseCurveFit>()];
        IReadOnlyList<string> Row(string what, Func<RiseCurveFit, string> cell) => [what, .. fits.Select(cell)];
        return new ViewTable(
            "The curves in numbers, the chosen one first. A size is counted in starting sizes; 2 is doubled.",
            [new ViewColumn("Number", false), .. fits.Select(fit => new ViewColumn(Figures.Sentence(fit.Curve.Name), true))],
            [
                Row("Doubled (min)", fit => Cell(fit.Doubling, 1, 0)),
                Row("Lag (min)", fit => Cell(fit.Lag, 1, 0)),
                Row("Steepest rise (% of the start a minute)", fit => Cell(fit.Steepest, 100, 2)),
                Row("Ceiling (times the start)", fit => Cell(fit.Ceiling, 1, 2)),
                Row("AICc", fit => Figures.Rounded(fit.Aicc, 1)),
            ]);
    }

    private static string Cell(Estimate? estimate, double factor, int decimals) => estimate is { } found
        ? $"{Figures.Rounded(factor * found.Value, decimals)} ({Figures.Range(factor * found.Low, factor * found.High, decimals)})"
        : "–";
}
