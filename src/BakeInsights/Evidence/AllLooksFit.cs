using BakeInsights.Inference;

namespace BakeInsights;

/// <summary>
/// What temperature does to the rise time by the likelihood of every look as it is (<see cref="CensoredLogNormal"/>):
/// spans as spans, stopped rises as "longer than", rises ready at the first look as "no longer than".
/// </summary>
/// <param name="Bakes">How many bakes it rests on.</param>
/// <param name="ChangePctOfOneDegree">Percent by which the rise time changes when the dough is 1 °C warmer.</param>
public sealed record AllLooksFit(int Bakes, Estimate ChangePctOfOneDegree)
{
    /// <summary>
    /// The fit with the terms of a model, or null where the model's middles say all there is, or temperature is not
    /// among its terms, or the likelihood can't be fitted.
    /// </summary>
    internal static AllLooksFit? Of(FittedModel model)
    {
        var terms = model.Selection.Terms;
        var temperature = terms.ToList().FindIndex(term => term.Name == RiseTime.DoughTemperatureTerm) + 1;
        Bake[] further =
        [
            .. model.LeftOutBakes.SelectMany(left => left.Bakes).Where(bake => IsOpen(bake) && RiseTime.IsWithinTheLine(bake)
                && terms.All(term => term.ValueOf(bake) is not null)),
        ];
        if (temperature == 0 || (further.Length == 0 && !model.Selection.Bakes.Any(IsWide)))
        {
            return null;
        }

        Bake[] bakes = [.. model.Selection.Bakes, .. further];
        return CensoredLogNormal.Fit(FittedModel.DesignOf(bakes, terms, []), [.. bakes.Select(Looked)]).Match<AllLooksFit?>(
            fit =>
            {
                var interval = fit.Interval(temperature, ModelAnswer.Level);
                return new(
                    bakes.Length, new Estimate(fit.Terms[temperature].Estimate, interval.Low, interval.High).Through(ResultScale.PercentOf));
            },
            _ => null);
    }

    /// <summary>Whether the looks leave one end of the time open.</summary>
    internal static bool IsOpen(Bake bake) =>
        bake[BakeColumns.Rise] is not null && (bake.RiseOutcome == RiseOutcome.Stopped || bake[BakeColumns.RiseNotReady] == 0);

    private static bool IsWide(Bake bake) => Looks.IsWide(bake[BakeColumns.RiseNotReady], bake[BakeColumns.Rise]);

    private static CensoredValue Looked(Bake bake)
    {
        var late = bake[BakeColumns.Rise]!.Value;
        return bake.RiseOutcome == RiseOutcome.Stopped ? CensoredValue.Above(late)
            : bake[BakeColumns.RiseNotReady] is not { } early ? CensoredValue.Exact(late)
            : early == 0 ? CensoredValue.Below(late)
            : CensoredValue.Between(early, late);
    }
}
