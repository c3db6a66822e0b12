namespace BakeInsights.Reports;

/// <summary>What a reader of a tuned formula has to bear in mind.</summary>
internal static class TuneRemarks
{
    public static IEnumerable<string> Of(TuneAnswer answer, Figures figures)
    {
        yield return "A chance counts what the journal leaves open and the next bake's own luck, for a dough that comes out as set. In brackets: where "
            + "it would lie, were the kitchen's effects known (95 %).";
        foreach (var model in answer.Models)
        {
            yield return $"The {model.Result} rests on {JournalView.Count(model.Used, "bake")}"
                + string.Concat(model.LeftOutTerms.Select(left => $"; not in its model: {left.Name.Replace('_', ' ')}. {left.Reason}".TrimEnd('.'))) + ".";
        }

        if (!answer.House.IsBaked)
        {
            yield return "The house formula lies outside the doughs that were baked, so its chance is a guess; only doughs among those baked are advised.";
        }

        if (answer.Correlation is { } together)
        {
            yield return $"What the models can't explain of the two results goes together with a correlation of {Figures.Rounded(together.Value, 2)} "
                + $"({Figures.Range(together.Low, together.High, 2)}); that is counted in.";
        }

        if (answer.Kitchen is { } kitchen)
        {
            yield return $"Reckoned with a room of {figures.WithUnit(Dimension.Temperature, kitchen.Conditions.Room.C)}, flour of "
                + $"{figures.WithUnit(Dimension.Temperature, kitchen.Conditions.Flour.C)} and water from {figures.WithUnit(Dimension.Temperature, kitchen.Water.Cold.C)} to "
                + $"{figures.WithUnit(Dimension.Temperature, kitchen.Water.Hot.C)}; grams of water are for 1,000 g of flour.";
        }
        else
        {
            yield return "The journal has no room and water temperatures, so no water can be named.";
        }

        yield return "Formulas are looked for among doughs that were baked, and no further. " + ModelAnswer.NotACause;
    }
}
