using System.Globalization;

namespace BakeInsights;

/// <summary>
/// Texts as cells hold them. A spreadsheet runs a cell that begins like a formula, so such a text is written with a
/// mark before it; the reader takes the mark off again.
/// </summary>
internal static class CellText
{
    // What spreadsheets show before a text that is not to be worked out.
    private const char Mark = '\'';

    // Source: OWASP, "CSV Injection". A carriage return, which it lists too, can't stand in a cell here.
    private const string FormulaStarts = "=+-@\t＝＋－＠";

    private const NumberStyles PlainNumber =
        NumberStyles.AllowLeadingSign | NumberStyles.AllowDecimalPoint | NumberStyles.AllowExponent;

    /// <summary>The text as it is written: marked when a spreadsheet would run it. Numbers stay as they are.</summary>
    public static string Marked(string text) => IsRun(text) ? Mark + text : text;

    /// <summary>The text as it was before <see cref="Marked"/>.</summary>
    public static string Unmarked(string cell) => cell.StartsWith(Mark) && IsRun(cell[1..]) ? cell[1..] : cell;

    /// <summary>The text without the blanks around it, which a cell does not keep.</summary>
    /// <exception cref="ArgumentException">No cell can hold the text: it has a line break in it, or is no text.</exception>
    public static string Require(string text, string parameter)
    {
        ArgumentNullException.ThrowIfNull(text, parameter);
        var cell = text.Trim();
        if (cell.AsSpan().IndexOfAny("\r\n\0") >= 0)
        {
            throw new ArgumentException("A cell holds one line of text: write line breaks as blanks.", parameter);
        }

        return cell.EnumerateRunes().Any(rune => rune.Value == 0xFFFD) && !cell.Contains('\uFFFD')
            ? throw new ArgumentException("The text has half a character in it, which no file can hold.", parameter)
            : cell;
    }

    // A text that begins with marks and then like a formula counts too: taking one mark off has to give it back.
    private static bool IsRun(string text)
    {
        var bare = text.AsSpan().TrimStart(Mark);
        return bare.Length > 0
            && FormulaStarts.Contains(bare[0])
            && !double.TryParse(bare.ToString().Replace(',', '.'), PlainNumber, CultureInfo.InvariantCulture, out _);
    }
}
