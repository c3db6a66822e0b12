namespace BakeInsights;

/// <summary>What cups weigh in one kitchen, from cups that were filled there and weighed.</summary>
/// <remarks>
/// Weights and spreads are plain means and sample standard deviations. A person's hand that was weighed leaves only the
/// error of its mean as the shared part; for somebody who was not weighed, the shared part is how far a new person's
/// mean lies from the mean of those who were: the standard deviation of their means times sqrt(1 + 1/people).
/// </remarks>
public sealed class WeighedCups
{
    /// <summary>
    /// From this many cups of one kind on they win over the published weight: their mean is then known to about 1.5 %
    /// for cups that scatter by 3 %. Our own choice.
    /// </summary>
    public const int LeastCups = 5;

    /// <summary>From this many people on, the spread between people is taken from them. Our own choice.</summary>
    public const int LeastPeople = 3;

    private const string Flour = "flour";

    private readonly IReadOnlyList<CupWeighing> _cups;

    /// <summary>Takes the weighings of a journal; there may be none.</summary>
    public WeighedCups(IReadOnlyList<CupWeighing> cups)
    {
        ArgumentNullException.ThrowIfNull(cups);
        if (cups.Any(cup => !(cup.GramsPerCup > 0)))
        {
            throw new ArgumentException("A weighed cup has a weight above zero.", nameof(cups));
        }

        _cups = cups;
    }

    /// <summary>Whether any were weighed.</summary>
    public bool Any => _cups.Count > 0;

    /// <summary>
    /// A cup of flour filled in this way by this person, from that person's own cups, or from everybody's where those
    /// are too few; null where all together are too few.
    /// </summary>
    /// <param name="method">The way of filling.</param>
    /// <param name="person">Who filled it; null when that is not known.</param>
    public HouseholdWeight? OfFlour(FlourMeasure method, string? person)
    {
        var cups = _cups.Where(cup => Is(cup, Flour) && cup.Method == method).ToList();
        return OfPerson([.. cups.Where(cup => SameName(cup.Measurer, person ?? ""))])
            ?? OfPeople(cups, HouseholdWeights.OfFlour(method)?.Spread);
    }

    /// <summary>A cup of another ingredient, from everybody's cups; null where they are too few.</summary>
    public HouseholdWeight? Of(string ingredient) =>
        OfPeople([.. _cups.Where(cup => Is(cup, ingredient))], published: null);

    private static HouseholdWeight? OfPerson(IReadOnlyList<CupWeighing> cups)
    {
        if (cups.Count < LeastCups)
        {
            return null;
        }

        var mean = Mean(cups);
        var own = Math.Sqrt(SquaresWithin(cups) / (cups.Count - 1)) / mean;
        return new(mean, $"{cups.Count} cups that {cups[0].Measurer} weighed", new(own / Math.Sqrt(cups.Count), own));
    }

    private static HouseholdWeight? OfPeople(IReadOnlyList<CupWeighing> cups, CupSpread? published)
    {
        if (cups.Count < LeastCups)
        {
            return null;
        }

        var people = cups.GroupBy(cup => cup.Measurer.Trim(), StringComparer.OrdinalIgnoreCase).ToList();
        var means = people.Select(person => Mean(person)).ToList();
        var mean = means.Average();
        var source = $"{cups.Count} cups that {(people.Count == 1 ? people[0].Key : $"{people.Count} people")} weighed";
        return new(mean, source, published is null ? null : new(Between(means, mean, published), Within(people, mean)));
    }

    private static double Between(List<double> means, double mean, CupSpread published) => means.Count < LeastPeople
        ? published.SharedRelativeSd
        : Math.Sqrt(means.Sum(each => (each - mean) * (each - mean)) / (means.Count - 1) * (1 + (1.0 / means.Count))) / mean;

    private static double Within(List<IGrouping<string, CupWeighing>> people, double mean)
    {
        var spare = people.Sum(person => person.Count() - 1);
        return spare < LeastCups - 1
            ? HouseholdWeights.CupToCupRelativeSd
            : Math.Sqrt(people.Sum(SquaresWithin) / spare) / mean;
    }

    private static double Mean(IEnumerable<CupWeighing> cups) => cups.Average(cup => cup.GramsPerCup);

    private static double SquaresWithin(IEnumerable<CupWeighing> cups)
    {
        var mean = Mean(cups);
        return cups.Sum(cup => (cup.GramsPerCup - mean) * (cup.GramsPerCup - mean));
    }

    private static bool Is(CupWeighing cup, string ingredient) => SameName(cup.Ingredient, ingredient);

    private static bool SameName(string one, string other) => one.Trim().Equals(other.Trim(), StringComparison.OrdinalIgnoreCase);
}
