using BakeInsights.Inference;

namespace BakeInsights;

/// <summary>How warm this kitchen's dough gets: learned from its bakes, held together by physics where they are few.</summary>
/// <remarks>
/// dough = 24 °C + warming + water x (water - 24) + flour x (flour - 24) + room x (room - 24) + mixing x (minutes - 8),
/// a straight line in temperatures in °C. Physics and trade figures give each of the five parts a normal prior
/// (<see cref="CausePart.Source"/>), the doughs' scatter about the line has a log-normal one, and the bakes move them
/// (<see cref="FullPriorRegression"/>): without a bake the physical balance speaks alone, with many it is least squares.
/// The doughs are taken as alike: one mixer, sizes and hydrations that don't go with the temperatures.
/// </remarks>
public sealed class KitchenDoughTemperature
{
    /// <summary>The minutes of mixing that the model counts from.</summary>
    public const double CentreMixMin = DoughCause.CentreMixMin;

    private readonly DoughTemperatureBakes _bakes;
    private readonly FullPriorFit _fit;

    private KitchenDoughTemperature(DoughTemperatureBakes bakes, FullPriorFit fit)
    {
        (_bakes, _fit) = (bakes, fit);
        var alone = new JournalAlone(bakes);
        Parts = [.. DoughCause.All.Select((cause, place) => Part(cause, place, alone))];
        Expected = [.. Used.Select(bake => MeanC(bakes.Row(bake)))];
        Ranges = Used.Count == 0 ? [] : [.. DoughCause.All.Skip(1).Where(IsCounted).Select(cause => LoggedRange.Of(cause, bakes.ValuesOf(cause)))];
    }

    /// <summary>The bakes that it rests on.</summary>
    public IReadOnlyList<Bake> Used => _bakes.Kept;

    /// <summary>The bakes that it does not rest on, by reason.</summary>
    public IReadOnlyList<LeftOutBakes> LeftOutBakes => _bakes.LeftOut;

    /// <summary>The part of each cause: warming, water, flour, room, mixing.</summary>
    public IReadOnlyList<CausePart> Parts { get; }

    /// <summary>The dough temperature that is expected of each bake used, in °C.</summary>
    public IReadOnlyList<double> Expected { get; }

    /// <summary>How much single doughs scatter about the line: the mean of what is believed of the standard deviation.</summary>
    public TemperatureDifference Scatter => TemperatureDifference.FromC(_fit.Summary.ResidualStandardDeviation!.Value);

    /// <summary>Minutes of mixing that are taken where none are given: the journal's median, or 8 without one.</summary>
    public double UsualMixMin => RangeOf(DoughCause.Mixing)?.Middle ?? DoughCause.CentreMixMin;

    /// <summary>The values that the bakes used had of each cause.</summary>
    internal IReadOnlyList<LoggedRange> Ranges { get; }

    internal string WhyNoMixing => _bakes.WhyNoMixing;

    /// <summary>Learns from bakes; none at all will do.</summary>
    /// <param name="bakes">The bakes. Those that lack a temperature, or have a preferment, milk or egg, are left out and named.</param>
    /// <returns>What was learned, or a problem with the numbers.</returns>
    public static Attempt<KitchenDoughTemperature> Learn(IReadOnlyList<Bake> bakes)
    {
        ArgumentNullException.ThrowIfNull(bakes);
        var rows = new DoughTemperatureBakes(bakes);
        return FullPriorRegression
            .Fit(
                [.. DoughCause.All.Select(cause => cause.Prior)],
                DoughCause.Scatter,
                [.. rows.Kept.Select(rows.Row)],
                [.. rows.Kept.Select(ResponseOf)])
            .Select(fit => new KitchenDoughTemperature(rows, fit));
    }

    /// <summary>The part of a cause.</summary>
    /// <param name="name">warming, water, flour, room or mixing.</param>
    /// <exception cref="ArgumentException">There is no such cause.</exception>
    public CausePart Part(string name) => Parts.FirstOrDefault(part => part.Name == name)
        ?? throw new ArgumentException($"No cause is named {name}; there are {string.Join(", ", Parts.Select(part => part.Name))}.", nameof(name));

