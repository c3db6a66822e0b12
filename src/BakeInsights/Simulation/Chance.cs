namespace BakeInsights;

/// <summary>Seeded random draws; the same seed gives the same draws on every machine.</summary>
internal sealed class Chance(int seed)
{
    private readonly Random _random = new(seed);

    /// <summary>A draw from the standard normal distribution (Box and Muller 1958, Ann. Math. Stat. 29:610-611).</summary>
    public double Normal()
    {
        var radius = Math.Sqrt(-2 * Math.Log(1 - _random.NextDouble()));
        return radius * Math.Cos(2 * Math.PI * _random.NextDouble());
    }

    /// <summary>Whether something of this probability happens.</summary>
    public bool Happens(double probability) => _random.NextDouble() < probability;

    /// <summary>One of these, each as likely as the others.</summary>
    public T Pick<T>(params ReadOnlySpan<T> choices) => choices[_random.Next(choices.Length)];
}
