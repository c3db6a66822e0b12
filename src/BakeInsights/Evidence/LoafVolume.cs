using BakeInsights.Inference;

namespace BakeInsights;

/// <summary>The question what moved the volume of the loaf.</summary>
public static class LoafVolume
{
    /// <summary>The term of hydration.</summary>
    public const string HydrationTerm = "hydration";

    /// <summary>The term of the dough's temperature.</summary>
    public const string DoughTemperatureTerm = "dough_temperature";

    /// <summary>The term of hydration squared.</summary>
    public const string HydrationSquaredTerm = "hydration_squared";

    /// <summary>The term of the dough's temperature squared.</summary>
    public const string DoughTemperatureSquaredTerm = "dough_temperature_squared";

    /// <summary>The term of hydration times dough temperature.</summary>
    public const string ProductTerm = "hydration_x_dough_temperature";

    internal static Question Question { get; } = new(
        Measures.SpecificVolume,
        "loaf volume",
        Measures.SpecificVolume.Of,
        ResultScale.Plain,
        "mL/g",
        [new("no loaf volume or loaf weight", bake => Measures.SpecificVolume.Of(bake) is null)],
        [
            CandidateTerm.Line(HydrationTerm, "mL/g per percent of flour", Cause.Hydration),
            CandidateTerm.Line(DoughTemperatureTerm, "mL/g per °C", Cause.DoughTemperature),
            CandidateTerm.Square(HydrationSquaredTerm, "mL/g per (percent of flour)²", Cause.Hydration),
            CandidateTerm.Square(DoughTemperatureSquaredTerm, "mL/g per (°C)²", Cause.DoughTemperature),
            CandidateTerm.Product(ProductTerm, "mL/g per (percent of flour x °C)", Cause.Hydration, Cause.DoughTemperature),
        ]);

    /// <summary>
    /// Fits specific volume on hydration and dough temperature, with their squares and product where the bakes have
    /// enough levels of each for a curve.
    /// </summary>
    public static Attempt<LoafVolumeAnswer> Ask(IReadOnlyList<Bake> bakes)
    {
        ArgumentNullException.ThrowIfNull(bakes);
        return FittedModel.Make(Question, bakes).Select(model => new LoafVolumeAnswer(model));
    }
}
