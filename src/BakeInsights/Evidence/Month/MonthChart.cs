using BakeInsights.Inference;

namespace BakeInsights;

/// <summary>A measure bake by bake through a month, with the limits that its own scatter sets.</summary>
/// <remarks>
/// Its signals are prompts to look and no findings: with these four rules a kitchen in which nothing changes gives one
/// about every 92 bakes (Champ and Woodall 1987, Technometrics 29, 393-399), and the limits of a short month are rough.
/// </remarks>
/// <param name="Result">The measure.</param>
/// <param name="IsAgainstPrediction">
/// Whether the values are how far each bake lies from what the model expects, in the model's standard deviations, more
/// being longer; otherwise they are the measure's own.
/// </param>
/// <param name="Bakes">The bakes, in order of their days.</param>
/// <param name="Chart">The chart of their values.</param>
/// <param name="Centre">
/// What the limits lie about: the mean of the values, or 0 where they are against a prediction. So a month that lies above
/// what was expected of it as a whole shows, where about its own mean it would not.
/// </param>
/// <param name="Signals">The runs that seldom come by chance, those of one rule and side that overlap joined.</param>
/// <param name="LeftOut">The month's bakes that are not on the chart.</param>
public sealed record MonthChart(
    Measure Result,
    bool IsAgainstPrediction,
    IReadOnlyList<Bake> Bakes,
    IndividualsChart Chart,
    double Centre,
    IReadOnlyList<RunSignal> Signals,
    IReadOnlyList<LeftOutBakes> LeftOut)
{
    /// <summary>With fewer bakes than this the limits are rough. Common practice, no source.</summary>
    public const int BakesForLimits = 20;

    /// <summary>Three standard deviations about the centre.</summary>
    public Interval Limits => new(Chart.Limits.Low - Chart.Centre + Centre, Chart.Limits.High - Chart.Centre + Centre);

    /// <summary>The chart of a measure as logged.</summary>
    public static Attempt<MonthChart> Of(Measure measure, IReadOnlyList<Bake> bakes)
    {
        ArgumentNullException.ThrowIfNull(measure);
        ArgumentNullException.ThrowIfNull(bakes);
        var (used, leftOut) = MonthSummary.Split(measure, bakes);
        return Draw(measure, false, used, [.. used.Select(bake => measure.Of(bake)!.Value)], leftOut);
    }

    /// <summary>The chart of what the model of rise time leaves over, in its standard deviations.</summary>
    /// <param name="answer">The model, of bakes that include the month's.</param>
    /// <param name="month">The month's bakes.</param>
    public static Attempt<MonthChart> Of(RiseTimeAnswer answer, IReadOnlyList<Bake> month)
    {
        ArgumentNullException.ThrowIfNull(answer);
        ArgumentNullException.ThrowIfNull(month);
        if (answer.IsFromSums)
        {
            return new FitProblem(
                FitProblemKind.TooFewRows, [Measures.RiseTime.Name], "The journal is too long to keep its bakes.", "Take one month of it.");
        }

        // Each residual over its own standard deviation; a bake that the fit meets by itself has none.
        var standardised = RowInfluence.Of(answer.Fit).Where(row => row.Studentised is not null)
            .ToDictionary(row => answer.Used[row.Row], row => row.Studentised!.Value);
        List<Bake> used = [.. month.Where(standardised.ContainsKey)];
        List<Bake> left = [.. month.Except(used)];
        return answer.ResidualSd > 0
            ? Draw(
                Measures.RiseTime, true, used, [.. used.Select(bake => standardised[bake])],
                left.Count == 0 ? [] : [new LeftOutBakes("no place in the model of rise time", left)])
            : new FitProblem(
                FitProblemKind.ZeroSpread, [Measures.RiseTime.Name], "The model meets every rise time, so there is no scatter to chart.",
                "Log more bakes.");
    }

    private static Attempt<MonthChart> Draw(
        Measure measure, bool isAgainst, IReadOnlyList<Bake> bakes, IReadOnlyList<double> values, IReadOnlyList<LeftOutBakes> leftOut) =>
        IndividualsChart.Of(values).Match<Attempt<MonthChart>>(
            chart =>
            {
                var centre = isAgainst ? 0 : chart.Centre;
                return new MonthChart(measure, isAgainst, bakes, chart, centre, Joined(chart, centre), leftOut);
            },
            problem => problem with { Columns = [measure.Name] });

    private static IReadOnlyList<RunSignal> Joined(IndividualsChart chart, double centre)
    {
        bool IsAbove(RunSignal signal) => chart.Values[signal.Last] > centre;
        List<RunSignal> joined = [];
        foreach (var signal in RunSignal.Find(chart.Values, centre, chart.StandardDeviation, RunRules.WesternElectric))
        {
            var before = joined.FindIndex(one =>
                one.Rule == signal.Rule && one.Last >= signal.First && IsAbove(one) == IsAbove(signal));
            if (before >= 0)
            {
                joined[before] = joined[before] with { Last = signal.Last };
            }
            else
            {
                joined.Add(signal);
            }
        }

        return joined;
    }
}
