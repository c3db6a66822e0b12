namespace BakeInsights;

/// <summary>How many bakes an answer rests on, and how many of those have something that a reader must know of.</summary>
/// <param name="Used">Bakes used.</param>
/// <param name="Spans">Of those, rise times known only to lie between two looks.</param>
/// <param name="Cups">Of those, bakes whose flour was measured by the cup.</param>
/// <param name="Stopped">Bakes left out because their rise was stopped.</param>
internal readonly record struct Basis(int Used, int Spans, int Cups, int Stopped)
{
    /// <summary>Counts bakes that are kept.</summary>
    public static Basis Of(IReadOnlyList<Bake> used, IEnumerable<LeftOutBakes> leftOut)
    {
        var basis = new Basis(0, 0, 0, leftOut.Sum(left => left.Bakes.Count(bake => bake.RiseOutcome == RiseOutcome.Stopped)));
        return used.Aggregate(basis, (sum, bake) => sum.With(bake));
    }

    /// <summary>The smallest relative standard deviation of flour by the cup; 0 without any.</summary>
    public double LeastFlourSd { get; private init; }

    /// <summary>The largest relative standard deviation of flour by the cup; 0 without any.</summary>
    public double MostFlourSd { get; private init; }

    /// <summary>One bake more that is used.</summary>
    public Basis With(Bake bake)
    {
        var sum = this with { Used = Used + 1, Spans = Spans + (bake[BakeColumns.RiseNotReady] is null ? 0 : 1) };
        if (!bake.FlourByCup)
        {
            return sum;
        }

        var sd = bake.FlourRelativeSd;
        return sum with
        {
            Cups = Cups + 1,
            LeastFlourSd = Cups == 0 ? sd : Math.Min(LeastFlourSd, sd),
            MostFlourSd = Math.Max(MostFlourSd, sd),
        };
    }
}
