namespace BakeInsights;

/// <summary>
/// What a response does between two temperatures, in the words of every other way of saying it: percent a degree, Q10,
/// activation energy. Exact between the two; elsewhere the ways differ.
/// </summary>
public sealed record TemperatureSpan
{
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

    private Temperature Lower => From < To ? From : To;

    private Temperature Upper => From < To ? To : From;
}
