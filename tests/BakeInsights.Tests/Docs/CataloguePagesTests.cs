using System.Globalization;
using System.Text;
using BakeInsights.TestKit;
using Xunit;

namespace BakeInsights.Tests;

/// <summary>Pages of the documentation that are written from a catalogue, so that they can't drift from it.</summary>
public class CataloguePagesTests
{
    [Fact]
    public void The_page_of_measures_lists_the_catalogue()
    {
        var page = new StringBuilder(
            """
            # Measures

            Every number that is worked out from a bake, and those taken as logged. A measure is missing when the bake lacks
            what it takes; missing is never zero. Written from the catalogue by a test.

            | measure | what | unit | formula | source |
            |---|---|---|---|---|

            """);
        foreach (var measure in Measures.All)
        {
            var unit = DisplayUnit.For(measure.Dimension, UnitSystem.Metric).Label;
            page.Append(CultureInfo.InvariantCulture, $"| `{measure.Name}` | {measure.Title} | {unit} | {measure.Formula} | {measure.Source} |\n");
        }

        Approved.Matches("docs/measures.md", page.ToString());
    }

    [Fact]
    public void The_page_of_columns_lists_the_catalogue()
    {
        var page = new StringBuilder(
            """
            # Columns

            The files of a journal and their columns; only the bakes are needed. A column may be missing unless it is said
            to be needed: a row without a needed cell is set aside. A column of numbers may end in another unit of its kind.
            A number outside the range can't be meant: the cell counts as missing, with a notice. Written from the
            catalogue by a test.

            """);
        Append(page, "bakes*.csv", "one dough, from mixing to cooling", BakeColumns.Layout);
        Append(page, "loaves.csv", "one loaf", LoafColumns.Layout);
        Append(page, "attributes.csv", "one attribute that judges score", AttributeColumns.Layout);
        Append(page, "scores.csv", "one judge's score of one attribute", ScoreColumns.Layout);
        Append(page, "rise.csv", "one reading of a rising dough", RiseColumns.Layout);
        Append(page, "probe.csv", "one temperature reading", ProbeColumns.Layout);
        Append(page, "cups.csv", "one weighed cup", CupColumns.Layout);
        Append(page, "formulas.csv", "one ingredient of one formula", FormulaColumns.Layout);
        Approved.Matches("docs/columns.md", page.ToString());
    }

    private static void Append(StringBuilder page, string file, string row, TableLayout layout)
    {
        page.Append(CultureInfo.InvariantCulture, $"\n## {file}\n\nA row is {row}. Needed: {Names(layout.Required)}.");
        page.Append(layout.Key.Count == 0 ? "" : $" No two rows have the same {Names(layout.Key)}.");
        page.Append("\n\n| column | what a cell says | range or words |\n|---|---|---|\n");
        foreach (var column in layout.Columns)
        {
            var accepted = column switch
            {
                QuantityColumn { Dimension: Dimension.TimeOfDay } => "00:00 to 23:59",
                QuantityColumn quantity => string.Create(CultureInfo.InvariantCulture, $"{quantity.Low} to {quantity.High}"),
                ChoiceColumn choice => string.Join(", ", choice.Values),
                _ => "text",
            };
            page.Append(CultureInfo.InvariantCulture, $"| `{column}` | {column.Meaning} | {accepted} |\n");
        }
    }

    private static string Names(IReadOnlyList<JournalColumn> columns) => string.Join(", ", columns.Select(column => $"`{column}`"));
}
