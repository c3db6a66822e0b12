namespace BakeInsights;

/// <summary>What the fits of groups say in the result's own unit.</summary>
internal static class GroupEffects
{
    /// <summary>The groups in the order of their names.</summary>
    public static IReadOnlyList<GroupResult> Of(GroupFit model, double overall)
    {
        var (rows, scale) = (model.Fixed.Rows, model.Fixed.Scale);
        var levels = rows.LevelsOf(rows.Column);
        var means = ColumnEffects.Means(model.Fixed);
        var raw = rows.Bakes.Zip(model.Fixed.Fit.Response).ToLookup(pair => levels.NameOf(pair.First), pair => pair.Second);
        var pooled = Pooled(model);
        return
        [
            .. means.Select(mean =>
            {
                var effect = pooled.GetValueOrDefault(mean.Level);
                return new GroupResult(
                    mean.Level, mean.Count, scale.Back(raw[mean.Level].Average()), mean.Mean,
                    effect is null ? null : scale.Difference(effect, overall),
                    effect is null ? null : scale.Percent(effect));
            }),
        ];
    }

    /// <summary>The spread between groups, in the result's unit and in percent; null with two groups.</summary>
    public static (Estimate? Spread, Estimate? Pct) Spread(GroupFit model, double overall)
    {
        if (model.Mixed is not { } mixed)
        {
            return (null, null);
        }

        var deviation = Math.Sqrt(mixed.Variances.Intercept);
        var (low, high) = model.Spread.Deviation;

        // The estimate maximizes a likelihood and the ends are from an exact test, so at the edge they can pass each other.
        var ends = new Estimate(deviation, Math.Min(low!.Value, deviation), high is { } end ? Math.Max(end, deviation) : null);
        return (model.Fixed.Scale.Difference(ends, overall), model.Fixed.Scale.Percent(ends));
    }

    /// <summary>How far each group lies from the middle, on the model's scale; empty with two groups.</summary>
    internal static Dictionary<string, Estimate> Pooled(GroupFit model) =>
        model.Mixed is not { } mixed ? [] : mixed.GroupEffects.Zip(mixed.AveragedIntervals(ModelAnswer.Level)).ToDictionary(
            pair => pair.First.Group, pair => new Estimate(pair.First.Intercept.Value, pair.Second.Low, pair.Second.High));
}
