namespace BakeInsights.Tests;

/// <summary>Many months of a virtual kitchen, and what the answers of all of them say on average.</summary>
internal static class KitchenMonths
{
    public const int Months = 400;

    private const int FirstSeed = 20_000;

    /// <summary>The answers of as many months.</summary>
    public static IReadOnlyList<ModelAnswer> Ask<TAnswer>(
        VirtualKitchen kitchen, Func<IReadOnlyList<Bake>, Inference.Attempt<TAnswer>> ask)
        where TAnswer : ModelAnswer =>
        [.. Enumerable.Range(FirstSeed, Months).Select(seed => ask(kitchen.Bakes(seed, VirtualKitchen.UsualBakes)).Value)];

    /// <summary>The bakes of so many months, all together.</summary>
    public static IReadOnlyList<Bake> Bakes(VirtualKitchen kitchen, int months) =>
        [.. Enumerable.Range(FirstSeed, months).SelectMany(seed => kitchen.Bakes(seed, VirtualKitchen.UsualBakes))];

    /// <summary>The mean of a term over the months, and the standard error that so many months leave.</summary>
    public static (double Mean, double StandardError) Average(IReadOnlyList<ModelAnswer> answers, string term) =>
        Average([.. answers.Select(answer => answer.Coefficient(term)!.Estimate)]);

    /// <summary>The mean of numbers, and its standard error.</summary>
    public static (double Mean, double StandardError) Average(IReadOnlyList<double> values)
    {
        var mean = values.Average();
        var variance = values.Sum(value => (value - mean) * (value - mean)) / (values.Count - 1);
        return (mean, Math.Sqrt(variance / values.Count));
    }
}
