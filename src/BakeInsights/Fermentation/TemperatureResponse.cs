namespace BakeInsights;

/// <summary>How fast something goes at each temperature: a dough's rise, or the growth of its yeast.</summary>
/// <remarks>
/// Growth is not gassing. Curves of growth come from cells dividing in a liquid; a dough rises by the gas of cells
/// that hardly divide (in two hours at 27 °C their number stays the same), and gassing goes on rising to 36 to 39 °C
/// where growth already falls. So a curve is used only for what it was measured on.
/// </remarks>
public abstract record TemperatureResponse
{
    private protected TemperatureResponse(Temperature coldest, Temperature warmest, string purpose)
    {
        if (coldest >= warmest)
        {
            throw new ArgumentOutOfRangeException(
                nameof(coldest), coldest, FormattableString.Invariant($"The range must end above its start; it ends at {warmest}."));
        }

        ArgumentException.ThrowIfNullOrWhiteSpace(purpose);
        Coldest = coldest;
        Warmest = warmest;
        Purpose = purpose;
    }

    /// <summary>The lower end of the range that the response holds in.</summary>
    public Temperature Coldest { get; }

    /// <summary>The upper end of the range that the response holds in.</summary>
    public Temperature Warmest { get; }

    /// <summary>What it is for, with its source.</summary>
    public string Purpose { get; }

    /// <summary>Whether the response holds at a temperature.</summary>
    public bool HoldsAt(Temperature temperature) => Coldest <= temperature && temperature <= Warmest;

    /// <summary>
    /// The rate, not negative. Its unit is the model's own: only ratios of two rates of one response mean anything.
    /// Given outside the range too, where it is an extrapolation.
    /// </summary>
    public abstract double Rate(Temperature temperature);
}
