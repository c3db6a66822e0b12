namespace BakeInsights;

/// <summary>
/// When a dough was ready as far as its looks say, moved by the fit to the typical dough: only dough temperature and chance
/// are left to tell it from the others.
/// </summary>
/// <param name="Bake">The bake.</param>
/// <param name="DoughTemperatureC">Its dough temperature, in °C.</param>
/// <param name="NotReadyMin">The last look that found it not ready, in minutes; null where the first look found it ready.</param>
/// <param name="ReadyMin">The first look that found it ready, in minutes; null where the rise was stopped before.</param>
public sealed record RiseLook(Bake Bake, double DoughTemperatureC, double? NotReadyMin, double? ReadyMin)
{
    /// <summary>
    /// The looks of all bakes used and of those left out only because one of their ends is open; without the bakes whose
    /// settings or block the fit doesn't know, and empty where temperature is no term or bakes aren't kept.
    /// </summary>
    internal static IReadOnlyList<RiseLook> Of(FittedModel model, DoughSettings typical)
    {
        if (model.Coefficient(RiseTime.DoughTemperatureTerm) is null || model.Fit is not Inference.LeastSquaresFit fit)
        {
            return [];
        }

        var used = model.Selection.Bakes;
        var open = model.LeftOutBakes.SelectMany(left => left.Bakes).Where(bake =>
            AllLooksFit.IsOpen(bake) && RiseTime.IsWithinTheLine(bake) && model.Selection.Terms.All(term => term.ValueOf(bake) is not null));
        return
        [
            .. used.Select((bake, row) => Moved(bake, model, typical, fit.FittedValues[row])),
            .. from bake in open let row = RowOf(bake, model) where row is not null
               select Moved(bake, model, typical, fit.Combination(row).Estimate),
        ];
    }

    private static RiseLook Moved(Bake bake, FittedModel model, DoughSettings typical, double expected)
    {
        var celsius = Measures.DoughTemperature.Of(bake)!.Value;
        var settings = typical.With(Measures.DoughTemperature, celsius);
        var factor = Math.Exp(model.Fit.Combination(model.Row(measure => settings[measure])).Estimate - expected);
        var late = factor * bake[BakeColumns.Rise]!.Value;
        return bake.RiseOutcome == RiseOutcome.Stopped ? new RiseLook(bake, celsius, late, null)
            : new RiseLook(bake, celsius, bake[BakeColumns.RiseNotReady] switch { null => late, 0 => null, { } early => factor * early }, late);
    }

    // The row of a bake that the fit does without: the columns of its blocks are those of a bake used from the same ones.
    private static IReadOnlyList<double>? RowOf(Bake bake, FittedModel model)
    {
        var same = model.Selection.Bakes.Index()
            .Where(other => model.Blocks.All(block => other.Item[block.Column] == bake[block.Column]))
            .Select(other => (int?)other.Index).FirstOrDefault();
        return same is not { } row ? null :
        [
            1,
            .. model.Selection.Terms.Select(term => term.ValueOf(bake)!.Value),
            .. model.Blocks.SelectMany(block => block.Columns).Select(column => column.Values[row]),
        ];
    }
}
