using BakeInsights.Inference;

namespace BakeInsights;

/// <summary>What the sheet of one bake says: values only, no words and no layout.</summary>
public sealed record Sheet
{
    /// <summary>The bench's or the bake's name; empty without one.</summary>
    public required string Name { get; init; }

    /// <summary>The journal's name.</summary>
    public required string Journal { get; init; }

    /// <summary>The formula's name; empty for the journal's typical dough.</summary>
    public required string FormulaName { get; init; }

    /// <summary>What is weighed.</summary>
    public required Formula Formula { get; init; }

    /// <summary>Into what it is divided; null where neither wish nor journal says.</summary>
    public required SheetPieces? Pieces { get; init; }

    /// <summary>How many bakes the typical dough is the median of; 0 for a formula that was written down.</summary>
    public required int FormulaBakes { get; init; }

    /// <summary>The formula by the cup; null when it is weighed.</summary>
    public HouseholdFormula? Cups { get; init; }

    /// <summary>How the cups of flour are filled; null when they aren't.</summary>
    public FlourMeasure? Filling { get; init; }

    /// <summary>The dough wanted at the end of mixing.</summary>
    public required Temperature Dough { get; init; }

    /// <summary>The water for it and how to draw it, or why none can be named.</summary>
    public required Attempt<NeededWater> Water { get; init; }

    /// <summary>The first rise.</summary>
    public required SheetRise Rise { get; init; }

    /// <summary>When to look, in minutes after the end of mixing.</summary>
    public required IReadOnlyList<double> LooksMin { get; init; }

    /// <summary>
    /// Percent by which the rise changes when the dough is 1 °C warmer, with its interval; null where the journal can't say.
    /// </summary>
    public required Estimate? ChangePctPerDegree { get; init; }

    /// <summary>The proof.</summary>
    public required SheetRise Proof { get; init; }

    /// <summary>The clock times.</summary>
    public required SheetDay Day { get; init; }

    /// <summary>The blanks; empty where no journal's columns were given.</summary>
    public required IReadOnlyList<SheetBlank> Blanks { get; init; }

    /// <summary>The cautions that apply.</summary>
    public required IReadOnlyList<Caution> Cautions { get; init; }
}
