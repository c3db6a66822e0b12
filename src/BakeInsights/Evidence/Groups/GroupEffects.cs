using BakeInsights.Inference;

namespace BakeInsights;

/// <summary>What the fits of groups say in the result's own unit.</summary>
internal static class GroupEffects
{
    /// <summary>The groups in the order of their names.</summary>
    public static IReadOnlyList<GroupResult> Of(GroupFit model, ResultScale scale, double overall)
    {
        var rows = model.Fixed.Rows;
        var levels = rows.LevelsOf(rows.Column);
        var means = ColumnEffects.Means(model.Fixed, scale);
        var raw = rows.Bakes.Zip(model.Fixed.Fit.Response).ToLookup(pair => levels.NameOf(pair.First), pair => pair.Second);
        var pooled = Pooled(model);
        return
        [
            .. means.Select(mean =>
            {
                var (value, interval) = pooled.TryGetValue(mean.Level, out var found) ? found : default;
                var isPooled = model.Mixed is not null;
                return new GroupResult(
                    mean.Level, mean.Count, scale.Back(raw[mean.Level].Average()), mean.Mean,
                    isPooled ? scale.Difference(value, interval, overall) : null,
                    isPooled ? scale.Percent(value, interval) : null);
            }),
        ];
    }

    /// <summary>The spread between groups, in the result's unit and in percent; null with two groups.</summary>
    public static (Estimate? Spread, Estimate? Pct) Spread(GroupFit model, ResultScale scale, double overall)
    {
        if (model.Mixed is not { } mixed)
        {
            return (null, null);
        }

        var deviation = Math.Sqrt(mixed.Variances.Intercept);
        var (low, high) = model.Spread.Deviation;

        // The estimate maximizes a likelihood and the ends are from an exact test, so at the edge they can pass each other.
        Estimate In(double by) => scale.IsLogarithmic
            ? new(by * double.ExpM1(deviation), Math.Min(by * double.ExpM1(low!.Value), by * double.ExpM1(deviation)), high is { } end ? by * double.ExpM1(Math.Max(end, deviation)) : null)
            : new(deviation, Math.Min(low!.Value, deviation), high is { } top ? Math.Max(top, deviation) : null);
        return (In(overall), scale.IsLogarithmic ? In(100) : null);
    }

    private static Dictionary<string, (double Value, Interval Interval)> Pooled(GroupFit model) =>
        model.Mixed is not { } mixed ? [] : mixed.GroupEffects.Zip(mixed.AveragedIntervals(ModelAnswer.Level))
            .ToDictionary(pair => pair.First.Group, pair => (pair.First.Intercept.Value, pair.Second));
}
