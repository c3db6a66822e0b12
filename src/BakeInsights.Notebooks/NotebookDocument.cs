using System.Collections.Immutable;
using System.Text.Json;
using System.Text.Json.Nodes;

namespace BakeInsights.Notebooks;

/// <summary>
/// A notebook in Jupyter's file format, version 4. What this class has no name for, metadata above all, is kept as it
/// was read. Source of the format: nbformat 4.5, https://nbformat.readthedocs.io/en/latest/format_description.html
/// </summary>
public sealed class NotebookDocument
{
    private const int Major = 4;
    private const int Minor = 5;

    private readonly JsonObject _file;

    private NotebookDocument(JsonObject file, ImmutableArray<NotebookCell> cells)
    {
        _file = file;
        Cells = cells;
    }

    /// <summary>The cells in order.</summary>
    public ImmutableArray<NotebookCell> Cells { get; }

    /// <summary>Reads a notebook file.</summary>
    /// <exception cref="NotebookException">There is no such file, or it is no notebook of version 4.</exception>
    public static NotebookDocument Read(string path)
    {
        ArgumentException.ThrowIfNullOrEmpty(path);
        try
        {
            return Parse(File.ReadAllText(path), path);
        }
        catch (Exception error) when (error is FileNotFoundException or DirectoryNotFoundException)
        {
            throw new NotebookException($"There is no notebook {path}: give the path of an .ipynb file.", error);
        }
        catch (Exception error) when (error is IOException or UnauthorizedAccessException)
        {
            throw new NotebookException($"{path} can't be read ({error.Message}): give the path of an .ipynb file.", error);
        }
    }

    /// <summary>Reads a notebook from its text.</summary>
    /// <param name="json">The text of the file.</param>
    /// <param name="name">What to call it in an error message.</param>
    /// <exception cref="NotebookException">The text is no notebook of version 4.</exception>
    public static NotebookDocument Parse(string json, string name)
    {
        ArgumentNullException.ThrowIfNull(json);
        try
        {
            if (JsonNode.Parse(json) is JsonObject file && (int?)file["nbformat"] == Major && file["cells"] is JsonArray cells)
            {
                return new NotebookDocument(file, [.. cells.Select((cell, i) => CellJson.Read(cell!.AsObject(), i))]);
            }
        }
        catch (Exception error) when (error is JsonException or InvalidOperationException or NullReferenceException)
        {
            throw new NotebookException($"{name} is no notebook ({FirstLine(error.Message)}): give an .ipynb file.", error);
        }

        throw new NotebookException($"{name} is no notebook of version {Major}: save it with a current editor.");
    }

    /// <summary>The same notebook with other cells, told apart by their ids.</summary>
    public NotebookDocument WithCells(ImmutableArray<NotebookCell> cells) => new(_file, cells);

    /// <summary>The file's text, valid as nbformat 4.5. The same notebook gives the same text.</summary>
    public string ToJson()
    {
        var originals = _file["cells"]!.AsArray().Select((cell, i) => (Id: CellJson.IdOf(cell!.AsObject(), i), Cell: cell))
            .ToDictionary(pair => pair.Id, pair => pair.Cell!.AsObject());
        var file = _file.DeepClone().AsObject();
        file["nbformat"] = Major;
        file["nbformat_minor"] = Minor;
        file["metadata"] ??= new JsonObject();
        file["cells"] = new JsonArray([.. Cells.Select(cell => CellJson.Write(cell, originals.GetValueOrDefault(cell.Id)))]);
        return file.ToJsonString(CellJson.Options) + "\n";
    }

    private static string FirstLine(string text) => text.Split('\n')[0].TrimEnd('.', '\r');
}
