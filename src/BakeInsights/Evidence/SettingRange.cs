namespace BakeInsights;

/// <summary>Over which values a setting was tried, in its measure's canonical unit.</summary>
/// <param name="Measure">The setting.</param>
/// <param name="Least">The smallest value.</param>
/// <param name="Middle">The median, or the mean where single bakes aren't kept.</param>
/// <param name="Most">The largest value.</param>
public sealed record SettingRange(Measure Measure, double Least, double Middle, double Most)
{
    /// <summary>The ranges of all settings that these bakes have.</summary>
    internal static IReadOnlyList<SettingRange> Of(IReadOnlyList<Bake> bakes) =>
    [
        .. DoughSettings.Settable
            .Select(measure => MeasureSummary.Of(measure, bakes))
            .OfType<MeasureSummary>()
            .Select(summary => new SettingRange(summary.Measure, summary.Least, summary.Middle, summary.Most)),
    ];
}
