namespace BakeInsights.Reports;

/// <summary>Chances, wishes and formulas in words.</summary>
internal static class TuneWords
{
    /// <summary>A chance: "82 %"; nothing is certain or impossible.</summary>
    public static string Chance(double chance) => chance switch
    {
        < 0.01 => "below 1 %",
        > 0.99 => "above 99 %",
        _ => Figures.Rounded(100 * chance, 0) + " %",
    };

    /// <summary>A chance with what it may turn out to be.</summary>
    public static string WithRange(Estimate chance) =>
        $"{Chance(chance.Value)} ({Figures.Range(100 * chance.Low, 100 * chance.High, 0)})";

    /// <summary>A wish: "ready within 90 min".</summary>
    public static string Wish(TuneGoal goal, Figures figures) =>
        goal.Result == Measures.RiseTime ? $"ready within {figures.WithUnit(Dimension.Duration, goal.High!.Value)}"
        : goal.Result == Measures.SpecificVolume ? $"volume at least {figures.WithUnit(Dimension.SpecificVolume, goal.Low!.Value)}"
        : $"{goal.Result.Words} from {Bound(goal, goal.Low!.Value, figures)} to {Bound(goal, goal.High!.Value, figures)}";

    /// <summary>A bound of a wish.</summary>
    public static string Bound(TuneGoal goal, double bound, Figures figures) => figures.WithUnit(goal.Result.Dimension, bound);

    /// <summary>A dough: "24.5 °C, hydration 68.0 %, yeast (as instant) 1.20 %".</summary>
    public static string Dough(DoughSettings dough, IEnumerable<Measure> settings, Figures figures) => string.Join(
        ", ", settings.Select(setting => setting == Measures.DoughTemperature
            ? $"a dough of {Setting(setting, dough[setting]!.Value, figures)}"
            : $"{setting.Words} {Setting(setting, dough[setting]!.Value, figures)}"));

    /// <summary>A setting: small percentages are weighed to a tenth of the others.</summary>
    public static string Setting(Measure setting, double value, Figures figures) =>
        setting == Measures.Yeast || setting == Measures.Salt ? Figures.Rounded(value, 2) + " %" : figures.WithUnit(setting.Dimension, value);
}
