using System.Globalization;
using BakeInsights.Inference;

namespace BakeInsights;

/// <summary>What a journal says about the time of the first rise.</summary>
public sealed class RiseTimeAnswer : ModelAnswer
{
    internal RiseTimeAnswer(FittedModel model)
        : base(model)
    {
        AllLooks = IsFromSums ? null : AllLooksFit.Of(model);
        Checks = [.. ChecksOfBakes(), .. AgainstTheTrade()];
        Caveats = [.. Remarks()];
    }

    /// <inheritdoc/>
    public override string Model =>
        "ln(rise time in min), a straight line in " + string.Join(", ", Terms.Skip(1).Select(term => Spelled(term.Name))) + WithBlocks;

    /// <inheritdoc/>
    public override IReadOnlyList<AnswerCheck> Checks { get; }

    /// <inheritdoc/>
    public override IReadOnlyList<string> Caveats { get; }

    /// <summary>
    /// The effect of temperature by the likelihood of every look as it is: stopped rises as "longer than", rises ready at
    /// the first look as "no longer than". Null where there are no such looks, or none of it can be fitted.
    /// </summary>
    public AllLooksFit? AllLooks { get; }

    /// <summary>What the journal says, what handbooks say, and both together, term by term.</summary>
    public Attempt<IReadOnlyList<HandbookComparison>> WithHandbooks() => HandbookComparison.Of(Fitted);

    /// <summary>How many times as fast the dough rises when it is 10 °C warmer; null when temperature was left out.</summary>
    public Estimate? Q10 => FromSlope(RiseTime.DoughTemperatureTerm, TemperatureCoefficient.Q10);

    /// <summary>
    /// Percent by which the rise time changes when the dough is this many °C warmer; null when temperature was left
    /// out.
    /// </summary>
    public Estimate? ChangePct(double warmerC) => ChangePct(RiseTime.DoughTemperatureTerm, warmerC);

    /// <summary>
    /// Percent by which the rise time changes with a change of a term, in the term's unit; null when the term was
    /// left out.
    /// </summary>
    public Estimate? ChangePct(string term, double change) => FromSlope(term, slope => ResultScale.PercentOf(slope * change));

    /// <summary>
    /// Minutes by which the rise time of the typical dough changes when it is this many °C warmer; the interval is
    /// that of the slope. Null when temperature was left out.
    /// </summary>
    public Estimate? ChangeInMinutes(double warmerC)
    {
        var minutes = At(Typical).Estimate;
        return FromSlope(RiseTime.DoughTemperatureTerm, slope => minutes * (TemperatureCoefficient.TimeFactor(slope, warmerC) - 1));
    }

    /// <summary>The rise time in minutes of a dough with these settings.</summary>
    /// <exception cref="ArgumentException">A setting that the model needs is not given.</exception>
    public CurvePoint At(DoughSettings settings)
    {
        ArgumentNullException.ThrowIfNull(settings);
        var row = Fitted.Row(measure => settings[measure]);
        return new CurvePoint(
            settings[Measures.DoughTemperature],
            Math.Exp(Fitted.Fit.Combination(row).Estimate),
            Minutes(Fitted.Fit.MeanInterval(row, Level)),
            Minutes(Fitted.Fit.PredictionInterval(row, Level)));
    }

    /// <summary>The rise time of the typical dough over a range of dough temperatures, in °C.</summary>
    public IReadOnlyList<CurvePoint> OverTemperature(IEnumerable<double> temperaturesC) =>
        [.. temperaturesC.Select(celsius => At(Typical.With(Measures.DoughTemperature, celsius)))];

    /// <summary>
    /// The logged rise time of each bake used, moved by the fit to what it would have been with the typical dough's
    /// hydration, yeast, salt and sugar, at the mean over the blocks: what is left differs by dough temperature and chance.
    /// </summary>
    public IReadOnlyList<double> MinutesAsTypical()
    {
        var minutes = new double[Used.Count];
        for (var row = 0; row < minutes.Length; row++)
        {
            var settings = Measures.DoughTemperature.Of(Used[row]) is { } celsius
                ? Typical.With(Measures.DoughTemperature, celsius)
                : Typical;
            minutes[row] = Math.Exp(Fit.Combination(Fitted.Row(measure => settings[measure])).Estimate + Fit.Residuals[row]);
        }

        return minutes;
    }

