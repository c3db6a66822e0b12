namespace BakeInsights;

/// <summary>What is asked of the sheets of a day.</summary>
public sealed record SheetWishes
{
    /// <summary>The bakes, a sheet for each; one of the formula as it is where none are given.</summary>
    public IReadOnlyList<SheetBake> Bakes { get; init; } = [];

    /// <summary>A formula of <c>formulas.csv</c> or of the bakes, by name; null for the journal's typical dough.</summary>
    public string? Formula { get; init; }

    /// <summary>Pieces of each dough, at least one; null for the journal's usual number.</summary>
    public int? Loaves { get; init; }

    /// <summary>Dough in one piece, in grams, more than nothing; null for the journal's usual piece.</summary>
    public double? PieceG { get; init; }

    /// <summary>How cups of flour are filled; null for a sheet in grams alone.</summary>
    public FlourMeasure? Cups { get; init; }

    /// <summary>The kitchen.</summary>
    public SheetKitchen Kitchen { get; init; } = new();

    /// <summary>When weighing begins; null where the finish decides, or no clock.</summary>
    public TimeOnly? Start { get; init; }

    /// <summary>When the bread has to be cut at the latest; null where the start decides, or no clock.</summary>
    public TimeOnly? FinishBy { get; init; }
}
