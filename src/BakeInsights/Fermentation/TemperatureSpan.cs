namespace BakeInsights;

/// <summary>
/// What a response does between two temperatures, in the words of every other way of saying it: percent a degree, Q10,
/// activation energy, a square-root line, cardinal temperatures. Exact between the two; elsewhere the ways differ.
/// </summary>
public sealed record TemperatureSpan
{
    // Far colder than any growth; a curve that would have to start below can't be told from one without a start.
    private const double ColdestStartC = -200;

    private const double StartAccuracyC = 1e-11;

    private TemperatureSpan(Temperature from, Temperature to, double lnRatio)
    {
        From = from;
        To = to;
        LnTimeSlope = -lnRatio / (to - from).C;
        ActivationKjPerMol = ArrheniusResponse.ActivationOf(lnRatio, from, to);
    }

    /// <summary>The one end.</summary>
    public Temperature From { get; }

    /// <summary>The other end.</summary>
    public Temperature To { get; }

    /// <summary>The slope of ln(time), for each °C.</summary>
    public double LnTimeSlope { get; }

    /// <summary>How much faster with each °C, in percent.</summary>
    public double PercentPerDegree => TemperatureCoefficient.RateChangePctPerDegree(LnTimeSlope);

    /// <summary>How many times as fast over 10 °C.</summary>
    public double Q10 => TemperatureCoefficient.Q10(LnTimeSlope);

    /// <summary>The apparent activation energy, in kJ/mol.</summary>
    public double ActivationKjPerMol { get; }

    /// <summary>What a response does from one temperature to another; null where it stands still at either.</summary>
    public static TemperatureSpan? Of(TemperatureResponse response, Temperature from, Temperature to)
    {
        ArgumentNullException.ThrowIfNull(response);
        if (from == to)
        {
            throw new ArgumentException("A span has two different ends.", nameof(to));
        }

        var (first, last) = (response.Rate(from), response.Rate(to));
        return first > 0 && last > 0 ? new(from, to, Math.Log(last / first)) : null;
    }

    /// <summary>A constant percentage a degree that does the same between the two, for use only there.</summary>
    public ExponentialResponse AsExponential(string purpose) =>
        ExponentialResponse.OfSlope(LnTimeSlope, Lower, Upper, purpose);

    /// <summary>An activation energy that does the same between the two, for use only there.</summary>
    public ArrheniusResponse AsArrhenius(string purpose) => new(ActivationKjPerMol, Lower, Upper, purpose);

    /// <summary>
    /// A square-root line that does the same between the two, its rate 1 at the upper one: the root of the rate grows by
    /// the same amount with each °C, so that two rates fix where it would start. Null where warmth does not speed it up.
    /// </summary>
    public SquareRootResponse? AsSquareRoot(string purpose)
    {
        var root = Math.Sqrt(RatioUpwards);
        if (root <= 1)
        {
            return null;
        }

        var start = Lower - ((Upper - Lower) / (root - 1));
        return new(1 / (Upper - start).C, start, Upper, purpose);
    }

    /// <summary>
    /// A cardinal curve that does the same between the two. Two rates fix one of its three temperatures, the least; the
    /// others have to be known. Null where an end lies above <paramref name="optimum"/>, or where no least temperature does
    /// it: the curve would be steeper or flatter than the model can be.
    /// </summary>
    /// <param name="optimum">Where it goes fastest.</param>
    /// <param name="max">Where it stops in the heat, above the optimum.</param>
    /// <param name="purpose">What it is for, with its source.</param>
    public CardinalResponse? AsCardinal(Temperature optimum, Temperature max, string purpose)
    {
        if (optimum >= max)
        {
            throw new ArgumentOutOfRangeException(nameof(optimum), optimum, FormattableString.Invariant($"The best temperature lies below {max}."));
        }

        // The curve has a pole unless its optimum is nearer to the greatest temperature than to the least.
        var (coldest, warmest) = (ColdestStartC, Math.Min(Lower.C, optimum.C - (max - optimum).C) - StartAccuracyC);
        if (Upper > optimum || IsSteeper(coldest) || !IsSteeper(warmest))
        {
            return null;
        }

        // Below its optimum a curve is the steeper the later it starts.
        while (warmest - coldest > StartAccuracyC)
        {
            var middle = (coldest + warmest) / 2;
            (coldest, warmest) = IsSteeper(middle) ? (coldest, middle) : (middle, warmest);
        }

        return At(coldest);

        CardinalResponse At(double min) => new(Temperature.FromC(min), optimum, max, purpose);

        bool IsSteeper(double min)
        {
            var curve = At(min);
            return curve.Rate(Upper) > RatioUpwards * curve.Rate(Lower);
        }
    }

    private double RatioUpwards => Math.Exp(-LnTimeSlope * (Upper - Lower).C);

    private Temperature Lower => From < To ? From : To;

    private Temperature Upper => From < To ? To : From;
}
