using System.Globalization;

namespace BakeInsights;

/// <summary>What to bear in mind with a kitchen's dough temperature.</summary>
internal static class KitchenDoughCaveats
{
    /// <summary>
    /// From this correlation on two causes are said to have moved together: Dormann and others (2013), Ecography 36,
    /// 27-46, who find it the point from which slopes get unreliable.
    /// </summary>
    private const double LooselyTogether = 0.7;

    /// <summary>A dough further than this many standard deviations from what is expected is named (as in other answers).</summary>
    private const double Far = 3;

    public static IEnumerable<string> Of(KitchenDoughTemperature learned, UnitSystem system)
    {
        if (learned.Used.Count == 0)
        {
            yield return "No bake could be used, so all of this is the physical balance and trade figures; a few bakes with water, flour, room "
                + "and dough temperature make it this kitchen's own.";
            yield break;
        }

        var pairs = Pairs(learned);
        if (pairs.Count > 0)
        {
            yield return $"Moved together in the journal: {string.Join(", ", pairs)}. It tells their parts apart mostly by what physics says of them.";
        }

        foreach (var part in learned.Parts.Where(part => part.IsConflict))
        {
            yield return $"The journal and physics disagree on {Lower(part.Title)} (p = {Number(part.ConflictPValue!.Value, "0.000")}), so both "
                + "together suit neither; look for temperatures in the wrong column or unit.";
        }

        if (learned.WhyNoMixing.Length > 0)
        {
            yield return $"{learned.WhyNoMixing} Doughs are taken as mixed for the usual time.";
        }

        foreach (var (bake, expected) in learned.Used.Zip(learned.Expected))
        {
            var miss = TemperatureDifference.FromC(bake[BakeColumns.DoughTemp]!.Value - expected);
            if (Math.Abs(miss.C) > Far * learned.Scatter.C)
            {
                yield return $"The dough of bake {bake.Id} was {TemperatureDifference.FromC(Math.Abs(miss.C)).Text(system)} "
                    + $"{(miss.C > 0 ? "warmer" : "colder")} than expected; look whether a temperature is mistyped.";
            }
        }

        yield return ModelAnswer.NotACause;
    }

    private static List<string> Pairs(KitchenDoughTemperature learned) =>
    [
        .. new[]
        {
            (DoughCause.Water, DoughCause.Room), (DoughCause.Water, DoughCause.Flour), (DoughCause.Flour, DoughCause.Room),
        }
        .Select(pair => (pair.Item1, pair.Item2, Correlation: Correlation(learned, pair.Item1, pair.Item2)))
        .Where(pair => Math.Abs(pair.Correlation ?? 0) >= LooselyTogether)
        .Select(pair => $"{pair.Item1.Name} and {Lower(pair.Item2.Title)} (correlation {Number(pair.Correlation!.Value, "0.00")})"),
    ];

    /// <summary>The correlation of two causes; null where one never changed or bakes are few.</summary>
    private static double? Correlation(KitchenDoughTemperature learned, DoughCause one, DoughCause other)
    {
        double[] ValuesOf(DoughCause cause) => [.. learned.Used.Select(bake => bake[cause.Column!]!.Value)];
        return learned.Used.Count < MovedTogether.LeastBakes ? null : MovedTogether.Correlation(ValuesOf(one), ValuesOf(other));
    }

    private static string Lower(string title) => title.ToLower(CultureInfo.InvariantCulture);

    private static string Number(double value, string format) => value.ToString(format, CultureInfo.InvariantCulture).Replace('-', '−');
}
