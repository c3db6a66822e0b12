using BakeInsights.Inference;

namespace BakeInsights;

/// <summary>A result that a baker wishes for, between bounds.</summary>
public sealed record TuneGoal
{
    private TuneGoal(TunedResult result, double? low, double? high) => (Tuned, Low, High) = (result, low, high);

    /// <summary>What is wished for.</summary>
    public Measure Result => Tuned.Question.Result;

    /// <summary>The least that will do, in the result's canonical unit; null where nothing is too little.</summary>
    public double? Low { get; }

    /// <summary>The most that will do, in the result's canonical unit; null where nothing is too much.</summary>
    public double? High { get; }

    /// <summary>The result's model.</summary>
    internal TunedResult Tuned { get; }

    /// <summary>The bounds on the model's scale.</summary>
    internal Interval Within => new(
        Low is { } low ? Tuned.Question.Scale.Of(low) : double.NegativeInfinity,
        High is { } high ? Tuned.Question.Scale.Of(high) : double.PositiveInfinity);

    /// <summary>The dough is ready after so many minutes of its first rise, or sooner.</summary>
    /// <exception cref="ArgumentOutOfRangeException">The minutes are not above 0.</exception>
    public static TuneGoal ReadyWithin(double minutes)
    {
        ArgumentOutOfRangeException.ThrowIfNegativeOrZero(minutes);
        return new(TunedResult.RiseTime, null, minutes);
    }

    /// <summary>The loaf has a specific volume of at least this, in mL/g.</summary>
    /// <exception cref="ArgumentOutOfRangeException">The volume is not above 0.</exception>
    public static TuneGoal VolumeAtLeast(double millilitresPerGram)
    {
        ArgumentOutOfRangeException.ThrowIfNegativeOrZero(millilitresPerGram);
        return new(TunedResult.LoafVolume, millilitresPerGram, null);
    }

    /// <summary>The crumb score of the bakes lies between two scores, taken as a plain number.</summary>
    /// <exception cref="ArgumentException">The first is above the second.</exception>
    public static TuneGoal CrumbBetween(double low, double high) => low <= high
        ? new(TunedResult.Crumb, low, high)
        : throw new ArgumentException($"A crumb between {low} and {high} can't be.", nameof(low));

    /// <summary>The same result with another bound where it has one; the lower where it has two.</summary>
    internal TuneGoal At(double bound) => Low is null ? new(Tuned, null, bound) : new(Tuned, bound, High);
}
