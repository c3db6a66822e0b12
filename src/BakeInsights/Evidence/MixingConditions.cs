namespace BakeInsights;

/// <summary>Under what conditions a dough is mixed.</summary>
/// <param name="Flour">The flour's temperature.</param>
/// <param name="Room">The room's temperature.</param>
public sealed record MixingConditions(Temperature Flour, Temperature Room)
{
    private readonly double? _mixMin;

    /// <summary>Minutes of mixing, not negative; null for as long as usual: the journal's median, or 8 without one.</summary>
    public double? MixMin
    {
        get => _mixMin;
        init
        {
            if (value is { } minutes && !(minutes >= 0 && double.IsFinite(minutes)))
            {
                throw new ArgumentOutOfRangeException(nameof(value), value, "Minutes of mixing are a finite number, not negative.");
            }

            _mixMin = value;
        }
    }
}
