using System.Globalization;
using BakeInsights.Inference;

namespace BakeInsights;

/// <summary>The water that brings a kitchen's dough to a temperature.</summary>
public sealed class NeededWater
{
    private readonly KitchenWater _kitchen;
    private readonly int _bakes;
    private readonly IReadOnlyList<LoggedRange> _ranges;

    internal NeededWater(
        Temperature target, MixingConditions conditions, Estimate waterC, KitchenWater kitchen, WaterPlan plan, CurvePoint dough, int bakes, IReadOnlyList<LoggedRange> ranges)
    {
        (Target, Conditions, WaterC, Plan, Dough) = (target, conditions, waterC, plan, dough);
        (_kitchen, _bakes, _ranges) = (kitchen, bakes, ranges);
    }

    /// <summary>The dough that is wanted.</summary>
    public Temperature Target { get; }

    /// <summary>Flour, room and mixing time that it is for, the usual time filled in.</summary>
    public MixingConditions Conditions { get; }

    /// <summary>
    /// The water in °C, with an interval of <see cref="ModelAnswer.Level"/>; see <see cref="IntervalMeaning"/>. An end is
    /// null where the slope on water can hardly be told from zero.
    /// </summary>
    /// <remarks>Method: <see cref="PriorInverse"/>.</remarks>
    public Estimate WaterC { get; }

    /// <summary>How to draw it from the taps, and what they reach.</summary>
    public WaterPlan Plan { get; }

    /// <summary>The dough that comes of the water that the kitchen reaches, in °C; its X is that water.</summary>
    public CurvePoint Dough { get; }

    /// <summary>What the interval of <see cref="WaterC"/> says.</summary>
    public const string IntervalMeaning =
        "The interval holds, with a probability of 95 % by physics and journal together, the water that brings the mean of many such "
        + "doughs to the temperature wanted. One dough by itself scatters more: its own range is that of one more dough.";

    /// <summary>What to mind, a sentence each; empty when nothing.</summary>
    public IReadOnlyList<string> Warnings(UnitSystem system)
    {
        List<string> warnings = [];
        if (_bakes == 0)
        {
            warnings.Add("No bake of this kitchen is behind this: it is the physical balance alone.");
        }

        (DoughCause Cause, double Value)[] values =
        [
            (DoughCause.Water, Plan.Reached.C), (DoughCause.Flour, Conditions.Flour.C), (DoughCause.Room, Conditions.Room.C),
            (DoughCause.Mixing, Conditions.MixMin!.Value),
        ];
        warnings.AddRange(values
            .Select(asked => _ranges.FirstOrDefault(range => range.Cause == asked.Cause)?.Warning(asked.Value, system))
            .OfType<string>());
        if (WaterC.Low is null || WaterC.High is null)
        {
            warnings.Add("The water's interval has an open end: the bakes leave in doubt that warmer water makes a warmer dough.");
        }

        if (Plan.IceG > 0)
        {
            warnings.Add($"The cold tap gives {_kitchen.Cold.Text(system)}, too warm: put {Grams(Plan.IceG, system)} of ice in place of as much water.");
        }

        warnings.AddRange(Plan.Warnings(system));
        if (!Plan.IsReached)
        {
            warnings.Add($"With water of {Plan.Reached.Text(system)}, the kitchen's limit, expect a dough of "
                + $"{Temperature.FromC(Dough.Estimate).Text(system)} in place of {Target.Text(system)}.");
        }

        return warnings;
    }

    private static string Grams(double grams, UnitSystem system)
    {
        var unit = DisplayUnit.For(Dimension.Mass, system);
        return unit.Value(grams).ToString("F" + unit.Decimals, CultureInfo.InvariantCulture) + " " + unit.Label;
    }
}
