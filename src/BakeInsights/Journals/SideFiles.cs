namespace BakeInsights;

/// <summary>All that a journal's folder holds beside the bakes.</summary>
internal sealed record SideFiles(
    IReadOnlyList<Loaf> Loaves,
    IReadOnlyList<ScoredAttribute> Attributes,
    IReadOnlyList<Score> Scores,
    IReadOnlyList<RiseReading> RiseReadings,
    IReadOnlyList<TemperatureReading> TemperatureReadings,
    IReadOnlyList<WeighedCup> Cups,
    IReadOnlyList<FormulaIngredient> FormulaIngredients,
    IReadOnlyList<JournalFile> Files)
{
    /// <summary>Nothing: a journal of one file.</summary>
    public static SideFiles None { get; } = new([], [], [], [], [], [], [], []);

    /// <summary>
    /// The cups that were weighed for a journal. They are read ahead of the bakes, whose cups of flour they give grams
    /// to; what there is to remark is remarked when the other files are read.
    /// </summary>
    public static IReadOnlyList<CupWeighing> CupWeighings(string path) => Directory.Exists(path)
        ?
        [
            .. new SideFileReader(path, new HashSet<string>(), new NoticeLog())
                .Read(JournalFileKind.Cups, CupColumns.Layout, WeighedCup.From)
                .Select(cup => cup.Weighing),
        ]
        : [];

    /// <summary>Reads those files that a folder has.</summary>
    public static SideFiles Read(string folder, IReadOnlySet<string> bakes, NoticeLog notices)
    {
        var reader = new SideFileReader(folder, bakes, notices);
        var loaves = reader.Read(JournalFileKind.Loaves, LoafColumns.Layout, Loaf.From);
        var attributes = reader.Read(JournalFileKind.Attributes, AttributeColumns.Layout, ScoredAttribute.From, ScaleObjection);
        var scales = attributes.ToDictionary(attribute => attribute.Name, StringComparer.Ordinal);
        return new SideFiles(
            loaves,
            attributes,
            reader.Read(JournalFileKind.Scores, ScoreColumns.Layout, Score.From, row => ScoreObjection(row, scales)),
            reader.Read(JournalFileKind.Rise, RiseColumns.Layout, RiseReading.From, RiseObjection),
            reader.Read(JournalFileKind.Probe, ProbeColumns.Layout, TemperatureReading.From),
            reader.Read(JournalFileKind.Cups, CupColumns.Layout, WeighedCup.From),
            reader.Read(JournalFileKind.Formulas, FormulaColumns.Layout, FormulaIngredient.From, FormulaObjection),
            reader.Files);
    }

    /// <summary>
    /// Remarks that a folder's files are not read, for a journal too long to be kept. Its cups are: the bakes need them.
    /// </summary>
    public static void PassOver(string path, NoticeLog notices)
    {
        foreach (var kind in Enum.GetValues<JournalFileKind>().Except([JournalFileKind.Bakes, JournalFileKind.Cups]))
        {
            if (File.Exists(Path.Combine(path, SideFileReader.NameOf(kind))))
            {
                notices.Add(Notices.FilePassedOver(SideFileReader.NameOf(kind)));
            }
        }
    }

    private static Notice? ScaleObjection(RowValues row) =>
        row.Of(AttributeColumns.Low) < row.Of(AttributeColumns.High) ? null : Notices.ScaleEmpty(row.Origin, row);

    private static Notice? ScoreObjection(RowValues row, Dictionary<string, ScoredAttribute> scales) =>
        row.Of(ScoreColumns.Value) is { } value
        && scales.TryGetValue(row.Of(ScoreColumns.Attribute)!, out var scale)
        && (value < scale.Low || value > scale.High)
            ? Notices.ScoreOffScale(row.Origin, value, scale)
            : null;

    private static Notice? RiseObjection(RowValues row) =>
        row.Of(RiseColumns.Height) is null && row.Of(RiseColumns.Volume) is null && row.Of(RiseColumns.DoughTemp) is null
            ? Notices.ReadingEmpty(row.Origin)
            : null;

    private static Notice? FormulaObjection(RowValues row) =>
        row.Of(FormulaColumns.Percent) is null && row.Of(FormulaColumns.Amount) is null
            ? Notices.AmountMissing(row.Origin)
            : null;
}
