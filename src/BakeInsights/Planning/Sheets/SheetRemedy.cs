namespace BakeInsights;

/// <summary>One change that makes a day fit: more yeast, or a warmer dough. Each by itself is enough.</summary>
/// <param name="Rise">The first rise that it brings.</param>
/// <param name="FinishLatestMin">When the bread is then cut at the latest, in minutes after midnight.</param>
public abstract record SheetRemedy(Duration Rise, double FinishLatestMin);

/// <summary>More yeast.</summary>
/// <param name="YeastG">The yeast of the formula's kind, in grams.</param>
/// <param name="YeastPct">In percent of all flour, as instant yeast.</param>
/// <param name="Factor">In how many times the amount.</param>
/// <param name="Rise">The first rise that it brings.</param>
/// <param name="FinishLatestMin">When the bread is then cut at the latest.</param>
public sealed record YeastRemedy(double YeastG, double YeastPct, double Factor, Duration Rise, double FinishLatestMin)
    : SheetRemedy(Rise, FinishLatestMin)
{
    /// <summary>The trade's rule holds for changes up to about two times; see <see cref="YeastForTime.TradeExponent"/>.</summary>
    public const double RuleHoldsTo = 2;

    /// <summary>More than this many times the yeast is not proposed: the bread would be another. Our own choice.</summary>
    public const double MostFactor = 4;
}

/// <summary>A warmer dough, by warmer water.</summary>
/// <param name="Dough">The dough at the end of mixing.</param>
/// <param name="Water">The water for it.</param>
/// <param name="Rise">The first rise that it brings.</param>
/// <param name="FinishLatestMin">When the bread is then cut at the latest.</param>
public sealed record WarmthRemedy(Temperature Dough, NeededWater Water, Duration Rise, double FinishLatestMin)
    : SheetRemedy(Rise, FinishLatestMin);
