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
            A number outside the range can't be meant: the cell counts as missing, with a notice. One outside what is usual
            is kept and doubted. The other names are taken in any letter case, with blanks or hyphens, and with the unit
            behind them in brackets or not: `Bulk (min)`, `FDT °F`. Written from the catalogue by a test.

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
        page.Append("\n\n| column | what a cell says | range or words | usual | also called |\n|---|---|---|---|---|\n");
        foreach (var column in layout.Columns)
        {
            var accepted = column switch
            {
                QuantityColumn { Dimension: Dimension.TimeOfDay } => "00:00 to 23:59",
                QuantityColumn quantity => string.Create(CultureInfo.InvariantCulture, $"{quantity.Low} to {quantity.High}"),
                ChoiceColumn choice => string.Join(", ", choice.Values),
                _ => "text",
            };
            var usual = column is QuantityColumn number && UsualRanges.Of(number) is { } range
                ? string.Create(CultureInfo.InvariantCulture, $"{range.Low} to {range.High}")
                : "";
            var others = string.Join(", ", column.OtherNames.Select(name => name.Replace('_', ' ')));
            page.Append(CultureInfo.InvariantCulture, $"| `{column}` | {column.Meaning} | {accepted} | {usual} | {others} |\n");
        }
    }

    private static string Names(IReadOnlyList<JournalColumn> columns) => string.Join(", ", columns.Select(column => $"`{column}`"));

    [Fact]
    public void The_page_of_notices_lists_every_code_with_its_words_and_the_ranges_behind_them()
    {
        var page = new StringBuilder(
            """
            # Notices

            Everything that the reader can remark about a journal. What is filled in stands in ‹›. `refused`: the row is set
            aside; `unread`: the cell counts as missing, the row stays; `doubted`: kept, look again; `noted`: for information.
            Written from the reader's source by a test.

            | code | gravity | message | what to do |
            |---|---|---|---|

            """);
        foreach (var kind in NoticeCatalogue.All)
        {
            page.Append(CultureInfo.InvariantCulture, $"| `{kind.Code}` | {kind.Gravity} | {kind.Message} | {kind.Remedy} |\n");
        }

        page.Append(
            """

            ## Numbers worked out from two columns

            An impossible one takes its first column out of the bake; an unusual one is kept and doubted. Nothing of an
            ingredient is a choice and not doubted.

            | number | of | unit | possible | usual |
            |---|---|---|---|---|

            """);
        foreach (var range in UsualRanges.OfRatios)
        {
            page.Append(
                CultureInfo.InvariantCulture,
                $"| {range.Name} | `{range.Column}`, `{range.Against}` | {range.Unit} | {range.Low} to {range.High} | {range.UsualLow} to {range.UsualHigh} |\n");
        }

        Approved.Matches("docs/notices.md", page.ToString());
    }

    [Fact]
    public void Every_code_of_a_case_is_on_the_page_with_its_gravity() => Assert.Equal(
        NoticeCases.AllExpected.Select(expected => (expected.Code, expected.Gravity.ToString().ToLowerInvariant())).Distinct().Order(),
        NoticeCatalogue.All.Select(kind => (kind.Code, kind.Gravity)).Distinct().Order());
}
