using BakeInsights.Inference;

namespace BakeInsights;

/// <summary>Cups of flour that were filled in one way and weighed, beside what is published.</summary>
/// <param name="Method">The way of filling.</param>
/// <param name="Cups">The cups, brought to a US customary cup of 236.588 mL.</param>
/// <param name="People">How many people filled them.</param>
/// <param name="Mean">
/// The mean of people's means, in g, with its 95 % interval by Student's t over people, for a person's cups are alike; with
/// one person the mean of the cups, without an interval.
/// </param>
/// <param name="Published">The published weight of such a cup; null where there is none.</param>
public sealed record CupsByMethod(FlourMeasure Method, IReadOnlyList<CupWeighing> Cups, int People, Estimate Mean, HouseholdWeight? Published)
{
    private const string Flour = "flour";

    // A mean over people counts people, and two leave one degree of freedom: its interval says nothing.
    private const int LeastPeople = WeighedCups.LeastPeople;

    /// <summary>Each way of filling that flour was weighed by, in the order of the list of ways.</summary>
    public static IReadOnlyList<CupsByMethod> Of(IReadOnlyList<WeighedCup> cups)
    {
        ArgumentNullException.ThrowIfNull(cups);
        return
        [
            .. cups.Where(cup => cup.Ingredient.Trim().Equals(Flour, StringComparison.OrdinalIgnoreCase))
                .GroupBy(cup => cup.Method ?? FlourMeasure.CupUnknown)
                .OrderBy(same => same.Key)
                .Select(same => Of(same.Key, [.. same.Select(cup => cup.Weighing)])),
        ];
    }

    private static CupsByMethod Of(FlourMeasure method, IReadOnlyList<CupWeighing> cups)
    {
        double[] people =
        [
            .. cups.GroupBy(cup => cup.Measurer.Trim(), StringComparer.OrdinalIgnoreCase).Select(person => person.Average(cup => cup.GramsPerCup)),
        ];
        var moments = SampleMoments.Of(people);
        Estimate mean = new(moments.Mean, null, null);
        if (people.Length >= LeastPeople && moments.StandardDeviation is { } sd and > 0)
        {
            mean = Estimate.Of(new Term("mean", moments.Mean, sd / Math.Sqrt(people.Length), people.Length - 1));
        }

        return new CupsByMethod(method, cups, people.Length, mean, HouseholdWeights.OfFlour(method));
    }
}
