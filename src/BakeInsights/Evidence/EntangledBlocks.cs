namespace BakeInsights;

/// <summary>A grouping that has no levels in a model, because the model would tell it already.</summary>
/// <param name="Blocks">The grouping.</param>
/// <param name="Caveat">What that means for a reader, one sentence.</param>
internal sealed record EntangledBlocks(Blocks Blocks, string Caveat)
{
    /// <summary>Finds out what a grouping went with: another that has levels, or the settings.</summary>
    /// <param name="blocks">The grouping.</param>
    /// <param name="kept">Those that have levels.</param>
    /// <param name="bakes">The model's bakes.</param>
    public static EntangledBlocks Of(Blocks blocks, IReadOnlyList<Blocks> kept, IReadOnlyList<Bake> bakes)
    {
        var own = blocks.Words;
        return new EntangledBlocks(
            blocks,
            kept.FirstOrDefault(other => Belongs(bakes, blocks, other)) is { } around
                ? $"Each {own} belongs to one {around.Words}: the level of the {around.Words} stands for the {own} too, and a {own} is not told from "
                    + $"another of the same {around.Words}."
            : kept.FirstOrDefault(other => Belongs(bakes, other, blocks)) is { } within
                ? $"Each {within.Words} has one {own}: the level of the {within.Words} stands for the {own} too."
            : $"Each {own} kept to its own settings, so the journal can't tell the {own} from them.");
    }

    // Whether each level of one grouping goes with one level of the other.
    private static bool Belongs(IReadOnlyList<Bake> bakes, Blocks one, Blocks around) => bakes
        .GroupBy(bake => bake[one.Column])
        .All(same => !same.Select(bake => bake[around.Column]).Distinct().Skip(1).Any());
}
