namespace BakeInsights.Reports;

/// <summary>
/// Sliders that move what fits predict of one more bake; on paper and in plain text nothing, so the numbers that matter
/// stand in a table as well.
/// </summary>
/// <param name="Sliders">What can be moved.</param>
/// <param name="Models">What moves with it.</param>
/// <param name="DoughTemperatureC">The dough temperature where no slider sets it, in °C.</param>
/// <param name="HydrationPct">The hydration where no slider sets it, in percent.</param>
public sealed record ViewWhatIf(
    IReadOnlyList<WhatIfSlider> Sliders, IReadOnlyList<WhatIfModel> Models, double DoughTemperatureC, double HydrationPct) : ViewBlock;

/// <summary>A setting of the dough that can be moved, in the reader's unit.</summary>
/// <param name="Setting"><see cref="Measures.DoughTemperature"/> or <see cref="Measures.Hydration"/>.</param>
/// <param name="Unit">The reader's unit.</param>
/// <param name="Least">Where it ends below.</param>
/// <param name="Most">Where it ends above, a whole number of steps from <paramref name="Least"/>.</param>
/// <param name="Step">How far it moves at a time.</param>
/// <param name="Start">Where it stands at first.</param>
public sealed record WhatIfSlider(Measure Setting, DisplayUnit Unit, double Least, double Most, double Step, double Start)
{
    /// <summary>A place of the slider in the setting's canonical unit.</summary>
    public double Canonical(double place) => (place - Unit.Offset) / Unit.Factor;
}

/// <summary>A fit whose prediction moves.</summary>
/// <param name="Result">What it predicts.</param>
/// <param name="Unit">The reader's unit.</param>
/// <param name="Polynomial">The fit.</param>
/// <param name="AtStart">What it predicts at the sliders' first places, in the canonical unit.</param>
public sealed record WhatIfModel(Measure Result, DisplayUnit Unit, AnswerPolynomial Polynomial, CurvePoint AtStart);
