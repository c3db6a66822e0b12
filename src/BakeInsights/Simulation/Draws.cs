namespace BakeInsights;

/// <summary>
/// Random draws of the virtual kitchen, from a generator of 64 bits (SplitMix64: Steele, Lea and Flood 2014, OOPSLA,
/// 453-472). Each bake has a stream of its own, told by seed, purpose and place: another truth, or another number of
/// bakes, leaves the luck of every bake as it was, so two kitchens can be compared bake by bake.
/// </summary>
/// <remarks>
/// Not <see cref="Chance"/>: first draws of <see cref="Random"/> from neighbouring seeds follow each other, and months
/// are drawn from neighbouring seeds.
/// </remarks>
internal sealed class Draws
{
    // 2^64 divided by the golden ratio, and the two multipliers of the mixing step, as published.
    private const ulong Step = 0x9E3779B97F4A7C15;
    private const ulong FirstMultiplier = 0xBF58476D1CE4E5B9;
    private const ulong SecondMultiplier = 0x94D049BB133111EB;
    private const double UnitOf53Bits = 1.0 / (1L << 53);

    private ulong _state;
    private double _spare = double.NaN;

    /// <summary>Starts a stream.</summary>
    public Draws(int seed, Purpose purpose, int place = 0) => Restart(seed, purpose, place);

    /// <summary>What a stream is for.</summary>
    public enum Purpose
    {
        Hands,
        Bakes,
        Loaves,
        Judges,
        Scores,
        Cups,
        Plans,
    }

    /// <summary>Goes to the start of another stream.</summary>
    public void Restart(int seed, Purpose purpose, int place)
    {
        var key = Mixed((((ulong)(uint)seed) << 32) | (uint)purpose);
        _state = Mixed(key + ((ulong)(uint)place * Step));
        _spare = double.NaN;
    }

    /// <summary>A draw from 0 to 1, 1 left out.</summary>
    public double Uniform() => (Next() >> 11) * UnitOf53Bits;

    /// <summary>A draw from a range, each value as likely as the others.</summary>
    public double In(KitchenRange range) => range.Low + ((range.High - range.Low) * Uniform());

    /// <summary>Whether something of this probability happens.</summary>
    public bool Happens(double probability) => Uniform() < probability;

    /// <summary>A place in a list of so many.</summary>
    public int Place(int count) => (int)(Uniform() * count);

    /// <summary>A draw from the standard normal distribution (polar method, Marsaglia and Bray 1964, SIAM Review 6, 260-264).</summary>
    public double Normal()
    {
        if (!double.IsNaN(_spare))
        {
            var spare = _spare;
            _spare = double.NaN;
            return spare;
        }

        while (true)
        {
            var across = (2 * Uniform()) - 1;
            var up = (2 * Uniform()) - 1;
            var square = (across * across) + (up * up);
            if (square is > 0 and < 1)
            {
                var stretch = Math.Sqrt(-2 * Math.Log(square) / square);
                _spare = up * stretch;
                return across * stretch;
            }
        }
    }

    private ulong Next()
    {
        _state += Step;
        return Mixed(_state);
    }

    private static ulong Mixed(ulong bits)
    {
        bits = (bits ^ (bits >> 30)) * FirstMultiplier;
        bits = (bits ^ (bits >> 27)) * SecondMultiplier;
        return bits ^ (bits >> 31);
    }
}