    /// <summary>
    /// The looks at each bake, moved like <see cref="MinutesAsTypical"/>: the bakes used in their order, then stopped rises
    /// and rises ready at the first look as far as the fit knows their settings.
    /// </summary>
    public IReadOnlyList<RiseLook> LooksAsTypical() => RiseLook.Of(Fitted, Typical);

    /// <inheritdoc/>
    public override IReadOnlyList<double> Expected => [.. Fit.FittedValues.Select(Math.Exp)];

    private IEnumerable<AnswerCheck> AgainstTheTrade()
    {
        foreach (var band in TradeBand.All)
        {
            if (Coefficient(band.Term) is not { } term)
            {
                continue;
            }

            var inside = band.Contains(term.Estimate);
            yield return new AnswerCheck($"trade_band_{band.Term}", term.Estimate, inside, inside
                ? $"The term {band.Term} lies where the trade expects it ({band.Source})."
                : FormattableString.Invariant(
                    $"The term {band.Term} lies outside what the trade expects, {band.Low} to {band.High} ({band.Source})")
                    + (band.IsReachedBy(term.Interval(Level)) ? ", though its interval reaches that range." : "."));
        }
    }

    private IEnumerable<string> Remarks()
    {
        var spans = Fitted.Basis.Spans;
        if (spans > 0)
        {
            yield return $"{spans} of {UsedCount} rise times {(spans == 1 ? "is" : "are")} only known to lie between two looks; "
                + "the middle between them was taken.";
        }

        var stopped = Fitted.Basis.Stopped;
        if (stopped > 0)
        {
            yield return $"{stopped} {(stopped == 1 ? "rise was" : "rises were")} stopped before the dough was ready and left out; "
                + "slow doughs are the ones most often stopped, so the times read a little short.";
        }

        if (AllLooks is { } looks && ChangePct(1) is { } here)
        {
            yield return FormattableString.Invariant(
                $"With every look as it is, {looks.Bakes} bakes, stopped rises and wide spans among them, 1 °C warmer changes the time by ")
                + $"{Tenth(looks.ChangePctOfOneDegree.Value)} % ({EndsOf(looks.ChangePctOfOneDegree)}), against {Tenth(here.Value)} % ({EndsOf(here)}) here.";
        }

        foreach (var remark in CommonRemarks())
        {
            yield return remark;
        }
    }

    // All that is made of a slope here goes one way with it, so the ends of the slope's interval give the ends of its own.
    private Estimate? FromSlope(string term, Func<double, double> of)
    {
        if (Coefficient(term) is not { } slope)
        {
            return null;
        }

        var interval = slope.Interval(Level);
        var (one, other) = (of(interval.Low), of(interval.High));
        return new Estimate(of(slope.Estimate), Math.Min(one, other), Math.Max(one, other));
    }

    private static string EndsOf(Estimate estimate) => $"{End(estimate.Low)} to {End(estimate.High)}";

    private static string End(double? end) => end is { } value ? Tenth(value) : "no end";

    private static string Tenth(double value) => value.ToString("0.0", CultureInfo.InvariantCulture).Replace('-', '\u2212');

    private static Interval Minutes(Interval logarithms) => new(Math.Exp(logarithms.Low), Math.Exp(logarithms.High));

    private static string Spelled(string term) => term switch
    {
        RiseTime.DoughTemperatureTerm => $"dough temperature less {Cause.CentreTemperatureC} °C",
        RiseTime.HydrationTerm => $"hydration less {Cause.CentreHydrationPct} %",
        RiseTime.LogYeastTerm => "ln(yeast percent)",
        RiseTime.SaltTerm => "salt percent",
        RiseTime.SugarTerm => "sugar percent",
        _ => throw new ArgumentOutOfRangeException(nameof(term), term, "Not a term of this model."),
    };
}
