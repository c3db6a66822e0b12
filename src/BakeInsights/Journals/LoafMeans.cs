using C = BakeInsights.BakeColumns;

namespace BakeInsights;

/// <summary>Fills in a bake's own loaf columns from its loaves, where they are empty.</summary>
internal static class LoafMeans
{
    /// <summary>
    /// Sets the number of loaves and the means of those weighed and measured; a bake whose own number differs from that
    /// of its loaves keeps it, and is doubted.
    /// </summary>
    public static void Fill(IEnumerable<RowValues> bakes, IReadOnlyList<Loaf> loaves, NoticeLog notices)
    {
        var ofBake = loaves.ToLookup(loaf => loaf.BakeId, StringComparer.Ordinal);
        foreach (var bake in bakes)
        {
            var own = ofBake[bake.Of(C.Id)!].ToList();
            if (own.Count > 0)
            {
                Fill(bake, own, notices);
            }
        }
    }

    private static void Fill(RowValues bake, List<Loaf> loaves, NoticeLog notices)
    {
        if (bake.Of(C.LoafCount) is { } count && count != loaves.Count)
        {
            notices.Add(Notices.LoafCountDiffers(bake.Origin, count, loaves.Count));
        }

        (QuantityColumn Column, double? Value)[] found =
        [
            (C.LoafCount, loaves.Count),
            (C.Loaf, loaves.Average(loaf => loaf.LoafG)),
            (C.LoafVolume, loaves.Average(loaf => loaf.VolumeMl)),
        ];
        var taken = found.Where(each => each.Value is not null && bake.Of(each.Column) is null).ToList();
        taken.ForEach(each => bake.Quantities[each.Column.Index] = each.Value!.Value);
        if (taken.Count > 0)
        {
            notices.Add(Notices.LoavesTaken(bake.Origin, taken.Select(each => each.Column), loaves.Count));
        }
    }
}
