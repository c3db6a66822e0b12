using BakeInsights.Inference;
using C = BakeInsights.BakeColumns;

namespace BakeInsights;

/// <summary>How long the steps of a day take in this kitchen.</summary>
internal sealed class SheetTimes
{
    // Common practice, no source: a dough of 24 °C with 1 % instant yeast, and the second rise of a straight dough.
    private static readonly Duration UsualRise = new(90, 60, 150);
    private static readonly Duration UsualProof = new(45, 30, 65);
    private const double UsualBakingMin = 36;

    // A journal whose yeast does less than this is not followed: half the time would take ten times the yeast. Our own choice.
    private const double LeastYeastExponent = 0.3;

    // Past this, an interval says nothing that a baker could plan with.
    private const double LongestMin = 1_440;

    private readonly IReadOnlyList<Bake> _bakes;
    private readonly RiseTimeAnswer? _rise;
    private readonly string _whyNoRise;
    private readonly FittedModel? _proof;

    public SheetTimes(IReadOnlyList<Bake> bakes)
    {
        _bakes = bakes;
        _rise = RiseTime.Ask(bakes).TryGet(out var answer, out var problem) ? answer : null;
        _whyNoRise = problem?.Message ?? "";
        _proof = FittedModel.Make(ProofTime.Question, bakes).Match<FittedModel?>(found => found, _ => null);
    }

    /// <summary>The settings in the middle of the journal.</summary>
    public DoughSettings Typical => _rise?.Typical ?? DoughSettings.MedianOf(_bakes);

    /// <summary>Percent by which the rise changes with one degree.</summary>
    public Estimate? ChangePctPerDegree => _rise?.ChangePct(1);

    /// <summary>The coefficient of dough temperature on ln(rise time); null when the journal can't tell.</summary>
    public double? Slope => _rise?.Coefficient(RiseTime.DoughTemperatureTerm)?.Estimate;

    /// <summary>The exponent of yeast: the journal's where it lies in what the trade expects, else the trade's.</summary>
    public double YeastExponent => _rise?.Coefficient(RiseTime.LogYeastTerm)?.Estimate is { } slope && HasYeast ? -slope : YeastForTime.TradeExponent;

    /// <summary>Whether the journal itself says what yeast does, in a way to plan with.</summary>
    public bool HasYeast => _rise?.Coefficient(RiseTime.LogYeastTerm) is { Estimate: < -LeastYeastExponent };

    /// <summary>The first rise of a dough.</summary>
    /// <param name="settings">Its settings.</param>
    /// <param name="units">The units of the remarks.</param>
    public SheetRise Rise(DoughSettings settings, UnitSystem units)
    {
        if (_rise is not null && !(settings[Measures.Yeast] == 0 && _rise.Coefficient(RiseTime.LogYeastTerm) is not null))
        {
            var point = _rise.At(settings);
            if (point.Prediction.High <= LongestMin)
            {
                return new(Of(point.Estimate, point.Prediction), _rise.UsedCount, true, [.. OutsideOf(settings, units)]);
            }

            return Plain(C.Rise, UsualRise, $"The fit's interval reaches past {LongestMin / 60:0} hours, so the bakes as they were stand here.");
        }

        return Plain(C.Rise, UsualRise, _rise is null ? _whyNoRise : "A dough without baker's yeast is none that the journal's fit knows.");
    }

    /// <summary>The proof of a dough.</summary>
    public SheetRise Proof(DoughSettings settings)
    {
        if (_proof is not null && _proof.Selection.Terms.All(term => term.ValueFrom(measure => settings[measure]) is not null))
        {
            var row = _proof.Row(measure => settings[measure]);
            var interval = _proof.Fit.PredictionInterval(row, ModelAnswer.Level);
            if (Math.Exp(interval.High) <= LongestMin)
            {
                return new(
                    Of(Math.Exp(_proof.Fit.Combination(row).Estimate), new(Math.Exp(interval.Low), Math.Exp(interval.High))), _proof.Basis.Used, true, []);
            }
        }

        return Plain(C.Proof, UsualProof, "The journal can't support a fit of its time.");
    }

    /// <summary>The oven: its minutes are set by the baker, so they have no spread.</summary>
    public Duration Baking => Duration.Exactly(MedianOf(C.Baking) ?? UsualBakingMin);

    /// <summary>The median of a column; null without a value.</summary>
    public double? MedianOf(QuantityColumn column) =>
        _bakes.Select(bake => bake[column]).Known().ToList() is { Count: > 0 } known ? Quantiles.Median(known) : null;

    private static Duration Of(double usual, Interval prediction) =>
        new(usual, Math.Min(usual, prediction.Low), Math.Max(usual, prediction.High));

    private SheetRise Plain(QuantityColumn column, Duration practice, string why)
    {
        var known = _bakes.Where(bake => !(bake[C.Cold] > 0)).Select(bake => bake[column]).Known().Where(minutes => minutes > 0).ToList();
        return known.Count == 0
            ? new(practice, 0, false, [why, "The times are common practice, not this kitchen's."])
            : new(new(Quantiles.Median(known), known.Min(), known.Max()), known.Count, false, [why]);
    }

    private IEnumerable<string> OutsideOf(DoughSettings settings, UnitSystem units)
    {
        foreach (var measure in settings.Known)
        {
            if (settings[measure] is not { } value || _rise!.RangeOf(measure) is not { } range || measure == Measures.ProofTime
                || !_rise.Terms.Any(term => TermOf(measure) == term.Name))
            {
                continue;
            }

            var unit = DisplayUnit.For(measure.Dimension, units);
            string Text(double canonical) => unit.Value(canonical).ToString("F" + unit.Decimals, System.Globalization.CultureInfo.InvariantCulture);
            if (Text(value) != Text(Math.Clamp(value, range.Least, range.Most)))
            {
                yield return $"{measure.Title} of {Text(value)} {unit.Label} is outside what the journal's bakes had "
                    + $"({Text(range.Least)} to {Text(range.Most)} {unit.Label}): the rise time there is a guess along the line.";
            }
        }
    }

    private static string TermOf(Measure measure) =>
        measure == Measures.DoughTemperature ? RiseTime.DoughTemperatureTerm
        : measure == Measures.Hydration ? RiseTime.HydrationTerm
        : measure == Measures.Yeast ? RiseTime.LogYeastTerm
        : measure == Measures.Salt ? RiseTime.SaltTerm
        : RiseTime.SugarTerm;
}
