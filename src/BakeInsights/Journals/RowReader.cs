using System.Text;
using CsvHelper;

namespace BakeInsights;

/// <summary>Takes the cells of a row into a row's values; what can't be understood leaves a notice.</summary>
/// <remarks>
/// A plain number in the column's own unit, and a word as the column knows it, are read from the bytes of the file as
/// they stand. All else goes the slow way, through text.
/// </remarks>
internal sealed class RowReader
{
    private const int DigitsInGroup = 3;

    private readonly CellReader _cells;
    private readonly ColumnBinding[] _quantities;
    private readonly (ColumnBinding Binding, byte[][] Words)[] _choices;
    private readonly ColumnBinding[] _texts;
    private readonly ColumnBinding[] _own;
    private readonly ColumnBinding? _baker;

    /// <summary>Makes a reader of rows.</summary>
    /// <param name="bindings">What the columns hold.</param>
    /// <param name="cells">Reads what is not plain.</param>
    /// <param name="asksForBaker">Whether the baker is wanted even where texts are not.</param>
    public RowReader(IReadOnlyList<ColumnBinding> bindings, CellReader cells, bool asksForBaker = false)
    {
        _cells = cells;
        _quantities = [.. bindings.Where(binding => binding.Column is QuantityColumn)];
        _choices =
        [
            .. bindings.Where(binding => binding.Column is ChoiceColumn).Select(binding =>
                (binding, ((ChoiceColumn)binding.Column!).Values.Select(Encoding.UTF8.GetBytes).ToArray())),
        ];
        _texts = [.. bindings.Where(binding => binding.Column is TextColumn)];
        _own = [.. bindings.Where(binding => binding.Column is null)];
        _baker = asksForBaker ? _texts.FirstOrDefault(binding => binding.Column == BakeColumns.Baker) : null;
    }

    /// <summary>Reads all cells but the day's. Words come first, since the weight of a cup hangs on one of them.</summary>
    public void Read(CsvReader csv, RowValues row, CupWeights cups, NoticeLog notices)
    {
        ReadWords(csv, row, notices);
        foreach (var binding in _quantities)
        {
            var column = (QuantityColumn)binding.Column!;
            row.Quantities[column.Index] = Quantity(csv, binding, column, row, cups, notices);
        }
    }

    /// <summary>The bytes of a cell; none where the row is too short.</summary>
    public static ReadOnlySpan<byte> Bytes(CsvReader csv, ColumnBinding binding) =>
        binding.Index < csv.FieldCount ? csv.GetSpan(binding.Index) : default;

    /// <summary>The text of a cell without the blanks around it; empty where the row is too short.</summary>
    public static string Text(CsvReader csv, ColumnBinding binding) => Encoding.UTF8.GetString(Bytes(csv, binding)).Trim();

    private double Quantity(
        CsvReader csv, ColumnBinding binding, QuantityColumn column, RowValues row, CupWeights cups, NoticeLog notices)
    {
        var bytes = Bytes(csv, binding);
        if (bytes.IsEmpty)
        {
            return double.NaN;
        }

        if (binding.IsCanonical
            && PlainNumber.TryParse(bytes, out var value)
            && value >= column.Low
            && value <= column.High
            && (!MayGroupThousands(bytes) || _cells.IsPointDecimal))
        {
            return value;
        }

        var text = Text(csv, binding);
        return text.Length == 0 ? double.NaN : _cells.Quantity(binding, text, row, cups, notices) ?? double.NaN;
    }

    // "1.250" is a thousand in a file whose decimal mark is the comma.
    private static bool MayGroupThousands(ReadOnlySpan<byte> number) =>
        number.Length > DigitsInGroup + 1 && number[^(DigitsInGroup + 1)] == '.';

    private void ReadWords(CsvReader csv, RowValues row, NoticeLog notices)
    {
        foreach (var (binding, words) in _choices)
        {
            var bytes = Bytes(csv, binding);
            if (!bytes.IsEmpty)
            {
                var column = (ChoiceColumn)binding.Column!;
                var known = IndexOf(words, bytes);
                row.Choices[column.Index] = known >= 0 ? known : CellReader.Choice(binding, column, Text(csv, binding), row, notices);
            }
        }

        if (row.WantsTexts)
        {
            ReadTexts(csv, row);
        }
        else if (_baker is not null)
        {
            row.Texts[BakeColumns.Baker.Index] = Text(csv, _baker) is { Length: > 0 } text ? text : null;
        }
    }

    private void ReadTexts(CsvReader csv, RowValues row)
    {
        foreach (var binding in _texts)
        {
            row.Texts[((TextColumn)binding.Column!).Index] = Text(csv, binding) is { Length: > 0 } text ? CellText.Unmarked(text) : null;
        }

        foreach (var binding in _own)
        {
            if (Text(csv, binding) is { Length: > 0 } text)
            {
                row.Keep(binding.Header, CellText.Unmarked(text));
            }
        }
    }

    private static int IndexOf(byte[][] words, ReadOnlySpan<byte> bytes)
    {
        for (var i = 0; i < words.Length; i++)
        {
            if (bytes.SequenceEqual(words[i]))
            {
                return i;
            }
        }

        return -1;
    }
}
