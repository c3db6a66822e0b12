using BakeInsights.Inference;

namespace BakeInsights;

/// <summary>The fits behind the comparison of groups.</summary>
/// <param name="Fixed">Least squares with a mean for each group.</param>
/// <param name="Spread">How far the groups lie apart; its test is that of <paramref name="Fixed"/>.</param>
/// <param name="Mixed">The mixed model; null with too few groups for it.</param>
internal sealed record GroupFit(ColumnFit Fixed, GroupSpread Spread, MixedFit? Mixed)
{
    /// <summary>Fits both on the same bakes and causes.</summary>
    public static Attempt<GroupFit> Make(ColumnFit fit)
    {
        var rows = fit.Rows;
        var levels = rows.LevelsOf(rows.Column);
        string[] labels = [.. rows.Bakes.Select(levels.NameOf)];
        var own = fit.Test.ExtraDegreesOfFreedom;
        var design = new Design(fit.Fit.Design.Columns.SkipLast(own));
        if (!GroupSpread.Of(design, fit.Fit.Response, rows.Column.Name, labels, ModelAnswer.Level).TryGet(out var spread, out var problem))
        {
            return problem;
        }

        return levels.Names.Count < GroupQuestion.FewestForSpread
            ? new GroupFit(fit, spread, null)
            : MixedModel.Fit(design, fit.Fit.Response, rows.Column.Name, labels).Select(mixed => new GroupFit(fit, spread, mixed));
    }
}
