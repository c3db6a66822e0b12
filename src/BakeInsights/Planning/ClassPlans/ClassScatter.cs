using BakeInsights.Inference;

namespace BakeInsights;

/// <summary>How much single bakes scatter.</summary>
/// <param name="OnScale">On the model's scale: of the logarithm of a time, of the volume itself.</param>
/// <param name="InUnit">In the unit of the wished difference.</param>
/// <param name="Bakes">The bakes that it rests on; null where it was given.</param>
internal sealed record ClassScatter(double OnScale, double InUnit, int? Bakes)
{
    public static Attempt<ClassScatter> Of(IReadOnlyList<Bake> bakes, ClassPlanWish wish)
    {
        if (wish.Scatter is { } given)
        {
            return new ClassScatter(ScaleOf(wish.Result, given), given, null);
        }

        var asked = wish.Result == Measures.RiseTime
            ? RiseTime.Ask(bakes).Select<ModelAnswer>(answer => answer)
            : LoafVolume.Ask(bakes).Select<ModelAnswer>(answer => answer);
        return asked.Match<Attempt<ClassScatter>>(
            answer => answer.ResidualSd > 0
                ? new ClassScatter(answer.ResidualSd, wish.Result == Measures.RiseTime ? ResultScale.PercentOf(answer.ResidualSd) : answer.ResidualSd, answer.UsedCount)
                : NotKnown(wish, "the bakes lie on a line to the last digit"),
            problem => NotKnown(wish, $"{char.ToLowerInvariant(problem.Message[0])}{problem.Message[1..].TrimEnd('.')}"));
    }

    /// <summary>A difference on the model's scale.</summary>
    public static double ScaleOf(Measure result, double difference) =>
        result == Measures.RiseTime ? Math.Log(1 + (difference / 100)) : difference;

    private static FitProblem NotKnown(ClassPlanWish wish, string why) => new(
        FitProblemKind.TooFewRows,
        [wish.Result.Name],
        $"The journal doesn't say how much the {wish.Result.Words} scatters: {why}.",
        $"Say how much, one standard deviation in {(wish.Result == Measures.RiseTime ? "percent" : "mL/g")}, or log more bakes first.");
}
