using BakeInsights.Inference;

namespace BakeInsights;

/// <summary>What makes a dough ready after a wanted time, one setting at a time.</summary>
public sealed class ReadyByAnswer
{
    private readonly FittedModel _model;
    private readonly KitchenDoughTemperature? _learned;

    internal ReadyByAnswer(FittedModel model, double minutes, DoughSettings dough, TuneKitchen? kitchen, IReadOnlyList<Bake> bakes)
    {
        (_model, Minutes, House, Kitchen) = (model, minutes, dough, kitchen);
        _learned = kitchen is not null && KitchenDoughTemperature.Learn(bakes).TryGet(out var learned, out _) ? learned : null;
        AsItIs = At(dough);
        DoughTemperature = Solve(Measures.DoughTemperature, RiseTime.DoughTemperatureTerm, x => x + ModelAnswer.CentreTemperatureC);
        Yeast = Solve(Measures.Yeast, RiseTime.LogYeastTerm, Math.Exp);
    }

    /// <summary>The minutes wanted.</summary>
    public double Minutes { get; }

    /// <summary>The formula of which one setting is changed.</summary>
    public DoughSettings House { get; }

    /// <summary>What to expect of it unchanged, in minutes.</summary>
    public CurvePoint AsItIs { get; }

    /// <summary>The kitchen reckoned with; null where none is known.</summary>
    public TuneKitchen? Kitchen { get; }

    /// <summary>How many bakes it rests on.</summary>
    public int Used => _model.Basis.Used;

    /// <summary>The dough temperature, in °C; null where the journal can't tell its effect.</summary>
    public NeededSetting? DoughTemperature { get; }

    /// <summary>The yeast as instant yeast, in percent of flour; null where the journal can't tell its effect.</summary>
    public NeededSetting? Yeast { get; }

    /// <summary>Whether one of the two is among the values that were baked.</summary>
    public bool IsPossible => DoughTemperature is { IsBaked: true } || Yeast is { IsBaked: true };

    /// <summary>The water for the dough temperature needed; null where no kitchen is known or no temperature needed.</summary>
    /// <param name="waterG">Water of the dough, in grams.</param>
    public Attempt<NeededWater>? WaterFor(double waterG) => _learned is not null && DoughTemperature is { IsBaked: true } needed
        ? _learned.WaterFor(Temperature.FromC(needed.OnAverage.Value), Kitchen!.Conditions, Kitchen.Water, waterG)
        : null;

    private NeededSetting? Solve(Measure setting, string term, Func<double, double> back)
    {
        var place = _model.Selection.Terms.Index().Where(one => one.Item.Name == term).Select(one => one.Index + 1).FirstOrDefault();
        if (place == 0 || _model.Ranges.FirstOrDefault(range => range.Measure == setting) is not { } baked)
        {
            return null;
        }

        double[] rest = [.. _model.Row(measure => measure == setting ? back(0) : House[measure])];
        rest[place] = 0;
        double[] unit = [.. rest.Select((_, j) => j == place ? 1.0 : 0)];
        var (level, slope) = (_model.Fit.Combination(rest), _model.Fit.Combination(unit));
        if (slope.Estimate == 0)
        {
            return null;
        }

        var numerator = level with { Estimate = Math.Log(Minutes) - level.Estimate };
        var set = RatioInterval.Fieller(numerator, slope, -_model.Fit.Covariance(rest, unit), ModelAnswer.Level);
        var value = back(set.Estimate!.Value);
        var isBaked = value >= baked.Least && value <= baked.Most;
        double[] ends = [baked.Least, baked.Most];
        return new NeededSetting(
            setting,
            new Estimate(value, set.Low is { } low ? back(low) : null, set.High is { } high ? back(high) : null),
            isBaked,
            Safe(setting, ends, slope.Estimate < 0),
            baked,
            At(House.With(setting, Math.Clamp(value, baked.Least, baked.Most))));
    }

    // The setting nearest to the middle of the bakes with which nine doughs in ten are ready in time.
    private double? Safe(Measure setting, double[] ends, bool falls)
    {
        const int halvings = 40;

        // Of an interval that holds eight in ten, one in ten lies above.
        const double central = (2 * Tuning.SafeChance) - 1;
        double Latest(double value) =>
            Math.Exp(_model.Fit.PredictionInterval(_model.Row(measure => measure == setting ? value : House[measure]), central).High);
        var (slow, fast) = falls ? (ends[0], ends[1]) : (ends[1], ends[0]);
        if (Latest(fast) > Minutes)
        {
            return null;
        }

        for (var step = 0; step < halvings; step++)
        {
            var middle = (slow + fast) / 2;
            (slow, fast) = Latest(middle) <= Minutes ? (slow, middle) : (middle, fast);
        }

        return fast;
    }

    private CurvePoint At(DoughSettings dough)
    {
        var row = _model.Row(measure => dough[measure]);
        Interval Minutes(Interval logarithms) => new(Math.Exp(logarithms.Low), Math.Exp(logarithms.High));
        return new CurvePoint(
            null,
            Math.Exp(_model.Fit.Combination(row).Estimate),
            Minutes(_model.Fit.MeanInterval(row, ModelAnswer.Level)),
            Minutes(_model.Fit.PredictionInterval(row, ModelAnswer.Level)));
    }
}

/// <summary>The value of one setting that makes a dough ready in time, the others as in the house formula.</summary>
/// <param name="Setting">The setting.</param>
/// <param name="OnAverage">
/// The value at which half of the doughs are ready in time, in the setting's canonical unit, and the values that can't be
/// told from it. An end is null where the journal doesn't bound it.
/// </param>
/// <param name="IsBaked">Whether it lies within the values that were baked.</param>
/// <param name="Safe">The value with which nine doughs in ten are ready in time; null where none that was baked is.</param>
/// <param name="Baked">The values that were baked.</param>
/// <param name="Nearest">What to expect, in minutes, at the value or the nearest that was baked.</param>
public sealed record NeededSetting(
    Measure Setting, Estimate OnAverage, bool IsBaked, double? Safe, SettingRange Baked, CurvePoint Nearest);
