using System.Text;

namespace BakeInsights.Reports;

/// <summary>Writes views as plain text.</summary>
internal static class ViewText
{
    /// <summary>The width of a terminal that nobody has widened.</summary>
    public const int UsualWidth = 80;

    private const string Gap = "  ";
    private const int NarrowestColumn = 8;

    public static string Write(View view, int width)
    {
        ArgumentOutOfRangeException.ThrowIfLessThan(width, 20);
        var text = new StringBuilder();

        // Plain text can't be moved in.
        foreach (var block in view.Blocks.Where(block => block is not ViewWhatIf))
        {
            if (text.Length > 0)
            {
                text.Append('\n');
            }

            Write(text, block, width);
        }

        return text.ToString();
    }

    private static void Write(StringBuilder text, ViewBlock block, int width)
    {
        switch (block)
        {
            case ViewHeading heading:
                text.Append(heading.Text).Append('\n').Append('-', heading.Text.Length).Append('\n');
                break;
            case ViewParagraph paragraph:
                AppendLines(text, "", Wrap(paragraph.Text, width));
                break;
            case ViewList list:
                foreach (var item in list.Items)
                {
                    AppendLines(text, "- ", Wrap(item, width - 2));
                }

                break;
            case ViewTable table:
                Write(text, table, width);
                break;
            default:
                throw new ArgumentException($"A {block.GetType().Name} can't be written as text.", nameof(block));
        }
    }

    private static void Write(StringBuilder text, ViewTable table, int width)
    {
        AppendLines(text, "", Wrap(table.Caption, width));
        var widths = WidthsOf(table, width);
        IReadOnlyList<string> titles = [.. table.Columns.Select(column => column.Title)];
        Write(text, table, titles, widths);
        text.Append(string.Join(Gap, widths.Select(columnWidth => new string('-', columnWidth)))).Append('\n');
        foreach (var row in table.Rows)
        {
            Write(text, table, row, widths);
        }
    }

    private static void Write(StringBuilder text, ViewTable table, IReadOnlyList<string> cells, int[] widths)
    {
        var wrapped = cells.Select((cell, column) => Wrap(cell, widths[column])).ToList();
        for (var line = 0; line < wrapped.Max(lines => lines.Count); line++)
        {
            var parts = wrapped.Select((lines, column) =>
            {
                var part = line < lines.Count ? lines[line] : "";
                return table.Columns[column].IsNumber ? part.PadLeft(widths[column]) : part.PadRight(widths[column]);
            });
            text.Append(string.Join(Gap, parts).TrimEnd()).Append('\n');
        }
    }

    // Columns are as wide as they need to be; when that is too much for the line, the widest gives way first.
    private static int[] WidthsOf(ViewTable table, int width)
    {
        var widths = table.Columns
            .Select((column, i) => table.Rows.Select(row => row[i].Length).Append(column.Title.Length).Max())
            .ToArray();
        while (widths.Sum() + (Gap.Length * (widths.Length - 1)) > width && widths.Max() > NarrowestColumn)
        {
            widths[Array.IndexOf(widths, widths.Max())]--;
        }

        return widths;
    }

    private static List<string> Wrap(string text, int width)
    {
        var lines = new List<string>();
        var line = new StringBuilder();
        foreach (var word in text.Split(' ', StringSplitOptions.RemoveEmptyEntries).SelectMany(word => Pieces(word, width)))
        {
            if (line.Length > 0 && line.Length + 1 + word.Length > width)
            {
                lines.Add(line.ToString());
                line.Clear();
            }

            line.Append(line.Length > 0 ? " " : "").Append(word);
        }

        lines.Add(line.ToString());
        return lines;
    }

    private static IEnumerable<string> Pieces(string word, int width) => word.Chunk(width).Select(piece => new string(piece));

    private static void AppendLines(StringBuilder text, string mark, IReadOnlyList<string> lines)
    {
        for (var i = 0; i < lines.Count; i++)
        {
            text.Append(i == 0 ? mark : new string(' ', mark.Length)).Append(lines[i]).Append('\n');
        }
    }
}
