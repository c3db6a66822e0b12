using CsvHelper;

namespace BakeInsights;

/// <summary>
/// Writes rows of bakes as CSV in canonical columns and units, one at a time. Texts that a spreadsheet would run as a
/// formula are marked.
/// </summary>
internal sealed class CanonicalCsvWriter : IDisposable
{
    private readonly CsvWriter _csv;
    private readonly JournalColumn[] _known;
    private readonly string[] _own;

    /// <summary>Writes the header.</summary>
    public CanonicalCsvWriter(TextWriter writer, UsedColumns used)
    {
        _csv = CsvWriter.Create(writer, new CsvWriterOptions { NewLine = "\n" }, leaveOpen: true);
        _known = [.. used.Known];
        _own = [.. used.Own];
        _csv.WriteRecord([.. _known.Select(column => column.Name), .. _own.Select(CellText.Marked)]);
    }

    /// <summary>Writes a row.</summary>
    public void Write(RowValues row)
    {
        foreach (var column in _known)
        {
            Write(column, row);
        }

        foreach (var name in _own)
        {
            _csv.WriteField(CellText.Marked(row.OwnColumns.GetValueOrDefault(name, "")));
        }

        _csv.EndRecord();
    }

    /// <inheritdoc/>
    public void Dispose() => _csv.Dispose();

    private void Write(JournalColumn column, RowValues row)
    {
        switch (column)
        {
            case QuantityColumn quantity when double.IsNaN(row.Quantities[quantity.Index]):
                _csv.WriteField("");
                break;
            case QuantityColumn { Dimension: Dimension.TimeOfDay } time:
                _csv.WriteField(ClockText.Of(row.Quantities[time.Index]));
                break;
            case QuantityColumn quantity:
                _csv.WriteField(row.Quantities[quantity.Index]);
                break;
            case ChoiceColumn choice:
                _csv.WriteField(row.Choices[choice.Index] is var place and >= 0 ? choice.Values[place] : "");
                break;
            case TextColumn text:
                _csv.WriteField(CellText.Marked(row.Texts[text.Index] ?? ""));
                break;
            case DayColumn:
                _csv.WriteField(row.Day);
                break;
            default:
                throw new InvalidOperationException($"{column} is a kind of column that can't be written.");
        }
    }
}
