namespace BakeInsights;

/// <summary>Looks for the yeast and for the water that would make a day fit.</summary>
/// <param name="day">How long the parts take as planned.</param>
/// <param name="start">When weighing begins.</param>
/// <param name="finish">When everything has to be done.</param>
/// <param name="times">What the journal knows of times.</param>
/// <param name="settings">The dough as planned.</param>
internal sealed class SheetRemedies(BakingDay day, TimeOnly start, TimeOnly finish, SheetTimes times, DoughSettings settings)
{
    // Each step corrects what the last one missed by; it takes two or three.
    private const int MostSteps = 12;

    // Minutes that a plan may be over and still count as fitting: clocks on a sheet have no seconds.
    private const double EnoughMin = 0.5;

    /// <summary>The yeast; null where no sensible amount would do.</summary>
    /// <param name="riseMin">The first rise that would fit, its spread in proportion.</param>
    /// <param name="formula">The formula as planned.</param>
    public YeastRemedy? Yeast(double riseMin, Formula formula)
    {
        var (pct, grams) = (formula.YeastAsInstantPct, formula.GramsOf(IngredientRole.Yeast));
        if (pct <= 0)
        {
            return null;
        }

        for (var step = 0; step < MostSteps && riseMin > 1; step++)
        {
            var factor = YeastForTime.Yeast(1, day.FirstRise.UsualMin, riseMin, times.YeastExponent);
            if (factor > YeastRemedy.MostFactor)
            {
                return null;
            }

            // Where the journal can't say what yeast does, the trade's rule says it, and the spread goes in proportion.
            var changed = settings.With(Measures.Yeast, pct * factor);
            var rise = times.HasYeast
                ? times.Rise(changed, UnitSystem.Metric).Time
                : day.FirstRise.Times(riseMin / day.FirstRise.UsualMin);
            var latest = LatestWith(rise, changed);
            if (OverMin(latest) <= EnoughMin)
            {
                return new(grams * factor, pct * factor, factor, rise, latest);
            }

            riseMin -= OverMin(latest);
        }

        return null;
    }

    /// <summary>The warmer dough and its water; null where the journal can't say, or no dough short of too warm would do.</summary>
    /// <param name="riseMin">The first rise that would fit, its spread in proportion.</param>
    /// <param name="waterFor">The water for a dough; null where none can be named.</param>
    public WarmthRemedy? Warmth(double riseMin, Func<Temperature, NeededWater?> waterFor)
    {
        if (times.Slope is not (< 0 and var slope) || settings[Measures.DoughTemperature] is not { } celsius)
        {
            return null;
        }

        for (var step = 0; step < MostSteps && riseMin > 1; step++)
        {
            var warmer = celsius + (Math.Log(riseMin / day.FirstRise.UsualMin) / slope);
            if (warmer > TemperatureCoefficient.WarmestC || waterFor(Temperature.FromC(warmer)) is not { Plan.IsReached: true } water)
            {
                return null;
            }

            var changed = settings.With(Measures.DoughTemperature, warmer);
            var rise = times.Rise(changed, UnitSystem.Metric).Time;
            var latest = LatestWith(rise, changed);
            if (OverMin(latest) <= EnoughMin)
            {
                return water.Plan.IsTooWarmForYeast ? null : new(Temperature.FromC(warmer), water, rise, latest);
            }

            riseMin -= OverMin(latest);
        }

        return null;
    }

    // The proof goes with yeast and warmth too.
    private double LatestWith(Duration rise, DoughSettings changed) =>
        Timetable.From(day with { FirstRise = rise, Proof = times.Proof(changed).Time }, start).Finish.LatestMin;

    private double OverMin(double latestMin) => latestMin - finish.ToTimeSpan().TotalMinutes;
}
