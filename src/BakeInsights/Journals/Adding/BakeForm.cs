namespace BakeInsights;

/// <summary>What a journal asks of one more bake: the columns of the file that gets it, and the bake before. Immutable.</summary>
public sealed class BakeForm
{
    private BakeForm(string path, IReadOnlyList<string> files, IReadOnlyList<string> header, IReadOnlyList<BakeField> fields, FileShape shape)
    {
        Path = path;
        Files = files;
        Header = header;
        Fields = fields;
        Shape = shape;

        // Before the bakes: what another writer adds in between has to be known to the numbering.
        Beginning = TrialFile.Beginning(files[^1], shape);
        SoFar = BakesSoFar.Read(path, files);
    }

    /// <summary>The journal, as it was asked for.</summary>
    public string Path { get; }

    /// <summary>The file that gets the bake: the journal's last in the order of their names.</summary>
    public string File => Files[^1];

    /// <summary>The columns that can be filled in, in the file's order.</summary>
    public IReadOnlyList<BakeField> Fields { get; }

    /// <summary>The bake before; null in a journal that has none.</summary>
    public Bake? Last => SoFar.Last;

    /// <summary>The name that a bake gets that is given none; null where the journal's bakes are not numbered.</summary>
    public string? NextId => Fields.Any(each => each.Column == BakeColumns.Id) ? SoFar.NextId : null;

    internal IReadOnlyList<string> Files { get; }

    internal IReadOnlyList<string> Header { get; }

    internal FileShape Shape { get; }

    internal byte[] Beginning { get; }

    internal BakesSoFar SoFar { get; }

    /// <summary>Reads a journal for what it asks.</summary>
    /// <exception cref="JournalFileException">The path, or a file of the journal, can't be read at all.</exception>
    public static BakeForm Open(string path)
    {
        ArgumentException.ThrowIfNullOrWhiteSpace(path);
        IReadOnlyList<string> files = [.. JournalFiles.Find(path)];
        using var table = CsvTable.Open(files[^1], BakeColumns.Layout, new NoticeLog());
        return new BakeForm(
            path,
            files,
            [.. table.Csv.Headers],
            [.. table.Bindings.Where(binding => binding.Header.Length > 0).Select(binding => new BakeField(binding))],
            FileShape.Of(files[^1], (char)table.Csv.Separator));
    }

    /// <summary>The field with this name, and the unit that the name says; null when the file has no such column.</summary>
    /// <param name="name">The name as the file has it, or any other that the reader would take for the same column.</param>
    public (BakeField Field, MeasureUnit? Unit)? Find(string name)
    {
        ArgumentNullException.ThrowIfNull(name);
        if (Fields.FirstOrDefault(field => field.Name.Equals(name, StringComparison.OrdinalIgnoreCase)) is { } same)
        {
            return (same, same.Unit);
        }

        var meant = HeaderReader.Read([name], BakeColumns.Layout, new SourceLine("", 1), new NoticeLog())[0];
        return meant.Column is not null && Fields.FirstOrDefault(field => field.Column == meant.Column) is { } field
            ? (field, meant.Unit)
            : null;
    }

    /// <summary>Where the bake of this name stands; null when none has it.</summary>
    public SourceLine? HolderOf(string id) => BakesSoFar.Read(Path, Files, id).HolderOfId;
}