    /// <summary>
    /// The dough's temperature in °C with water of this temperature: its mean over many such doughs, and where one more
    /// comes to lie, each with an interval of <see cref="ModelAnswer.Level"/>.
    /// </summary>
    public CurvePoint At(Temperature water, MixingConditions conditions)
    {
        ArgumentNullException.ThrowIfNull(conditions);
        var row = Row(water, conditions);
        return new CurvePoint(
            water.C,
            MeanC(row),
            FromCentre(_fit.Combination(row).Interval(ModelAnswer.Level)),
            FromCentre(_fit.Prediction(row).Interval(ModelAnswer.Level)));
    }

    /// <summary>The water that brings the dough to a temperature, and how to draw it.</summary>
    /// <param name="dough">The dough wanted at the end of mixing.</param>
    /// <param name="conditions">Flour, room and mixing time.</param>
    /// <param name="kitchen">The taps and the ice.</param>
    /// <param name="waterG">Water of the formula, in grams, more than nothing.</param>
    /// <returns>The water, or a problem: the bakes show no warmer dough from warmer water.</returns>
    public Attempt<NeededWater> WaterFor(Temperature dough, MixingConditions conditions, KitchenWater kitchen, double waterG)
    {
        ArgumentNullException.ThrowIfNull(conditions);
        ArgumentNullException.ThrowIfNull(kitchen);
        var place = DoughCause.Water.Place;
        var row = Row(Temperature.FromC(DoughCause.Water.Centre), conditions);
        var needed = _fit.ValueFor(place, row, dough.C - Cause.CentreTemperatureC, ModelAnswer.Level);
        if (Parts[place].Together.Value <= 0 || needed.Estimate is not { } estimate)
        {
            return new FitProblem(
                FitProblemKind.NoSpread,
                [BakeColumns.WaterTemp.Name],
                "The bakes show no warmer dough from warmer water, so no water can be named.",
                $"Look for temperatures in the wrong column, and log bakes whose {BakeColumns.WaterTemp.Name} differs by several degrees.");
        }

        var water = new Estimate(estimate, needed.Low, needed.High).Through(counted => DoughCause.Water.Centre + counted);
        var plan = kitchen.Draw(Temperature.FromC(water.Value), waterG);
        return new NeededWater(
            dough,
            conditions with { MixMin = conditions.MixMin ?? UsualMixMin },
            water,
            kitchen,
            plan,
            At(plan.Reached, conditions),
            Used.Count,
            [.. Ranges]);
    }

    /// <summary>What a reader has to bear in mind, one sentence each.</summary>
    public IReadOnlyList<string> Caveats(UnitSystem system) => [.. KitchenDoughCaveats.Of(this, system)];

    /// <summary>The response of a bake that has a dough temperature, counted from the centre.</summary>
    internal static double ResponseOf(Bake bake) => bake[BakeColumns.DoughTemp]!.Value - Cause.CentreTemperatureC;

    internal LoggedRange? RangeOf(DoughCause cause) => Ranges.FirstOrDefault(range => range.Cause == cause);

    private bool IsCounted(DoughCause cause) => cause != DoughCause.Mixing || _bakes.CountsMixing;

    private double[] Row(Temperature water, MixingConditions conditions) =>
        _bakes.Row(water.C, conditions.Flour.C, conditions.Room.C, conditions.MixMin ?? UsualMixMin);

    private double MeanC(double[] row) => Cause.CentreTemperatureC + _fit.Combination(row).Mean;

    private CausePart Part(DoughCause cause, int place, JournalAlone alone)
    {
        var term = alone.Of(cause);
        return new CausePart(
            cause.Name,
            cause.Title,
            Estimate.Of(_fit.Before(place)),
            cause.Source,
            term is null ? null : Estimate.Of(term.DataAlone),
            alone.WhyNot(cause),
            Estimate.Of(Used.Count == 0 ? _fit.Before(place) : _fit.Coefficient(place)),
            alone.ConflictOf(cause));
    }

    private static Interval FromCentre(Interval counted) =>
        new(Cause.CentreTemperatureC + counted.Low, Cause.CentreTemperatureC + counted.High);
}
