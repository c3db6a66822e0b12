using BakeInsights.Inference;

namespace BakeInsights;

/// <summary>Asks the rise-time model backwards: what makes the dough ready after a wanted time.</summary>
/// <remarks>
/// The model is a straight line in dough temperature and in ln(yeast), so the setting is a ratio of two estimates, with
/// the set of Fieller (1954), Journal of the Royal Statistical Society B 16, 175-185: the values at which the mean of
/// many such doughs can't be told from the time wanted. With a model of one cause it is calibration by a line
/// (<see cref="InversePrediction"/>).
/// </remarks>
public static class ReadyBy
{
    /// <summary>Asks.</summary>
    /// <param name="bakes">The journal's bakes.</param>
    /// <param name="minutes">Minutes of first rise wanted, above 0.</param>
    /// <param name="house">The house formula; null for the journal's typical dough.</param>
    /// <param name="kitchen">The kitchen on the day; null for the journal's usual one, as far as it is known.</param>
    /// <returns>The answer, or why the rise time can't be modelled.</returns>
    public static Attempt<ReadyByAnswer> Ask(IReadOnlyList<Bake> bakes, double minutes, DoughSettings? house = null, TuneKitchen? kitchen = null)
    {
        ArgumentNullException.ThrowIfNull(bakes);
        ArgumentOutOfRangeException.ThrowIfNegativeOrZero(minutes);
        return FittedModel.Make(RiseTime.Question, bakes).Select(model =>
        {
            var typical = DoughSettings.MiddleOf(model.Ranges);
            var dough = DoughSettings.Settable.Aggregate(typical, (settings, one) => house?[one] is { } value ? settings.With(one, value) : settings);
            return new ReadyByAnswer(model, minutes, dough, kitchen ?? TuneKitchen.Usual(bakes), bakes);
        });
    }
}
